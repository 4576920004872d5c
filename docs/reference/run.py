#!/usr/bin/env python3
"""Runs the reference scripts and counts what they reach of the table.

With --quick only those that need mpmath and nothing else beyond the standard library.
Ends with 1 if a number differs by more than its tolerance, or a value has no computation.
"""

import argparse
import collections
import concurrent.futures
import os
import subprocess
import sys

import table

SCRIPTS = {
    "hertz_contacts.py": "mpmath",
    "hertz_coefficients.py": "mpmath",
    "handbook_contacts.py": "mpmath",
    "subsurface_stresses.py": "mpmath",
    "dents.py": "mpmath",
    "tangential_contacts.py": "mpmath",
    "statics.py": "mpmath",
    "coupling_errors.py": "mpmath",
    "seating_limits.py": "scipy",
    "materials.py": "",
    "screw_threads.py": "mpmath",
    "preload_devices.py": "mpmath",
    "ball_mounts.py": "mpmath",
    "remount_scatter.py": "scipy",
    "remount_trends.py": "mpmath",
}


def main():
    """Runs, prints, counts."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--quick", action="store_true", help="leave out what needs numpy and scipy")
    parser.add_argument(
        "--values", default=str(table.HERE / "values.tsv"), help="table to compare with"
    )
    options = parser.parse_args()
    wanted = [s for s, needs in SCRIPTS.items() if not options.quick or needs != "scipy"]

    def run(script):
        command = [sys.executable, str(table.HERE / script), "--values", options.values]
        return subprocess.run(command, capture_output=True, text=True, encoding="utf-8")

    workers = min(4, os.cpu_count() or 1)
    bad = False
    reached, kinds = set(), collections.Counter()
    every = table.rows(options.values)
    with concurrent.futures.ThreadPoolExecutor(workers) as pool:
        for script, done in zip(wanted, pool.map(run, wanted)):
            print(f"\n{script}\n{done.stdout}{done.stderr}", end="")
            bad = bad or done.returncode != 0
            reached.update(
                x[5:].split(": table ")[0] for x in done.stdout.splitlines() if x[:3] == "ok "
            )
    for row in every:
        kinds[row.kind, f"{row.case} {row.name}" in reached] += 1
    print()
    for kind in "COMPUTED", "RECALLED", "SEEN":
        here, missing = kinds[kind, True], kinds[kind, False]
        print(f"{kind.lower()}: {here} of {here + missing} reproduced")
    names = len({f"{r.case} {r.name}" for r in every})
    if names != len(every):
        print("two values of the table have one name")
        bad = True
    if not options.quick and len(reached) != len(every):
        print("values without a computation, or off, are listed above")
        bad = True
    print("OFF" if bad else "ok")
    sys.exit(1 if bad else 0)


main()
