"""Handbook coefficients of the ellipse, and the elliptic integrals from their definitions."""

from mpmath import mpf, pi, quad, sin, sqrt

from hertz import Contact
from table import Table

table = Table("Coefficients of the ellipse")


def coefficients(f):
    """a*, b*, delta* for cos theta = f: sum of curvatures 1, 3P/(2 E*) = 1."""
    contact = Contact((1 - mpf(f)) / 4, (1 + mpf(f)) / 4, 1)
    force = mpf(2) / 3
    return contact.major(force), contact.minor(force), 2 * contact.approach(force)


bearing = "0.1075 0.3204 0.4795 0.5916 0.7332 0.87366 0.93657 0.990902 0.9989156 0.9998527".split()
for i, f in enumerate(bearing):
    for letter, value in zip(("a*", "b*", "delta*"), coefficients(f)):
        table.check(f"CV-{12 + i:03d}", f"F(rho) = {f}: {letter}", value)
for i, f in enumerate("0.2 0.5 0.8 0.98".split()):
    alpha, beta, delta = coefficients(f)
    for letter, value in ("alpha", alpha), ("beta", beta), ("lambda", delta * 3 / 4):
        table.check(f"CV-{22 + i:03d}", f"cos theta = {f}: {letter}", value)

for i, ratio in enumerate("1.0 1.5 2.0 5.0 10.0 50.0 100.0".split()):
    case, name = f"CV-{33 + i:03d}", f"B/A = {ratio}"
    k = Contact(1, mpf(ratio), 1).k
    m = 1 - k * k
    table.check(case, name + ": a/b", 1 / k)
    table.check(case, name + ": E", quad(lambda t: sqrt(1 - m * sin(t) ** 2), [0, pi / 2]))
    table.check(case, name + ": K", quad(lambda t: 1 / sqrt(1 - m * sin(t) ** 2), [0, pi / 2]))
table.finish()
