"""Screw threads from the 60 degree profile: areas, limits of one worked example, torque, travel."""

from mpmath import atan2, degrees, mp, mpf, pi, radians, sqrt, tan

from table import Table

table = Table("Screw threads")
mp.dps = 15
TAN30 = tan(radians(mpf(30)))


def stress_area(d, pitch):
    """Circle whose diameter lies midway between pitch diameter and rounded root (ISO 898-1)."""
    height = sqrt(mpf(3)) / 2 * pitch
    root = d - 17 * height / 12
    return pi / 4 * ((d - 3 * height / 4 + root) / 2) ** 2


for case, name, d, pitch in (
    ("CV-097", "M3x0.5", "3", "0.5"),
    ("CV-098", "M4x0.7", "4", "0.7"),
    ("CV-099", "M5x0.8", "5", "0.8"),
    ("CV-100", "M6x1", "6", "1"),
    ("CV-101", "M8x1.25", "8", "1.25"),
    ("CV-102", "M8x1", "8", "1"),
    ("CV-103", "M10x1.5", "10", "1.5"),
):
    table.check(case, name + ": stress area", stress_area(mpf(d), mpf(pitch)))
for case, name, d, n in (
    ("CV-104", "1/2-20", "0.5", 20),
    ("CV-105", "10-32", "0.19", 32),
    ("CV-106", "1/4-28", "0.25", 28),
    ("CV-107", "5/16-24", "0.3125", 24),
    ("CV-107", "3/8-24", "0.375", 24),
    ("CV-107", "7/16-20", "0.4375", 20),
):
    table.check(case, name + ": stress area", pi / 4 * (mpf(d) - mpf("0.9743") / n) ** 2)


def strip_areas(pitch, length, nut_minor, screw_pitch, screw_major, nut_pitch):
    """Cylinders at which the threads shear: the share of the pitch that a thread fills there.

    At its pitch diameter a thread is half a pitch wide, and it widens on both flanks of 30 degrees:
    for the screw at the nut's greatest minor diameter, for the nut at the screw's least major one.
    """
    turns = length / pitch
    screw = pi * nut_minor * turns * (pitch / 2 + (screw_pitch - nut_minor) * TAN30)
    nut = pi * screw_major * turns * (pitch / 2 + (screw_major - nut_pitch) * TAN30)
    return screw, nut


def strip(case, name, length, pitch, limits):
    """Limits recalled from ISO 965 and ASME B1.1: D1 max, d2 min, d min, D2 max."""
    screw, nut = strip_areas(pitch, length, *[mpf(x) for x in limits.split()])
    table.check(case, f"{name}: strip area of the screw", screw)
    table.check(case, f"{name}: strip area of the nut", nut)


one = ", engaged one diameter"
strip("CV-108", "M5 6H/6g" + one, 5, mpf("0.8"), "4.334 4.361 4.826 4.605")
strip("CV-109", "M6 6H/6g" + one, 6, mpf(1), "5.153 5.212 5.794 5.500")
strip("CV-110", "M8 6H/6g" + one, 8, mpf("1.25"), "6.912 7.042 7.760 7.348")
strip("CV-111", "M10 6H/6g" + one, 10, mpf("1.5"), "8.676 8.862 9.732 9.206")
inch = " 2B/2A, engaged one inch"
strip("CV-112", "1/2-20" + inch, 1, mpf(1) / 20, ".457 .4619 .4906 .4731")
strip("CV-113", "10-32" + inch, 1, mpf(1) / 32, ".164 .1658 .1831 .1736")
strip("CV-114", "1/4-28" + inch, 1, mpf(1) / 28, ".220 .2225 .2425 .2311")

# ASME B1.1 (formulas recalled): class 2A, engaged over nine pitches, rounded to 0.0001 in
p = 1 / 28
pitch_tolerance = 0.0015 * 0.5 ** (1 / 3) + 0.0015 * (9 * p) ** 0.5 + 0.015 * p ** (2 / 3)
allowance = round(0.3 * pitch_tolerance, 4)
major = round(0.5 - allowance, 4)
pitch_diameter = round(0.5 - 0.75 * 0.75**0.5 * p - allowance, 4)
name = "1/2-28 UNEF 2A/2B: "
table.check("CV-115", name + "largest major diameter", major)
table.check("CV-115", name + "smallest major diameter", round(major - 0.06 * p ** (2 / 3), 4))
table.check("CV-115", name + "largest pitch diameter", pitch_diameter)
table.check("CV-115", name + "smallest pitch diameter", round(pitch_diameter - pitch_tolerance, 4))
table.check(
    "CV-115", name + "smallest minor diameter of the nut", round(0.5 - 1.25 * 0.75**0.5 * p, 3)
)

for name, d, pitch, strength in (
    ("M6 class 8.8", 6, "1", 800),
    ("M8 class 8.8", 8, "1.25", 800),
    ("M6 class 12.9", 6, "1", 1220),
):
    table.check("CV-116", name + ": tensile load", stress_area(mpf(d), mpf(pitch)) * strength)

table.check("CV-117", "M6, 2000 N, K = 0.2: torque", mpf("0.2") * mpf("6e-3") * 2000)
# turned once: work against the lead, against friction on the flanks and under the head
mu, force, d2, head = mpf("0.12"), mpf(2000), mpf("6e-3") - mpf("0.6495e-3"), mpf("8.5e-3")
flank = force * 2 * TAN30  # the flank's force is larger by 1/cos 30
work = force * mpf("1e-3") + mu * flank * pi * d2 + mu * force * pi * head
torque = work / (2 * pi)
table.check("CV-117", "M6, 2000 N, mu = 0.12: torque", torque)
table.check("CV-117", "M6, mu = 0.12: nut factor", torque / (mpf("6e-3") * force))
preload = mpf("0.75") * 580 * stress_area(mpf(6), mpf(1))
table.check("CV-118", "M6 class 8.8: preload", preload)
table.check("CV-118", "M6 class 8.8: torque", mpf("0.2") * mpf("6e-3") * preload)
for x in 25, 30:
    ratio = (1 + mpf(x) / 100) / (1 - mpf(x) / 100)
    table.check("CV-119", f"scatter {x} %: tightening factor", ratio)

leads = {"M6x1": 1000, "M6x0.5": 500}
for name in "1/4-28", "1/2-20", "1/4-80", "10-32", "3/8-24":
    leads[name] = mpf(25400) / int(name.split("-")[1])
for name, lead in leads.items():
    table.check("CV-120", name + ": travel for one degree", mpf(lead) / 360)
table.check(
    "CV-121",
    "differential screw of 24 and 28 threads per inch: travel for one degree",
    (leads["3/8-24"] - leads["1/4-28"]) / 360,
)
table.check(
    "CV-122",
    "M6x1 at a pitch diameter of 5.350 mm: lead angle",
    degrees(atan2(1, pi * mpf("5.350"))),
)
table.finish()
