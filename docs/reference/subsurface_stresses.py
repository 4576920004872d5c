"""Shear below a Hertz patch, tension at its edge, first yield: from point loads.

Below the centre: Boussinesq's stresses of a point load (Johnson, Contact Mechanics, eq. 3.23,
recalled) added up over the patch. Long patch: Flamant's line load added up across it. On the
surface: second derivatives of the logarithmic potential of the pressure, which is stripped into
uniform ellipses of one shape, each with the field 2 pi a b/(x + sqrt(x^2 - a^2 + b^2)) on its axis.
Lengths in units of a (circle) or b (ellipse), stresses in units of p0, tension positive.
"""

import math

from mpmath import findroot, mp, mpf, quad, sqrt

from hertz import STEEL, ball_on_flat
from table import Table

table = Table("Stresses below and beside the patch")
mp.dps = 15

GOLD = (math.sqrt(5) - 1) / 2


def greatest(function, low, high):
    """Place and value of the greatest value, by the golden section."""
    inner, outer = high - GOLD * (high - low), low + GOLD * (high - low)
    left, right = function(inner), function(outer)
    while high - low > 2e-8:
        if left > right:
            high, outer, right = outer, inner, left
            inner = high - GOLD * (high - low)
            left = function(inner)
        else:
            low, inner, left = inner, outer, right
            outer = low + GOLD * (high - low)
            right = function(outer)
    place = (low + high) / 2
    return place, function(place)


def gauss(n):
    """Nodes and weights of Gauss and Legendre on 0 to 1."""
    nodes = []
    for i in range(n):
        x = math.cos(math.pi * (i + 0.75) / (n + 0.5))
        for _ in range(100):
            p, q = 1.0, 0.0
            for j in range(n):
                p, q = ((2 * j + 1) * x * p - j * q) / (j + 1), p
            slope = n * (x * p - q) / (x * x - 1)
            x -= p / slope
            if abs(p / slope) < 1e-15:
                break
        nodes.append(((1 + x) / 2, 1 / ((1 - x * x) * slope * slope)))
    return nodes


NODES = gauss(48)


def point_load(r, z, nu):
    """Radial, hoop and normal stress of a unit point load, times 2 pi."""
    big = math.hypot(r, z)
    # 1/r^2 - z/(R r^2), written so that it keeps its digits for small r
    near = 1 / (big * (big + z))
    radial = (1 - 2 * nu) * near - 3 * z * r * r / big**5
    hoop = -(1 - 2 * nu) * (near - z / big**3)
    return radial, hoop, -3 * z**3 / big**5


def below_centre(z, nu, a, b, turns):
    """Stresses along a, along b and downward at depth z below the centre."""
    along = across = down = 0.0
    for i in range(turns):
        c2 = math.cos((i + 0.5) / turns * math.pi / 2) ** 2
        s2 = 1 - c2
        rho = 1 / math.sqrt(c2 / a**2 + s2 / b**2)
        for u, weight in NODES:
            t = u * math.pi / 2  # r = rho sin t, pressure cos t
            radial, hoop, normal = point_load(rho * math.sin(t), z, nu)
            w = weight * rho * rho * math.sin(t) * math.cos(t) ** 2
            along += w * (radial * c2 + hoop * s2)
            across += w * (radial * s2 + hoop * c2)
            down += w * normal
    # four quarters, times dtheta dt over 2 pi
    scale = 4 * (math.pi / 2 / turns) * (math.pi / 2) / (2 * math.pi)
    return along * scale, across * scale, down * scale


def mises(s):
    """Equivalent stress of three principal stresses."""
    return math.sqrt(((s[0] - s[1]) ** 2 + (s[1] - s[2]) ** 2 + (s[2] - s[0]) ** 2) / 2)


for case, nu in (
    ("CV-040", 0.3),
    ("CV-041", 0.22),
    ("CV-042", 0.25),
    ("CV-043", 0.28),
    ("CV-044", 0.33),
):
    name = f"circle, nu = {nu}"

    def stress(z):
        """On the axis, where one direction stands for all."""
        return below_centre(z, nu, 1, 1, 1)

    def shear(z):
        """Half the greatest difference of principal stresses."""
        s = stress(z)
        return (max(s) - min(s)) / 2

    depth, most = greatest(shear, 0.2, 1.0)
    flow = greatest(lambda z: mises(stress(z)), 0.2, 1.0)[1]
    table.check(case, name + ": depth of greatest shear", depth)
    table.check(case, name + ": greatest shear", most)
    table.check(case, name + ": p0 at first yield", 1 / (2 * most))
    table.check(case, name + ": p0 at first yield, von Mises", 1 / flow)
    # mean pressure over peak pressure is the volume of a half-ellipsoid over its cylinder
    mean = 2 * quad(lambda r: r * sqrt(1 - r * r), [0, 1])
    table.check(case, name + ": mean pressure at first yield", mean / (2 * most))

ball = ball_on_flat("6.35e-3", STEEL)
for case, words, peak in (
    ("CV-045", "p0 = 1.60 x 2000 MPa", mpf("3200e6")),
    ("CV-045", "p0 = 1.6131 x 2000 MPa", mpf("1.6131") * mpf("2000e6")),
    ("CV-046", "p0 = 4200 MPa", mpf("4200e6")),
):
    force = findroot(lambda f: ball.peak(f) / peak - 1, (100, 2000), solver="anderson")
    table.check(case, "12.7 mm ball on flat: force at " + words, force)


def line_shear(z):
    """Below the middle of a long patch of half width 1: Flamant's line loads."""
    down = across = 0.0
    for u, weight in NODES:
        t = u * math.pi / 2
        x = math.sin(t)
        w = weight * (math.pi / 2) * math.cos(t) ** 2 * 2
        r4 = (x * x + z * z) ** 2
        down -= w * 2 / math.pi * z**3 / r4
        across -= w * 2 / math.pi * z * x * x / r4
    return (across - down) / 2


for i, aspect in enumerate((0.0, 0.2, 0.4, 0.6, 0.8, 1.0)):
    case = f"CV-{47 + i:03d}"
    if aspect:
        name = f"b/a = {aspect}, nu = 0.3"

        def across(z):
            """Half of the stress across (along b) less that downward."""
            s = below_centre(z, 0.3, 1 / aspect, 1.0, 32)
            return (s[1] - s[2]) / 2

    else:
        name, across = "line contact, nu = 0.3", line_shear
    depth, most = greatest(across, 0.3, 1.0)
    table.check(case, name + ": depth of greatest shear", depth)
    table.check(case, name + ": greatest shear", most)
    table.check(case, name + ": p0 at first yield", 1 / (2 * most))
    table.check(case, name + ": depth of greatest shear, three digits", depth)
    table.check(case, name + ": greatest shear, three digits", most)


def edge(end, other, nu):
    """Tension at the end of a semi-axis: no pressure there, so the in-plane stresses are opposite.

    u = -(1-2 nu)/(4 pi G) grad L with L the logarithmic potential, so s = -(1-2 nu)/(2 pi) L''.
    """

    def strip(t):
        # -dp/dlambda of the stripped pressure and the slope of 1/(x + root)
        root = sqrt(end**2 - t * t * (end**2 - other**2))
        return t**3 / sqrt(1 - t * t) / (root * (end + root))

    return (1 - 2 * nu) * end * other * quad(strip, [0, 1])


def centre(own, other, nu):
    """Stress at the centre along the semi-axis 'own'; every strip has the same field there."""
    shear = mpf(1) / 2  # G cancels
    bend = 2 * mp.pi * other / (own + other)
    turn = 2 * mp.pi * own / (own + other)
    strain = [-(1 - 2 * nu) / (4 * mp.pi * shear) * x for x in (bend, turn)]
    return 2 * shear / (1 - nu) * (strain[0] + nu * strain[1]) - nu / (1 - nu)


for case, aspect in ("CV-053", "0.2"), ("CV-054", "0.5"), ("CV-055", "0.8"), ("CV-056", "1.0"):
    name, b, nu = f"b/a = {aspect}, nu = 0.3", mpf(aspect), mpf("0.3")
    table.check(case, name + ": centre stress along a", centre(1, b, nu))
    table.check(case, name + ": centre stress along b", centre(b, 1, nu))
    table.check(case, name + ": tension at the ends of a", edge(1, b, nu))
    table.check(case, name + ": tension at the ends of b", edge(b, 1, nu))
table.check("CV-056", "circle, nu = 0.22: edge tension", edge(1, 1, mpf("0.22")))
table.finish()
