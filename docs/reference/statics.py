"""Contact forces, stiffness and frequencies of the three-vee coupling, by assembling matrices."""

from mpmath import eye, inverse, lu_solve, matrix, mpf, pi, sqrt

from hertz import STEEL, ball_on_flat, reduced_modulus
from table import Table
from three_vees import CIRCLE, contacts, cross, wrenches

table = Table("Statics and stiffness of a three-vee coupling")
six = contacts()
W = wrenches(six)


def forces(force, point):
    """Contact forces under a force at a point."""
    load = matrix([-x for x in force] + [-x for x in cross(point, force)])
    return lu_solve(W, load)


def check(case, name, six_forces):
    """Two forces at each ball."""
    for k in range(3):
        for j, word in enumerate(("+u", "-u")):
            table.check(case, f"{name}: ball at {90 + 120 * k} deg, {word}", six_forces[2 * k + j])


every = forces([0, 0, mpf(-100)], [0, 0, 0])
assert max(every) - min(every) < mpf(10) ** -10
table.check("CV-073", "central preload 100 N: every contact", every[0])
check("CV-076", "100 N at (10, 20) mm", forces([0, 0, mpf(-100)], [mpf("0.01"), mpf("0.02"), 0]))
side = forces([mpf(30), 0, 0], [0, 0, mpf("0.04")])
check("CV-077", "200 N down, 30 N along x at 40 mm", 2 * every + side)


def stiffness(normal, sticking):
    """Sum over the springs: each has the energy (1/2) v^T S v of the move v of its ball centre."""
    k = matrix(6, 6)
    for p, n in six:
        spring = normal * sticking * eye(3)
        for i in range(3):
            for j in range(3):
                spring[i, j] += normal * (1 - sticking) * n[i] * n[j]
        move = matrix(3, 6)  # velocity of p from a twist: v + w x p
        for j in range(3):
            move[j, j] = 1
            unit = [mpf(i == j) for i in range(3)]
            for i, x in enumerate(cross(unit, p)):
                move[i, 3 + j] = x
        k += move.T * spring * move
    return k


k = stiffness(mpf(1), mpf(0))
for i, name in enumerate(("Kx/k", "Ky/k", "Kz/k", "Ktx/k", "Kty/k", "Ktz/k")):
    table.check("CV-074", "frictionless " + name, k[i, i])
k = stiffness(mpf(1), mpf(14) / 17)
for name, i, scale in (
    ("Kx/k", 0, 1),
    ("Kz/k", 2, 1),
    ("Ktx/(k R2)", 3, CIRCLE**2),
    ("Ktz/(k R2)", 5, CIRCLE**2),
):
    table.check("CV-075", "sticking " + name, k[i, i] / scale)

k = stiffness(ball_on_flat("6.35e-3", STEEL).stiffness(mpf(100)), mpf(0))
give = inverse(k)
table.check("CV-081", "1 N down: dz at 100 N per contact", give[2, 2] * 1e9)
table.check("CV-081", "1 N sideways: dx at 100 N per contact", give[0, 0] * 1e9)
for name, i in ("upward", 2), ("sideways", 0):
    # no coupling between the six directions about the middle of the ball plane
    frequency = sqrt(k[i, i] / 2) / (2 * pi)
    table.check("CV-082", "2 kg, 100 N per contact: " + name, frequency)

each = forces([0, 0, mpf(-1500)], [0, 0, 0])[0]
table.check("CV-090", "carbide turret coupling, 1500 N: every contact", each)
carbide = reduced_modulus(630e9, "0.22", 630e9, "0.22")
k = stiffness(ball_on_flat("1.275e-3", carbide).stiffness(each), mpf(0))
table.check(
    "CV-090",
    "its least stiffness with balls of 1.275 mm radius",
    min(k[0, 0], k[1, 1], k[2, 2]),
)
table.finish()
