"""What small errors of the seats do: the six gaps closed by a root search over the exact pose."""

from mpmath import cbrt, cos, findroot, mp, mpf, pi, sin, sqrt

from hertz import ball_on_flat, reduced_modulus
from table import Table
from three_vees import contacts, cross

table = Table("Error motion of a three-vee coupling")
mp.dps = 30
six = contacts(pi / 4, mpf("0.05"))


def turned(p, rotation):
    """A point turned about an axis through the origin by the length of the vector (Rodrigues)."""
    angle = sqrt(sum(x * x for x in rotation))
    if angle == 0:
        return p
    axis = [x / angle for x in rotation]
    along = sum(a * b for a, b in zip(axis, p)) * (1 - cos(angle))
    side = cross(axis, p)
    return [p[i] * cos(angle) + side[i] * sin(angle) + axis[i] * along for i in range(3)]


def rest(offsets):
    """Translation and rotation vector that put every ball back on its flanks, per unit of offset.

    Flanks are moved out along their normals by so many nanometres.
    """
    scale = mpf(10) ** -9

    def gaps(*x):
        result = []
        for (p, n), e in zip(six, offsets):
            moved = turned(p, [scale * r for r in x[3:]])
            result.append(sum(n[i] * ((moved[i] - p[i]) / scale + x[i]) for i in range(3)) - e)
        return result

    return findroot(gaps, tuple(mpf(i + 1) / 10 for i in range(6)))


one = rest([1, 0, 0, 0, 0, 0])
for name, i in ("dx", 0), ("dz", 2), ("tx", 3), ("tz", 5):
    table.check("CV-078", "one flank out by 1 um: " + name, one[i])
each = [rest([mpf(i == j) for i in range(6)]) for j in range(6)]
for i, name in enumerate(("x", "y", "z", "tx", "ty", "tz")):
    spread = sqrt(sum(pose[i] ** 2 for pose in each))
    table.check("CV-079", "six independent errors of sd 1 um: sd of " + name, spread)
table.check("CV-080", "all six flanks out by 1 um: dz", rest([1] * 6)[2])

# a ball between two flanks that meet in the apex stands R/cos(al) above it
minute = pi / 180 / 60
rise = mpf("6.35e-3") * (1 / cos(pi / 4 + minute / 2) - 1 / cos(pi / 4 - minute / 2))
table.check("CV-091", "flanks 1 arcmin steeper about the apex: rise of a 12.7 mm ball", rise * 1e6)

mp.dps = 15
contact = ball_on_flat("6.35e-3", reduced_modulus(200e9, "0.3", 200e9, "0.3"))
held = mpf("0.1") * 100 / contact.stiffness(mpf(100))
table.check("CV-083", "held by friction: mu 0.1, 12.7 mm ball, 100 N, E 200 GPa", held * 1e6)
estimate = mpf("0.1") * cbrt(2 / (3 * mpf("6.35e-3"))) * cbrt((mpf(100) / mpf(200e9)) ** 2)
table.check("CV-083", "the same over the estimate mu (2/(3R))^(1/3) (P/E)^(2/3)", held / estimate)
table.finish()
