"""Disc springs from their strain energy, a helical spring, magnets from pairs of points."""

from mpmath import acos, diff, log, mp, mpf, pi, quad, sqrt

from table import Table

table = Table("Springs and magnets")
mp.dps = 15
MODULUS, NU = mpf("206e3"), mpf("0.3")  # N/mm2
PLATE = MODULUS / (1 - NU**2)


class Disc:
    """A cone whose section turns about its neutral circle without bending (Almen and Laszlo).

    Hoop strain at distance x inside the neutral circle and y above the middle of the section,
    turned by phi out of a cone of angle beta: [x (beta - phi/2) + y] phi/(c - x). The energy of the
    x part gives K1 of the standard. That of the y part would give a K1 smaller by 0.8 %; the
    standard takes the first for both, and so does this script, which scales the y part down.
    """

    def __init__(self, outer, inner, thickness, height):
        self.a, self.b = mpf(outer) / 2, mpf(inner) / 2
        self.t = mpf(thickness)
        self.travel = mpf(height) - self.t
        self.c = (self.a - self.b) / log(self.a / self.b)  # no net hoop force
        self.beta = self.travel / (self.a - self.b)
        self.lean = self.t * quad(lambda r: (self.c - r) ** 2 / r, [self.b, self.a])
        self.bend = self.t**3 / 12 * quad(lambda r: 1 / r, [self.b, self.a])
        # K1 of both parts, from the stiffness that each has at no load
        unit = 4 * PLATE / (2 * self.a) ** 2
        leaning = diff(lambda s: self.part(s, self.lean, self.beta - s / (2 * self.width())), 0, 2)
        bending = diff(lambda s: self.part(s, self.bend, 1), 0, 2)
        self.k1 = unit * self.travel**2 * self.t / leaning
        self.exact = unit * self.t**3 / bending
        assert 0.98 < self.exact / self.k1 < 1

    def width(self):
        """Width of the section."""
        return self.a - self.b

    def part(self, s, weight, factor):
        """Energy of one part of the strain after a travel s."""
        return pi * PLATE * (s / self.width() * factor) ** 2 * weight

    def energy(self, s):
        """Strain energy after a travel s."""
        lean = self.part(s, self.lean, self.beta - s / (2 * self.width()))
        return lean + self.part(s, self.bend, 1) * self.exact / self.k1

    def force(self, s):
        """Slope of the energy."""
        return diff(self.energy, s)

    def stiffness(self, s):
        """Slope of the force."""
        return diff(self.energy, s, 2)

    def stress(self, s, x, y):
        """Hoop stress of the x part and of the y part, compression negative."""
        phi = s / self.width()
        unit = -PLATE * phi / (self.c - x)
        return unit * x * (self.beta - phi / 2), unit * y

    def coefficients(self):
        """K1, and K2 and K3 from the stress at the upper inner edge."""
        s = self.travel / 2
        lean, bend = self.stress(s, self.c - self.b, self.t / 2)
        unit = -4 * PLATE * self.t * s / (self.exact * (2 * self.a) ** 2)
        return self.k1, lean / unit / (self.travel - s / 2) * self.t, bend / unit

    def pivot(self):
        """Stress above the neutral circle when flat."""
        return self.stress(self.travel, 0, self.t / 2)[1] * self.exact / self.k1


discs = {
    "CV-123": ("50.0", "25.4", "2.0", "3.4"),
    "CV-124": ("50.0", "25.4", "3.0", "4.1"),
    "CV-125": ("25.0", "12.2", "1.5", "2.05"),
    "CV-126": ("25.0", "12.2", "0.9", "1.6"),
    "CV-127": ("20.0", "10.2", "1.1", "1.55"),
}
for case, sizes in discs.items():
    disc, name = Disc(*sizes), "disc {} x {} x {} mm: ".format(*sizes[:3])
    if case in ("CV-123", "CV-125", "CV-127"):
        for word, value in zip(("K1", "K2", "K3"), disc.coefficients()):
            table.check(case, name + word, value)
    most = mpf("0.75") * disc.travel
    table.check(case, name + "force at 0.75 h0", disc.force(most))
    table.check(case, name + "force when flat", disc.force(disc.travel))
    table.check(case, name + "stiffness at 0.75 h0", disc.stiffness(most))
    table.check(case, name + "stress at the pivot when flat", disc.pivot())
    table.check(case, name + "catalogue force", disc.force(most))

# a wire that is twisted: work of the force is that of the torsion along it
G, d, D, n, load = mpf("79300"), mpf(2), mpf(16), 6, mpf(100)
polar = quad(lambda r: 2 * pi * r**3, [0, d / 2])
twist = load * D / 2
sink = quad(lambda u: twist**2 / (G * polar), [0, pi * D * n]) / load
name = "spring d = 2, D = 16 mm, n = 6, G = 79.3 GPa: "
table.check("CV-128", name + "rate", load / sink)
C = D / d
wahl = (4 * C - 1) / (4 * C - 4) + mpf("0.615") / C
table.check("CV-128", name + "Wahl factor", wahl)
table.check("CV-128", name + "shear stress at 100 N", wahl * twist * (d / 2) / polar)

MU0 = 4 * pi / 10**7
# Maxwell's tension B^2/(2 mu0) on the face
table.check("CV-129", "0.5 T over 2.5 cm2: pull", mpf("0.5") ** 2 / (2 * MU0) * mpf("2.5e-4"))


def faces(z, radius):
    """Force of two coaxial discs of unit magnetic charge per area at distance z, times mu0.

    Over pairs of points: those that lie s apart across number 2 pi s times the overlap of two
    circles shifted by s; each pair pulls by z/(4 pi (s^2 + z^2)^(3/2)).
    """
    if z == 0:
        return pi * radius**2 / 2  # the near field of a sheet, 1/2, over the face

    def pairs(s):
        overlap = 2 * radius**2 * acos(s / (2 * radius)) - s / 2 * sqrt(4 * radius**2 - s * s)
        return s * overlap * z / (2 * (s * s + z * z) ** mpf(1.5))

    marks = [0] + [m for m in (z / 2, z, 3 * z, 10 * z) if m < 2 * radius] + [2 * radius]
    return quad(pairs, marks)


def pull(gap, length, radius=mpf("5e-3"), remanence=mpf("1.2")):
    """Force of two equal magnets: their four faces, two and two."""
    sum_ = faces(gap, radius) + faces(gap + 2 * length, radius) - 2 * faces(gap + length, radius)
    return remanence**2 / MU0 * sum_


for gap in "0.1", "0.5", "1.0", "2.0":
    value = pull(mpf(gap) / 1000, mpf("5e-3"))
    table.check("CV-130", f"magnets D = 10, L = 5 mm, 1.2 T, gap {gap} mm: pull", value)
table.check("CV-130", "very long magnets touching, D = 10 mm, 1.2 T: pull", pull(mpf(0), mpf(10)))
table.finish()
