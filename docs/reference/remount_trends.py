"""Drift, outliers, holders, a control chart and the ratio of two scatters.

Distributions from mpmath's incomplete beta function; quantiles by a root search.
"""

import itertools
import math
import statistics

from mpmath import betainc, findroot, log, mp, mpf

from series import GEAR, ROSNER, SILICON
from table import Table

table = Table("Drift, outliers and holders")
mp.dps = 15


def t_tail(t, freedom):
    """Chance that Student's t is beyond t > 0."""
    x = mpf(freedom) / (freedom + mpf(t) ** 2)
    return betainc(mpf(freedom) / 2, mpf(1) / 2, 0, x, regularized=True) / 2


def t_quantile(tail, freedom):
    """t with this chance beyond it."""
    return findroot(
        lambda t: log(t_tail(t, freedom) / tail), (mpf(1), mpf(60)), solver="ridder", tol=1e-12
    )


def f_tail(ratio, first, second):
    """Chance that F is beyond a ratio."""
    x = mpf(second) / (second + first * mpf(ratio))
    return betainc(mpf(second) / 2, mpf(first) / 2, 0, x, regularized=True)


y = [0.42, 0.35, 0.31, 0.24, 0.22, 0.15, 0.17, 0.11, 0.13, 0.09, 0.10, 0.08]
n, x = len(y), range(1, len(y) + 1)
slope, intercept = statistics.linear_regression(x, y)
residual = math.sqrt(sum((v - intercept - slope * i) ** 2 for i, v in zip(x, y)) / (n - 2))
spread = math.sqrt(sum((i - (n + 1) / 2) ** 2 for i in x))
table.check("CV-148", "slope", slope)
table.check("CV-148", "intercept", intercept)
table.check("CV-148", "correlation", statistics.correlation(x, y))
table.check("CV-148", "t of the slope", slope * spread / residual)
table.check("CV-148", "standard deviation about the line", residual)
pairs = list(itertools.combinations(enumerate(y), 2))
score = sum((b > a) - (b < a) for (_, a), (_, b) in pairs)
# variance of the score of n different values in random order: for small n by trying all orders
variance = n * (n - 1) * (2 * n + 5) / 18
for small in 3, 4, 5, 6:
    scores = [
        sum((b > a) - (b < a) for a, b in itertools.combinations(order, 2))
        for order in itertools.permutations(range(small))
    ]
    assert abs(statistics.pvariance(scores) - small * (small - 1) * (2 * small + 5) / 18) < 1e-9
table.check("CV-148", "Mann-Kendall S", score)
table.check("CV-148", "Mann-Kendall variance", variance)
table.check("CV-148", "Mann-Kendall Z", (score + 1) / math.sqrt(variance))
table.check(
    "CV-148", "Theil-Sen slope", statistics.median((b - a) / (j - i) for (i, a), (j, b) in pairs)
)
steps = sum((b - a) ** 2 for a, b in itertools.pairwise(y))
table.check("CV-148", "von Neumann ratio", steps / ((n - 1) * statistics.variance(y)))
table.check("CV-148", "sigma of successive differences", math.sqrt(steps / (2 * (n - 1))))
table.check("CV-148", "s", statistics.stdev(y))


def mean_squares(groups):
    """Mean square between and within groups of one size."""
    size = len(groups[0])
    between = size * statistics.variance([statistics.fmean(g) for g in groups])
    return between, statistics.fmean([statistics.variance(g) for g in groups])


def grouped(values, size):
    """Groups one after the other."""
    return [values[i : i + size] for i in range(0, len(values), size)]


holders = [[10.2, 10.4, 10.1, 10.3], [10.6, 10.5, 10.8, 10.7], [10.0, 10.1, 9.9, 10.2]]
between, within = mean_squares(holders)
own = (between - within) / 4
table.check("CV-149", "repeatability", math.sqrt(within))
table.check("CV-149", "between holders", math.sqrt(own))
table.check("CV-149", "overall", math.sqrt(own + within))
table.check("CV-149", "2.8 times", 2.8 * math.sqrt(within))
between, within = mean_squares(grouped(SILICON, 5))
table.check("SiRstv", "certified F", between / within)
batches = grouped(GEAR, 10)
between, within = mean_squares(batches)
table.check("gear", "F of the batches", between / within)
logs = sum(9 * math.log(within / statistics.variance(g)) for g in batches)
table.check("gear", "Bartlett of the batches", logs / (1 + (10 / 9 - 1 / 90) / (3 * 9)))


def grubbs(n, tail):
    """Greatest deviation over s of n values that is exceeded with n times this chance on a side."""
    t = t_quantile(mpf(tail) / n, n - 2)
    return (n - 1) / math.sqrt(n) * math.sqrt(t * t / (n - 2 + t * t))


for n in 5, 10, 12, 20:
    table.check("CV-151", f"Grubbs, {n} readings", grubbs(n, "0.025"))
y = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]
table.check("CV-152", "statistic", (max(y) - statistics.fmean(y)) / statistics.stdev(y))
table.check("CV-152", "one-sided limit", grubbs(8, "0.05"))

# Rosner: the farthest value is taken away, ten times; outliers are all up to the last that is
# beyond its limit
left, found = list(ROSNER), []
for _ in range(10):
    mean = statistics.fmean(left)
    far = max(left, key=lambda v: abs(v - mean))
    found.append((abs(far - mean) / statistics.stdev(left), grubbs(len(left), "0.025")))
    left.remove(far)
table.check(
    "Rosner", "outliers found", max(i + 1 for i, (r, limit) in enumerate(found) if r > limit)
)
table.check("Rosner", "first statistic", found[0][0])
table.check("Rosner", "first limit", found[0][1])
table.check("Rosner", "third statistic", found[2][0])
table.check("Rosner", "third limit", found[2][1])

for ratio in "4.0259942", "3.1788931":
    table.check("CV-153", f"p at variance ratio {ratio}", 2 * f_tail(ratio, 9, 9))

y = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
moving = statistics.fmean(abs(b - a) for a, b in itertools.pairwise(y))
# the range of two normal values is 2/sqrt(pi) sigma on average
band = 3 * moving * math.sqrt(math.pi) / 2
table.check("flow rate", "upper limit", statistics.fmean(y) + band)
table.check("flow rate", "lower limit", statistics.fmean(y) - band)
table.check("flow rate", "mean moving range", moving)
table.finish()
