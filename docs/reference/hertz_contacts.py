"""Sizes, pressures, approaches and stiffnesses of eleven contacts, from the point load."""

from mpmath import mpf, radians

from hertz import STEEL, Contact, ball_on_flat, curvatures, reduced_modulus
from table import Table

table = Table("Hertz contacts")
BALL = 1 / mpf("6.35e-3")


def check(case, name, contact, force):
    """All results of a contact."""
    table.check(case, name + ": a/b", 1 / contact.k)
    table.check(case, name + ": semi-axis a", contact.major(force) * 1e6)
    table.check(case, name + ": semi-axis b", contact.minor(force) * 1e6)
    table.check(case, name + ": peak pressure", contact.peak(force) / 1e6)
    table.check(case, name + ": approach", contact.approach(force) * 1e6)
    table.check(case, name + ": stiffness", contact.stiffness(force) / 1e6)


def steel(first, second, degrees=0):
    """Two bodies of steel with these principal curvatures, 1/m."""
    return Contact(*curvatures(first, second, radians(mpf(degrees))), STEEL)


ball, cylinder = (BALL, BALL), (BALL, 0)
check("CV-001", "12.7 mm steel ball on flat", steel(ball, (0, 0)), 100)
table.check("CV-001", "12.7 mm steel ball on flat: reduced modulus", STEEL / 1e9)
check("CV-002", "12.7 mm ball in groove of radius 7.0 mm", steel(ball, (-1 / mpf("7e-3"), 0)), 100)
check(
    "CV-003", "12.7 mm ball in groove of radius 12.7 mm", steel(ball, (-1 / mpf("12.7e-3"), 0)), 100
)
check("CV-004", "12.7 mm ball on pin of radius 10 mm", steel(ball, (100, 0)), 100)
for case, angle in ("CV-005", 90), ("CV-006", 45), ("CV-007", 30):
    check(case, f"equal cylinders crossed at {angle} deg", steel(cylinder, cylinder, angle), 100)

skew = "radii 5, 20 on -30, 50 mm at 36 deg"
modulus = reduced_modulus(206e9, "0.3", 310e9, "0.26")
lesser, greater = curvatures((200, 50), (-1 / mpf("0.03"), 20), radians(mpf(36)))
check("CV-008", skew, Contact(lesser, greater, modulus), 250)
table.check("CV-008", skew + ": curvature A", lesser)
table.check("CV-008", skew + ": curvature B", greater)
table.check("CV-008", skew + ": reduced modulus", modulus / 1e9)

carbide = reduced_modulus(630e9, "0.22", 630e9, "0.22")
check("CV-009", "10 mm carbide ball on carbide flat", ball_on_flat("5e-3", carbide), 300)
nitride = reduced_modulus(310e9, "0.27", 206e9, "0.3")
check("CV-010", "10 mm silicon nitride ball on steel flat", ball_on_flat("5e-3", nitride), 300)
hollow = -1 / mpf("6.6e-3")
check(
    "CV-011", "12.7 mm ball in hollow sphere of radius 6.6 mm", steel(ball, (hollow, hollow)), 100
)
table.finish()
