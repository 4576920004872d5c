"""Repeatability, bounds of the true scatter, tolerance factors: distributions, integrals."""

import math
import statistics

from numpy.polynomial.legendre import leggauss
from scipy import integrate, optimize, stats

from series import GEAR
from table import Table

table = Table("Scatter of measured mounts")

# ISO 230-2 (formulas recalled)
up = [[-1.2, -0.8, -1.0, -0.9, -1.1], [0.4, 0.1, 0.3, 0.2, 0.5], [1.9, 2.2, 2.0, 2.1, 1.8]]
down = [[-0.4, -0.1, -0.3, -0.2, 0.0], [1.0, 1.3, 1.2, 1.1, 0.9], [2.4, 2.7, 2.6, 2.8, 2.5]]
mu, md = [[statistics.fmean(x) for x in runs] for runs in (up, down)]
su, sd = [[statistics.stdev(x) for x in runs] for runs in (up, down)]
reversal = [a - b for a, b in zip(mu, md)]
both = [max(2 * a + 2 * b + abs(r), 4 * a, 4 * b) for a, b, r in zip(su, sd, reversal)]
means = mu + md
centres = [(a + b) / 2 for a, b in zip(mu, md)]
tops = [m + 2 * s for m, s in zip(means, su + sd)]
bottoms = [m - 2 * s for m, s in zip(means, su + sd)]
table.check("CV-131", "s at one position", su[0])
table.check("CV-131", "unidirectional repeatability", 4 * max(su + sd))
table.check("CV-131", "reversal at one position", reversal[0])
table.check("CV-131", "bidirectional repeatability", max(both))
table.check("CV-131", "bidirectional repeatability, third position", both[2])
table.check("CV-131", "systematic deviation E", max(means) - min(means))
table.check("CV-131", "mean deviation M", max(centres) - min(centres))
table.check("CV-131", "accuracy A", max(tops) - min(bottoms))
table.check("CV-131", "mean reversal", statistics.fmean(reversal))


def factor(n, probability):
    """sigma over s that is exceeded with this probability."""
    return math.sqrt((n - 1) / stats.chi2.ppf(probability, n - 1))


for case, n in ("CV-132", 5), ("CV-133", 10), ("CV-134", 20), ("CV-135", 30):
    name = f"{n} mounts: "
    table.check(case, name + "lower 95 % factor", factor(n, 0.975))
    table.check(case, name + "upper 95 % factor", factor(n, 0.025))
    table.check(case, name + "one-sided 95 % factor", factor(n, 0.05))
    # s over sigma, averaged over its distribution
    chi = integrate.quad(lambda x: x * stats.chi.pdf(x, n - 1), 0, math.inf, epsabs=1e-12)[0]
    table.check(case, name + "mean of s over sigma", chi / math.sqrt(n - 1))
    table.check(case, name + "t factor", stats.t.ppf(0.975, n - 1))

for p, freedom in (0.025, 9), (0.975, 9), (0.025, 99), (0.975, 99), (0.01, 42):
    name = f"chi-square quantile {p}, {freedom} degrees of freedom"
    table.check("CV-136", name, stats.chi2.ppf(p, freedom))

s = statistics.stdev(GEAR)
table.check("CV-137", "gear diameters: s", s)
table.check("CV-137", "gear diameters: lower bound", s * factor(100, 0.975))
table.check("CV-137", "gear diameters: upper bound", s * factor(100, 0.025))
table.check("CV-137", "gear diameters: 99 s^2 / 0.1^2", 99 * s * s / 0.1**2)
table.check("CV-138", "washers: lower bound", 0.005124172 * factor(15, 0.975))
table.check("CV-138", "washers: upper bound", 0.005124172 * factor(15, 0.025))
table.check("CV-138", "chi-square quantile 0.975, 14 degrees of freedom", stats.chi2.ppf(0.975, 14))
s, mean = 2.188997878, 64.5666667
half = stats.t.ppf(0.975, 74) * s / math.sqrt(75)
table.check("CV-139", "heights: lower end of the mean", mean - half)
table.check("CV-139", "heights: upper end of the mean", mean + half)
table.check("CV-139", "heights: lower bound of sigma", s * factor(75, 0.975))
table.check("CV-139", "heights: upper bound of sigma", s * factor(75, 0.025))


def both_sides(n, share, confidence):
    """k for which mean +- k s holds a share of a normal distribution, with a confidence.

    For a mean that is off by x, the half width that holds the share is solved for, and the chance
    that k s is at least as wide; averaged over the means.
    """

    def width(x):
        return optimize.brentq(
            lambda r: stats.norm.cdf(x + r) - stats.norm.cdf(x - r) - share, 0, 20, xtol=1e-13
        )

    # means beyond 8 of their deviations do not count
    nodes, weights = [], []
    for x, w in zip(*leggauss(60)):
        z = 8 * x
        nodes.append(width(z / math.sqrt(n)) ** 2)
        weights.append(8 * w * stats.norm.pdf(z))
    total = sum(weights)

    def chance(k):
        return (
            sum(w * stats.chi2.sf((n - 1) * r2 / k**2, n - 1) for r2, w in zip(nodes, weights))
            / total
        )

    return optimize.brentq(lambda k: chance(k) - confidence, 0.5, 60, xtol=1e-11)


def one_side(n, share, confidence):
    """k of one side, from the noncentral t distribution."""
    root = math.sqrt(n)
    return stats.nct.ppf(confidence, n - 1, stats.norm.ppf(share) * root) / root


def howe(n, share, confidence):
    """Howe's approximation of both sides."""
    z = stats.norm.ppf((1 + share) / 2)
    return z * math.sqrt((n - 1) * (1 + 1 / n) / stats.chi2.ppf(1 - confidence, n - 1))


def natrella(n, share, confidence):
    """Natrella's approximation of one side."""
    zp, zg = stats.norm.ppf(share), stats.norm.ppf(confidence)
    a, b = 1 - zg**2 / (2 * (n - 1)), zp**2 - zg**2 / n
    return (zp + math.sqrt(zp**2 - a * b)) / a


for case, n, share, confidence in (
    ("CV-140", 43, 0.9, 0.99),
    ("CV-141", 40, 0.9, 0.99),
    ("CV-142", 10, 0.95, 0.95),
    ("CV-143", 4, 0.95, 0.95),
    ("CV-144", 5, 0.95, 0.95),
    ("CV-145", 20, 0.95, 0.95),
    ("CV-146", 10, 0.99, 0.95),
    ("CV-147", 15, 0.95, 0.95),
    ("CV-147", 30, 0.95, 0.95),
):
    name = f"{n} mounts, {share}, {confidence}: "
    exact = both_sides(n, share, confidence)
    table.check(case, name + "exact", exact)
    table.check(case, name + "Howe", howe(n, share, confidence))
    table.check(case, name + "one side", one_side(n, share, confidence))
    table.check(case, name + "Natrella", natrella(n, share, confidence))
    if n < 40:
        table.check(case, f"{n} mounts, {share}, as printed", exact)
table.check("CV-140", "Howe as printed", howe(43, 0.9, 0.99))
table.check("CV-140", "Natrella as printed", natrella(43, 0.9, 0.99))
# mounts and gauge scatter independently: variances add
table.check("CV-150", "0.10 less gauge noise 0.06", math.sqrt(0.10**2 - 0.06**2))
table.finish()
