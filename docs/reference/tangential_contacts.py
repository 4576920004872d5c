"""Tangential load, slip and spin, from Cerruti's solution added up over the patch.

A tangential point load Q along x on a half-space moves the surface at (r, phi) by
Q/(2 pi G) [(1-nu)/r + nu cos^2(phi)/r]. Slip follows Cattaneo: mu p over the patch, less the
same shape over the part that sticks; on the way back twice that with the opposite sign.
"""

from math import cos, pi, radians, sin, sqrt

from mpmath import fp, mpf
from mpmath import quad as endless  # keeps its digits where an integrand has no end

from hertz import STEEL, ball_on_flat
from table import Table

table = Table("Tangential load, slip and spin")
NU, MU, FORCE = 0.3, 0.1, 100.0
SHEAR = 206e9 / (2 * (1 + NU))
flat = ball_on_flat("6.35e-3", STEEL)
A, P0 = float(flat.major(FORCE)), float(flat.peak(FORCE))
quad = fp.quad
RING = quad(lambda t: (1 - NU) + NU * cos(t) ** 2, [0, 2 * pi])
base = "12.7 mm ball on flat, 100 N, mu = 0.1"


def sideways(traction, radius):
    """Movement of the middle of both bodies' patch under a traction of r."""
    return 2 * RING / (2 * pi * SHEAR) * quad(traction, [0, radius])


def total(traction, radius):
    """Force of a traction of r."""
    return 2 * pi * quad(lambda r: r * traction(r), [0, radius])


def sphere_like(radius):
    """The shape sqrt(radius^2 - r^2) over the patch's radius."""
    return lambda r: MU * P0 / A * sqrt(radius**2 - r * r)


ALL, GROSS = total(sphere_like(A), A), sideways(sphere_like(A), A)


def sticking(part):
    """Radius that sticks under the part of the force that makes all slip."""
    return fp.findroot(
        lambda c: (ALL - total(sphere_like(c), c)) / ALL - part,
        (A * 0.2, A * 0.99),
        solver="anderson",
        tol=1e-28,
    )


def displacement(part):
    """Movement under a part of that force, loaded for the first time."""
    c = sticking(part)
    return GROSS - sideways(sphere_like(c), c)


# before anything slips: traction 1/sqrt(a^2 - r^2)
end = mpf(A)
grip = 2 * pi * endless(lambda r: r / (end * end - r * r) ** 0.5, [0, end])
moved = 2 * RING / (2 * pi * SHEAR) * endless(lambda r: 1 / (end * end - r * r) ** 0.5, [0, end])
initial = grip / moved
table.check("CV-057", base + ": kt0/kn", initial / flat.stiffness(FORCE))
table.check("CV-057", base + ": kt0", initial / 1e6)
table.check("CV-057", base + ": G*", initial / (8 * A) / 1e9)
LIMIT = MU * FORCE
for case, part in ("CV-058", "0.25"), ("CV-059", "0.5"), ("CV-060", "0.9"):
    name, q = f"Q/(mu P) = {part}", float(part)
    table.check(case, name + ": stick radius c/a", sticking(q) / A)
    table.check(case, name + ": displacement", displacement(q) * 1e6)
    h = 1e-4
    # five points: good to h^4
    slope = (
        8 * (displacement(q + h) - displacement(q - h))
        - (displacement(q + 2 * h) - displacement(q - 2 * h))
    ) / (12 * h)
    table.check(case, name + ": stiffness", LIMIT / slope / 1e6)
table.check("CV-061", base + ": displacement at full slip", GROSS * 1e6)
# the stick radius shrinks to nothing, and stiffness with it: force over movement of the last bit
tiny = 1e-30 * A
last = total(sphere_like(tiny), tiny) / sideways(sphere_like(tiny), tiny)
table.check("CV-061", base + ": stiffness at full slip", last / 1e6)

half = 0.5


def back(part):
    """Movement on the way back from half the limit, at a part from -0.5 to 0.5."""
    return displacement(half) - (0 if part == half else 2 * displacement((half - part) / 2))


table.check("CV-062", base + ": residual after half the limit", back(0.0) * 1e9)
# the way forth is the way back mirrored in both axes: area = 2 int (movement on the way back) dQ
area = 2 * LIMIT * quad(back, [-half, half], maxdegree=4)
table.check("CV-062", base + ": loop energy at half the limit", area * 1e9)


def compliance(k, weight):
    """int of a traction const/sqrt(1 - x^2 - y^2/k^2) of total 1 over (1/r) weight(phi), G = 1."""
    # along a ray of length rho: int dr/sqrt(1 - r^2/rho^2) = rho pi/2
    ray = float(endless(lambda u: 1 / (1 - u * u) ** 0.5, [0, 1]))
    rays = 4 * quad(
        lambda t: weight(cos(t) ** 2) / sqrt(cos(t) ** 2 + sin(t) ** 2 / k**2), [0, pi / 2]
    )
    return ray * rays / (2 * pi * k) / (2 * pi)


for case, aspect in ("CV-063", "0.8"), ("CV-064", "0.5"), ("CV-065", "0.2"), ("CV-066", "0.1"):
    name, k = f"b/a = {aspect}, nu = 0.3", float(aspect)
    normal = compliance(k, lambda c2: 1 - NU)
    table.check(case, name + ": kt/kn along a", normal / compliance(k, lambda c2: 1 - NU + NU * c2))
    table.check(
        case, name + ": kt/kn along b", normal / compliance(k, lambda c2: 1 - NU + NU * (1 - c2))
    )
table.check(
    "CV-067",
    "b/a = 0.5, unit G and a, one body: compliance along a",
    compliance(half, lambda c2: 1 - NU + NU * c2),
)


def spin(k):
    """Moment over mu N a when all of the patch slips: friction times radius, in polar shares."""
    ray = quad(lambda u: u * u * sqrt(1 - u * u), [0, 1])
    rays = 4 * quad(lambda t: (cos(t) ** 2 + sin(t) ** 2 / k**2) ** -1.5, [0, pi / 2])
    return ray * rays / (2 / 3 * pi * k)


table.check("CV-068", "circle: moment over mu N a", spin(1.0))
table.check(
    "CV-069", "12.7 mm ball on flat, 100 N: moment of full slip", spin(1.0) * LIMIT * A * 1e6
)
table.check("CV-070", "a/b = 2: moment over mu N a", spin(half))
table.check("CV-070", "a/b = 5: moment over mu N a", spin(0.2))
# torsion: traction r/sqrt(a^2 - r^2) turns the patch as one; the turn of its middle is the
# derivative of Cerruti's movement there, from which nu drops out: (1/(2 G)) int traction/r dr
twist = 2 / (2 * SHEAR) * endless(lambda r: 1 / (end * end - r * r) ** 0.5, [0, end])
moment = 2 * pi * endless(lambda r: r**3 / (end * end - r * r) ** 0.5, [0, end])
table.check("CV-069", "12.7 mm ball on flat, 100 N: torsional stiffness", moment / twist)

RADIUS = 6.35e-3


def swivel(case, angle, phi):
    """Three contacts of a ball, each against its own sliding."""
    normals = [
        (sin(phi) * cos(2 * pi * i / 3), sin(phi) * sin(2 * pi * i / 3), cos(phi)) for i in range(3)
    ]
    force = FORCE / sum(n[2] for n in normals)
    name = f"12.7 mm ball in a seat at {angle}, 100 N: "
    table.check(case, name + "contact force", force)
    for words, axis in ("moment about the axis", (0, 0, 1)), ("moment across", (1, 0, 0)):
        speeds = []
        for n in normals:
            v = [
                axis[(i + 1) % 3] * n[(i + 2) % 3] - axis[(i + 2) % 3] * n[(i + 1) % 3]
                for i in range(3)
            ]
            speeds.append(RADIUS * sqrt(sum(x * x for x in v)))
        # power of friction at a turn of 1 rad/s
        table.check(case, name + words, sum(MU * force * s for s in speeds) * 1e3)


swivel("CV-071", "45 deg", radians(45))
swivel("CV-072", "cube corner", radians(54.7356))
table.finish()
