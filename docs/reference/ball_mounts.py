"""Stud, bond, ring of a ball in a cone, and a seat cut by three slots."""

import itertools

from mpmath import agm, cos, diff, inf, log, lu_solve, matrix, mp, mpf, pi, quad, sin, sqrt

from hertz import STEEL
from table import Table

table = Table("Ball stud, bond and seat")
mp.dps = 15

# stud: give of the end under 1 N, from the energy of bending and shear along it
E, NU, d, L = mpf("200e9"), mpf("0.3"), mpf("6e-3"), mpf("12e-3")
G = E / (2 * (1 + NU))
area = pi * d**2 / 4
second = 4 * quad(lambda y: 2 * y * y * sqrt((d / 2) ** 2 - y * y), [0, d / 2]) / 2
bend = quad(lambda x: x * x / (E * second), [0, L])
shear = quad(lambda x: 1 / (mpf("0.9") * G * area), [0, L])
name = "stud d = 6, L = 12 mm, 200 GPa, rigid foot: "
table.check("CV-167", name + "lateral stiffness", 1 / (bend + shear) / 1e6)
table.check("CV-167", name + "axial stiffness", E * area / L / 1e6)
table.check("CV-167", name + "bending stress at 100 N", 100 * L * (d / 2) / second / 1e6)

length, film = mpf("8e-3"), mpf("50e-6")
wall = quad(lambda t: d / 2 * length, [0, 2 * pi])
name = "sleeve d = 6, L = 8 mm, 18 MPa, G = 1 GPa, 0.05 mm: "
table.check("CV-168", name + "shear strength", mpf("18e6") * wall)
table.check("CV-168", name + "axial stiffness", mpf("1e9") * wall / film / 1e6)

# ring: a line contact bent round
R, phi, force = mpf("6.35e-3"), pi / 4, mpf(100)
ring = R * sin(phi)


def line(f):
    """Load per length across the contact."""
    return f / (2 * pi * ring * cos(phi))


def half_width(w):
    """b at which the strip under 2 w/(pi b) sqrt(1 - x^2/b^2) bends by as much as the ball.

    The curvature of hertz.py for b/a -> 0 is B = p0/(E* b) times an integral over all directions.
    """
    spread = quad(lambda u: (1 + u * u) ** mpf(-1.5), [0, inf])
    return sqrt(2 * R * 2 * w * spread / (pi * STEEL))


w = line(force)
b = half_width(w)
name = "ball 12.7 mm in a 90 deg cone, 100 N, 206 GPa: "
table.check("CV-169", name + "greatest pressure", 2 * w / (pi * b) / 1e6)
table.check("CV-169", name + "half width", b * 1e6)


def sink():
    """Depth of the ring's middle under Hertz pressure on a half-space, all points added up."""

    def circle(x):
        # the loads of a circle of radius r, seen from a point on the ring
        r = ring + x
        around = pi / 2 / agm(1, abs(x) / (r + ring))  # complete elliptic integral
        return sqrt(1 - (x / b) ** 2) * 4 * r / (r + ring) * around

    return 2 * w / (pi * b) / (pi * STEEL) * quad(circle, [-b, 0, b])


C = mpf("2.29")  # what finite elements take from the logarithm at 45 degrees
table.check(
    "CV-169",
    name + "approach along the normals",
    (sink() - 2 * line(force) / (pi * STEEL) * C) * 1e6,
)


def approach(f):
    """The same for a narrow ring, (2 w/(pi E*)) [ln(16 r0/b) + 1/2 - C], along the axis."""
    w = line(f)
    return 2 * w / (pi * STEEL) * (log(16 * ring / half_width(w)) + mpf(1) / 2 - C) / cos(phi)


halfspace = approach(force) * cos(phi) + 2 * line(force) / (pi * STEEL) * C
assert abs(halfspace / sink() - 1) < 1e-5
table.check("CV-169", name + "axial stiffness", 1 / diff(approach, force) / 1e6)


# slots: where three planes put the centre of the ball
def centre(angle, depths, lean=mpf(0)):
    """Centre of the ball; the axis of the three flanks leans by so much toward x."""
    rows = []
    for k in range(3):
        turn = 2 * pi * k / 3
        x, y, z = sin(angle) * cos(turn), sin(angle) * sin(turn), cos(angle)
        rows.append([x * cos(lean) + z * sin(lean), y, z * cos(lean) - x * sin(lean)])
    return lu_solve(matrix(rows), matrix([R + e for e in depths]))


minute, micron = pi / 180 / 60, mpf("1e-6")
drawn = centre(phi, [0] * 3)
name = "three slots at 45 deg, ball 12.7 mm: "
rise = max(abs(centre(phi + s * minute, [0] * 3)[2] - drawn[2]) for s in (1, -1))
table.check("CV-170", name + "spindle 1 arcmin off lifts the ball", rise * 1e6)
leaning = centre(phi, [0] * 3, minute)
table.check(
    "CV-170",
    name + "axis leaning 1 arcmin shifts it",
    sqrt(leaning[0] ** 2 + leaning[1] ** 2) * 1e6,
)
every = [centre(phi, e) for e in itertools.product((micron, -micron), repeat=3)]
lift = max(abs(c[2] - drawn[2]) for c in every)
aside = max(sqrt(c[0] ** 2 + c[1] ** 2) for c in every)
table.check("CV-170", name + "depths off 1 um each lift it", lift * 1e6)
table.check("CV-170", name + "depths off 1 um each shift it", aside * 1e6)
table.finish()
