"""The table of check values, and the comparison of a script's numbers with it.

The table (values.tsv) is written by the program's own test and holds the numbers
as they stand in the program, none that the program computed.
"""

import argparse
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent


class Row:
    """One check value: what it is, its number, and how far off one may be."""

    def __init__(self, line):
        words = line.split("\t")
        self.topic, self.case, self.name, value, self.unit, tolerance, self.kind = words
        self.value = float(value)
        self.tolerance = float(tolerance)

    def difference(self, number):
        """Part of the table's number; where that is zero, in its unit."""
        away = float(number) - self.value
        return away / abs(self.value) if self.value else away


def rows(path):
    """All rows of a table file."""
    lines = pathlib.Path(path).read_text(encoding="utf-8").splitlines()
    return [Row(line) for line in lines[1:]]


class Table:
    """The check values of one topic; tells each beside what the script made of it."""

    def __init__(self, topic):
        parser = argparse.ArgumentParser(description=f"Reference values: {topic}.")
        parser.add_argument("--values", default=HERE / "values.tsv", help="table to compare with")
        self.topic = topic
        self.left = {}
        for row in rows(parser.parse_args().values):
            if row.topic == topic:
                self.left[row.case, row.name] = row
        if not self.left:
            sys.exit(f"no value of the topic '{topic}' in the table")
        self.off = 0

    def check(self, case, name, number):
        """Compares a number, in the unit of the table."""
        row = self.left.pop((case, name), None)
        if row is None:
            self.off += 1
            print(f"OFF  {case} {name}: not in the table, or computed twice")
            return
        difference = row.difference(number)
        fits = abs(difference) <= row.tolerance  # false for a number that is none
        self.off += not fits
        word = "ok  " if fits else "OFF "
        print(
            f"{word} {case} {name}: table {row.value:.12g}, script {float(number):.12g} {row.unit}"
            f" (off by {difference:.1e}, allowed {row.tolerance:.1e}, {row.kind})"
        )

    def finish(self):
        """Names the values without a computation and ends the script."""
        for row in self.left.values():
            print(f"NONE {row.case} {row.name}: no computation ({row.kind})")
        sys.exit(1 if self.off or self.left else 0)
