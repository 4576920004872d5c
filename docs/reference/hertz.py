"""Hertz contacts from the law of the point load alone.

A point load P on a half-space lowers the surface at distance r by (1-nu^2) P/(pi E r).
Integrating it over an ellipse under p0 sqrt(1 - x^2/a^2 - y^2/b^2), along chords through
the point looked at, gives approach and curvatures as integrals over the direction theta
of the chord, with rho(theta) the radius of the ellipse and d the distance of the chord
from the centre:

    w(x, y) = p0/(2 E*) int_0^pi rho [1 - d^2/(a^2 sin^2 + b^2 cos^2)] dtheta

These are integrated numerically and the ratio b/a is found by a root search; no elliptic
integral and no ratio equation is used.
"""

from mpmath import cbrt, cos, diff, fp, mp, mpf, pi, sin, sqrt

mp.dps = 15


def reduced_modulus(e1, nu1, e2, nu2):
    """E* of two bodies."""
    return 1 / ((1 - mpf(nu1) ** 2) / mpf(e1) + (1 - mpf(nu2) ** 2) / mpf(e2))


def curvatures(first, second, psi):
    """A <= B of the gap A x^2 + B y^2, from the two 2x2 curvature matrices.

    first and second hold the two principal curvatures of a body, psi is the angle
    between the planes of the first ones.
    """
    c, s = cos(psi), sin(psi)
    xx = first[0] + second[0] * c * c + second[1] * s * s
    yy = first[1] + second[0] * s * s + second[1] * c * c
    xy = (second[0] - second[1]) * c * s
    # gap = half the quadratic form of the sum; its principal values
    mean, half = (xx + yy) / 2, sqrt(((xx - yy) / 2) ** 2 + xy * xy)
    return (mean - half) / 2, (mean + half) / 2


def directions(k, weight):
    """int_0^(pi/2) rho weight dtheta for an ellipse of semi-axes 1 and k; in doubles."""

    def ray(t):
        c2, s2 = fp.cos(t) ** 2, fp.sin(t) ** 2
        return weight(c2, s2) / (c2 + s2 / k**2) ** 0.5

    return fp.quad(ray, [0, fp.pi / 2])


class Contact:
    """Two bodies whose gap is A x^2 + B y^2."""

    def __init__(self, lesser, greater, modulus):
        self.lesser, self.greater, self.modulus = mpf(lesser), mpf(greater), mpf(modulus)

        def excess(x):
            k = fp.exp(x)
            along = directions(k, lambda c2, s2: s2 / (s2 + k * k * c2))
            across = directions(k, lambda c2, s2: c2 / (s2 + k * k * c2))
            return fp.log(across / along / ratio)

        ratio = float(self.greater / self.lesser)
        guess = -2 * fp.log(ratio) / 3
        found = abs(excess(guess)) < 1e-14
        k = fp.exp(guess if found else fp.findroot(excess, (guess, guess - 0.01), tol=1e-24))
        self.k = mpf(k)  # b/a
        self.sum = mpf(directions(k, lambda c2, s2: 1 / (s2 + k * k * c2)))
        self.depth = mpf(directions(k, lambda c2, s2: 1))

    def major(self, force):
        """Longer semi-axis a."""
        return cbrt(
            3 * force * self.sum / (2 * pi * self.k * self.modulus * (self.lesser + self.greater))
        )

    def minor(self, force):
        """Shorter semi-axis b."""
        return self.k * self.major(force)

    def peak(self, force):
        """Peak pressure, from the volume of the half-ellipsoid."""
        return 3 * force / (2 * pi * self.major(force) * self.minor(force))

    def approach(self, force):
        """Approach of distant points."""
        return self.peak(force) * self.major(force) * self.depth / self.modulus

    def stiffness(self, force):
        """Slope of force by approach, by numerical differentiation."""
        return 1 / diff(self.approach, force)


STEEL = reduced_modulus(206e9, "0.3", 206e9, "0.3")


def ball_on_flat(radius, modulus):
    """A ball on a plane."""
    return Contact(1 / (2 * mpf(radius)), 1 / (2 * mpf(radius)), modulus)
