"""Coefficients and the worked example of one handbook's chapter on contact stresses.

Its formulas are a = c (F K g)^(1/3), p0 = c [F/(K g)^2]^(1/3), d = c (F^2 g^2/K)^(1/3), g = 1/E*,
with a length K that differs from case to case.
"""

from mpmath import cbrt, mpf

from hertz import Contact, ball_on_flat, reduced_modulus
from table import Table

table = Table("Handbook examples")


def three(contact, length):
    """The numbers c of a, p0 and d."""
    force, g = mpf(1), 1 / contact.modulus
    return (
        contact.major(force) / cbrt(force * length * g),
        contact.peak(force) / cbrt(force / (length * g) ** 2),
        contact.approach(force) / cbrt(force**2 * g**2 / length),
    )


# K of the book: diameter of a ball on a plane; D1 D2/(D1 + D2) of crossed cylinders;
# 1/(sum of the four curvatures) of a barrel in a race, here with a round patch
cases = (
    ("sphere on plane", ("CV-026", "CV-027", "CV-028"), three(ball_on_flat("0.5", 1), mpf(1))),
    ("equal crossed cylinders", ("CV-029",) * 3, three(Contact(1, 1, 1), mpf(1) / 2)),
    ("barrel in race", ("CV-030",) * 3, three(Contact(1, 1, 1), mpf(1) / 4)),
)
for name, ids, values in cases:
    for case, letter, value in zip(ids, ("a", "p0", "d"), values):
        table.check(case, f"{name}: coefficient of {letter}", value)
        table.check(case, f"{name}, 10 digits: coefficient of {letter}", value)

modulus = reduced_modulus(200e9, "0.29", 200e9, "0.29")
lesser, greater = 1 / mpf("0.9"), 1 / mpf("0.7")
crossed, force = Contact(lesser, greater, modulus), mpf(40000)
name = "cylinders of 0.9 and 0.7 m crossed, 40 kN"
table.check("CV-031", name + ": peak pressure", crossed.peak(force) / 1e6)
table.check("CV-031", name + ": approach", crossed.approach(force) * 1e3)
table.check("CV-032", name + ": peak pressure, exact", crossed.peak(force) / 1e6)
table.check("CV-032", name + ": approach, exact", crossed.approach(force) * 1e3)
table.check("CV-032", name + ": a", crossed.major(force) * 1e3)
table.check("CV-032", name + ": b", crossed.minor(force) * 1e3)
# the n are what the ellipse has over the circle of the same A + B
circle = Contact((lesser + greater) / 2, (lesser + greater) / 2, modulus)
table.check("CV-032", name + ": na", crossed.major(force) / circle.major(force))
table.check("CV-032", name + ": nb", crossed.minor(force) / circle.major(force))
table.check("CV-032", name + ": nc", crossed.peak(force) / circle.peak(force))
table.check("CV-032", name + ": nd", crossed.approach(force) / circle.approach(force))
table.finish()
