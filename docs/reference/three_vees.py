"""The coupling of the closed forms: three equal radial vees, balls on a circle of 50 mm radius.

Balls at azimuths 90, 210, 330 degrees; for a groove along the outward direction g, u = z x g and
the normals are +-u sin(al) + z cos(al), force on the holder. Wrench column (n, p x n).
"""

from mpmath import cos, matrix, mp, mpf, pi, sin

mp.dps = 15
CIRCLE = mpf("0.05")
FORTY_FIVE = pi / 4


def cross(a, b):
    """Vector product."""
    return [a[(i + 1) % 3] * b[(i + 2) % 3] - a[(i + 2) % 3] * b[(i + 1) % 3] for i in range(3)]


def contacts(angle=FORTY_FIVE, circle=CIRCLE):
    """Ball centre and normal of the six contacts; +u before -u at each ball."""
    found = []
    for k in range(3):
        azimuth = pi / 2 + 2 * pi * k / 3
        g = [cos(azimuth), sin(azimuth), mpf(0)]
        u = cross([0, 0, 1], g)
        for sign in 1, -1:
            normal = [sign * sin(angle) * u[i] for i in range(2)] + [cos(angle)]
            found.append(([circle * x for x in g], normal))
    return found


def wrenches(six):
    """The 6x6 matrix of wrench columns."""
    w = matrix(6, len(six))
    for j, (p, n) in enumerate(six):
        for i, x in enumerate(list(n) + cross(p, n)):
            w[i, j] = x
    return w
