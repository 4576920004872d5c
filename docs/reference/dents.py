"""What a load leaves behind: first yield, dents past it, and the least load of a ring crack.

First yield from the stresses on the axis of a circular patch, by a search for the greatest
shear. Dents by the formulas of Jackson and Green (2005) and of Etsion, Kligerman and Kadin
(2005), solved by a root search. Ring cracks from the field of Hertz and Cerruti's point loads
summed over the sliding patch, with the weight function of an edge crack.
"""

from mpmath import atan, exp, mp, mpf, pi, sqrt

from hertz import reduced_modulus
from table import Table

mp.dps = 15
table = Table("Dents and ring cracks")
RADIUS = mpf("6.35e-3")


def first_yield(nu):
    """Peak pressure over strength where the greatest difference of stresses on the axis is Y."""
    nu = mpf(nu)

    def difference(z):
        normal = -1 / (1 + z * z)
        across = -(1 + nu) * (1 - z * atan(1 / z)) + 1 / (2 * (1 + z * z))
        return across - normal

    low, high = mpf("0.2"), mpf("0.9")
    golden = (sqrt(mpf(5)) - 1) / 2
    while high - low > mpf("1e-9"):
        left, right = high - golden * (high - low), low + golden * (high - low)
        if difference(left) > difference(right):
            high = right
        else:
            low = left
    return 1 / difference((low + high) / 2)


SEATS = {
    "6061-T6, 276 MPa": ("CV-171", "0.33", "276e6", reduced_modulus("203.4e9", "0.29", "68.9e9", "0.33")),
    "7075-T6, 503 MPa": ("CV-172", "0.33", "503e6", mpf("59244.0270e6")),
    "1045, 310 MPa": ("CV-173", "0.30", "310e6", reduced_modulus("203.4e9", "0.29", "200e9", "0.30")),
    "316, 205 MPa": ("CV-174", "0.28", "205e6", mpf("107780.9273e6")),
    "17-4PH, 1170 MPa": ("CV-175", "0.28", "1170e6", mpf("108636.7207e6")),
    "brass, 310 MPa": ("CV-176", "0.34", "310e6", mpf("73418.8752e6")),
    "6061-T6 under carbide, 276 MPa": (
        "CV-177",
        "0.33",
        "276e6",
        reduced_modulus("630e9", "0.22", "68.9e9", "0.33"),
    ),
}


class Dent:
    """A ball of 12.7 mm on a flat that flows."""

    def __init__(self, nu, strength, modulus):
        self.strength, self.modulus = mpf(strength), modulus
        self.onset = mpf("1.295") * exp(mpf("0.736") * mpf(nu))
        part = pi * self.onset * self.strength / 2
        self.first = (part / modulus) ** 2 * RADIUS
        self.force = mpf(4) / 3 * (RADIUS / modulus) ** 2 * part**3

    def patch(self, w):
        """Radius of the patch."""
        x = w / self.first
        grown = mpf("0.14") * exp(23 * self.strength / self.modulus)
        return sqrt(RADIUS * w * max(x / mpf("1.9"), mpf(1)) ** grown)

    def load(self, w):
        """Force at an approach."""
        x = w / self.first
        if x <= mpf("1.9"):
            return self.force * x ** mpf("1.5")
        hard = mpf("2.84") * (1 - exp(mpf("-0.82") * (self.patch(w) / RADIUS) ** mpf("-0.7")))
        flow = 1 - exp(-(x ** (mpf(5) / 9)) / 25)
        return self.force * (
            exp(-(x ** (mpf(5) / 12)) / 4) * x ** mpf("1.5") + 4 * hard / self.onset * flow * x
        )

    def approach(self, force):
        """Approach under a force: halving, as the law rises."""
        low, high = mpf(0), self.first
        while self.load(high) < force:
            low, high = high, 2 * high
        while high - low > mpf("1e-14") * high:
            middle = (low + high) / 2
            if self.load(middle) < force:
                low = middle
            else:
                high = middle
        return (low + high) / 2

    def stays(self, w):
        """What of an approach stays."""
        x = w / self.first
        return w * (1 - x ** mpf("-0.28")) * (1 - x ** mpf("-0.69")) if x > 1 else mpf(0)


for seat, (case, nu, strength, modulus) in SEATS.items():
    ratio = first_yield(nu)
    peak = ratio * mpf(strength)
    table.check(case, f"12.7 mm ball on {seat}: p0 at first yield", peak / mpf(10) ** 6)
    table.check(
        case,
        f"12.7 mm ball on {seat}: force at first yield",
        pi**3 * RADIUS**2 * peak**3 / (6 * modulus**2),
    )
    dent = Dent(nu, strength, modulus)
    for force in 50, 126, 268, 500:
        w = dent.approach(mpf(force))
        name = f"12.7 mm ball on {seat}, {force} N: "
        a = dent.patch(w)
        table.check(case, name + "approach", w * 10**6)
        table.check(case, name + "radius of the dent", a * 1000)
        table.check(case, name + "stiffness after work-in", 2 * modulus * a / 10**6)
        table.check(case, name + "depth left", dent.stays(w) * 10**6)
        table.check(
            case, name + "exponent of loading again", 2 * modulus * a * (w - dent.stays(w)) / force
        )


# ring cracks: worst place r and depth c of a crack beside a patch of radius 1, pressure 1
def hertz(r, z, nu):
    """Radial stress beside the patch."""
    t = r * r + z * z - 1
    u = (t + (t * t + 4 * z * z) ** 0.5) / 2
    s = u**0.5
    q = z / s
    edge = (1 - 2 * nu) / (3 * r * r) * (1 - q**3)
    rest = u * (1 - nu) / (1 + u) + (1 + nu) * s * float(atan(1 / s)) - 2
    return edge + q**3 * u / (u * u + z * z) + q * rest


def legendre(n):
    """Points and weights on 0..1."""
    points = []
    for k in range(n):
        x = float(mp.cos(pi * (k + mpf("0.75")) / (n + mpf("0.5"))))
        for _ in range(50):
            p0, p1 = 1.0, x
            for j in range(2, n + 1):
                p0, p1 = p1, ((2 * j - 1) * x * p1 - (j - 1) * p0) / j
            slope = n * (x * p1 - p0) / (x * x - 1)
            step = p1 / slope
            x -= step
            if abs(step) < 1e-15:
                break
        points.append(((1 + x) / 2, 1 / ((1 - x * x) * slope * slope)))
    return points


POINTS = legendre(24)


def sliding(r, z, nu):
    """Stress across at a depth behind a patch that slides with a friction of 1."""
    reach = float(mp.asin(1 / mpf(r))) if r > 1 else float(pi) / 2
    total = 0.0
    for t, weight in POINTS:
        turn = (2 * t - 1) * float(pi) / 2
        angle = reach * float(mp.sin(turn))
        c, s = float(mp.cos(angle)), float(mp.sin(angle))
        half = max(1 - (r * s) ** 2, 0) ** 0.5
        near, length = max(r * c - half, 0), 2 * half if r * c > half else r * c + half
        around = weight * float(pi) * reach * float(mp.cos(turn))
        for v, w in POINTS:
            away = near + length * v**3
            x0, y0 = -r + away * c, away * s
            pull = max(1 - x0 * x0 - y0 * y0, 0) ** 0.5
            x = -away * c
            rho = (away * away + z * z) ** 0.5
            deep = rho + z
            field = -3 * x**3 / rho**5 + (1 - 2 * nu) * (
                x / rho**3
                - 3 * x / (rho * deep**2)
                + x**3 / (rho**3 * deep**2)
                + 2 * x**3 / (rho**2 * deep**3)
            )
            total += field * pull * away * around * length * 3 * v * v * w
    return total / (2 * float(pi))


SINES = [float(mp.sin((k + 0.5) * pi / 32)) for k in range(16)]
WEIGHTS = [(1.3 - 0.3 * s**1.25) / 16 for s in SINES]


def intensity(r, c, nu, friction):
    """K over p0 sqrt(a) of a crack of a depth at a place."""
    total = 0.0
    for s, w in zip(SINES, WEIGHTS):
        stress = hertz(r, c * s, nu)
        if friction:
            stress += friction * sliding(r, c * s, nu)
        total += w * stress
    return (float(pi) * c) ** 0.5 * total


def worst(nu, friction):
    """Greatest K over places and depths, by steps that are halved."""
    best = (0.0, 1.12, 0.06)
    span_r, span_c = 0.04, 0.3
    while span_r > 0.002:
        moved = False
        _, r, c = best
        for dr, dc in ((0, 0), (span_r, 0), (-span_r, 0), (0, span_c), (0, -span_c)):
            at_r, at_c = max(r + dr, 1.0), c * (1 + dc)
            k = intensity(at_r, at_c, nu, friction)
            if k > best[0]:
                best, moved = (k, at_r, at_c), (dr, dc) != (0, 0)
        if not moved:
            span_r, span_c = span_r / 2, span_c / 2
    return best[0]


for poisson, mu in ((0.14, 0), (0.22, 0), (0.30, 0), (0.22, 0.1), (0.30, 0.1), (0.22, 0.2)):
    k = worst(poisson, mu)
    table.check(
        "CV-178",
        f"least load of a ring crack, nu = {poisson:.2f}, friction {mu:.1f}",
        pi**2 / (3 * mpf(k) ** 2),
    )
uniform = sum(WEIGHTS)
assert abs(uniform - 1.1222) < 3e-3
table.check("CV-179", "tension at the edge of a sliding circle, nu = 0.30, friction 1", pi * mpf("4.3") / 8 + mpf("0.4") / 3)
table.finish()
