"""Friction at which the last slide home stalls, as an eigenvalue.

Five contacts touch, the sixth is open. The holder can then slide along one twist. Each of the five
contacts pushes with N along its normal and mu N against its slip; the holder just stays if these
balance the load: (W + mu F) N + load = 0, six equations for five forces and mu. With N and 1 as
one vector that is an eigenvalue problem in mu; the smallest positive mu is the limit. Circle of
radius 1, load straight down at its centre.

The five are taken to stay in touch. With three vees all of them push at the limit, which is
asserted. With the trihedral seat at 45 degrees and one of the vee's flanks open, one flank of the
trihedral seat would have to pull a little (0.05 of the load) at 0.4142: there the number is that of
the slide along which all five are kept, not of a holder that may leave it. The program tells the
friction from which a contact pulls as a number of its own.
"""

import numpy as np
from scipy.linalg import eig, null_space

from table import Table

table = Table("Friction that keeps a coupling from seating itself")
LOAD = np.array([0, 0, -1, 0, 0, 0.0])


def normal(degrees_from_vertical, azimuth):
    """Unit normal that leans so far toward an azimuth."""
    angle = np.radians(degrees_from_vertical)
    return np.array(
        [np.sin(angle) * np.cos(azimuth), np.sin(angle) * np.sin(azimuth), np.cos(angle)]
    )


def limit(contacts, ball, missing):
    """Limit of friction with one contact open, and the least force at it over the load.

    Contacts are ball centres and normals.
    """
    places = [p - ball * n for p, n in contacts]
    columns = np.array([np.r_[n, np.cross(x, n)] for x, (_, n) in zip(places, contacts)]).T
    kept = [i for i in range(6) if i != missing]
    twist = null_space(columns[:, kept].T)[:, 0]
    if columns[:, missing] @ twist > 0:  # it has to close the gap
        twist = -twist
    assert LOAD @ twist > 0, "the load does not close this gap"
    drag = []
    for i in kept:
        velocity = twist[:3] + np.cross(twist[3:], places[i])
        against = -velocity / np.linalg.norm(velocity)
        drag.append(np.r_[against, np.cross(places[i], against)])
    still = np.c_[columns[:, kept], LOAD]
    slipping = np.c_[np.array(drag).T, np.zeros(6)]
    values, vectors = eig(still, -slipping)
    found = []
    for value, vector in zip(values, vectors.T):
        real = np.isfinite(value) and abs(value.imag) < 1e-9
        if real and value.real > 0 and abs(vector[5]) > 1e-9:
            found.append((value.real, min((vector[:5] / vector[5]).real)))
    return min(found)


def three_vees(angle, ball=0.0):
    """Three equal vees along the radii; one flank of one of them open, whichever."""
    contacts = []
    for k in range(3):
        azimuth = np.radians(90 + 120 * k)
        centre = np.array([np.cos(azimuth), np.sin(azimuth), 0])
        for side in 1, -1:
            contacts.append((centre, normal(angle, azimuth + side * np.pi / 2)))
    limits = [limit(contacts, ball, i) for i in range(6)]
    assert max(x for x, _ in limits) - min(x for x, _ in limits) < 1e-9
    assert min(least for _, least in limits) > 0, "a contact would have to pull"
    return limits[0][0]


three = "three equal vees, contact normals "
table.check("CV-084", three + "30 deg", three_vees(30))
table.check("CV-085", three + "45 deg", three_vees(45))
for ball in 0.05, 0.1, 0.2:
    table.check("CV-085", f"{three}45 deg, ball/circle {ball}", three_vees(45, ball))
table.check("CV-086", three + "60 deg", three_vees(60))
best = three_vees(63.471)
assert best > three_vees(63.4) and best > three_vees(63.55), "the best angle is another"
table.check("CV-087", three + "63.471 deg", best)


def trihedral_vee_flat(corner):
    """Trihedral seat at 90 degrees, vee at 210 pointing at it, flat at 330: limits, rising."""
    at = [np.array([np.cos(np.radians(a)), np.sin(np.radians(a)), 0]) for a in (90, 210, 330)]
    contacts = [(at[0], normal(corner, np.radians(a))) for a in (90, 210, 330)]
    along = at[0] - at[1]
    azimuth = np.arctan2(along[1], along[0])
    contacts += [(at[1], normal(45, azimuth + side * np.pi / 2)) for side in (1, -1)]
    contacts += [(at[2], np.array([0, 0, 1.0]))]
    # a ball of no size would not slide in the trihedral seat when it only turns there
    return sorted(limit(contacts, 1e-6, i)[0] for i in range(5))


for case, corner in ("CV-088", 45.0), ("CV-089", 54.7356):
    for rank, value in enumerate(trihedral_vee_flat(corner), 1):
        table.check(case, f"trihedral at {corner} deg, vee 45 deg, flat: rank {rank}", value)
table.finish()
