package reseat.designfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import reseat.design.BallGrade;
import reseat.design.MachineAxes;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.units.QuantityKind;

/**
 * Reads [tolerances]: a limit for each kind of dimension, {@code shared_} before the kind where all
 * such dimensions depart together, a ball grade, and [[tolerances.only]] tables for one support or
 * one part.
 */
final class ToleranceReader {

  private static final String SHARED = "shared_";

  private final List<Support> supports;
  private final MachineAxes axes;
  private final List<Tolerance> found = new ArrayList<>();

  private ToleranceReader(List<Support> supports, MachineAxes axes) {
    this.supports = supports;
    this.axes = axes;
  }

  static Tolerances read(Section s, List<Support> supports, MachineAxes axes) {
    ToleranceReader reader = new ToleranceReader(supports, axes);
    reader.table(s, "", "");
    for (Section only : s.children("only")) {
      String support = only.text("support", "");
      String part = only.text("part", "");
      if (support.isBlank() && part.isBlank()) {
        only.error("support", "is missing; write the support, or the part, that is meant");
      }
      reader.table(only, support, part);
      only.close();
    }
    s.close();
    try {
      return new Tolerances(reader.found);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return Tolerances.NONE;
    }
  }

  private void table(Section s, String support, String part) {
    for (ToleranceKind kind : ToleranceKind.values()) {
      String key = kind.name().toLowerCase(Locale.ROOT);
      one(s, key, kind, support, part, false);
      one(s, SHARED + key, kind, support, part, true);
    }
    grade(s, support);
  }

  private void one(
      Section s, String key, ToleranceKind kind, String support, String part, boolean shared) {
    if (!s.has(key)) {
      return;
    }
    Distribution spread =
        SpreadReader.read(
            s, key, quantity(kind.measure()), new Distribution(0, DistributionShape.UNIFORM));
    try {
      accept(s, key, new Tolerance(kind, support, part, shared, spread));
    } catch (IllegalArgumentException e) {
      s.error(key, e.getMessage());
    }
  }

  private void grade(Section s, String support) {
    String key = "ball_grade";
    if (!s.has(key)) {
      return;
    }
    for (String other : List.of("ball_diameter", "ball_form")) {
      if (s.has(other)) {
        s.error(other, "the ball grade says this already; leave one of the two out");
        return;
      }
    }
    String word = s.text(key, "");
    try {
      for (Tolerance t : BallGrade.of(word).tolerances()) {
        accept(s, key, t.at(support));
      }
    } catch (IllegalArgumentException e) {
      s.error(key, e.getMessage());
    }
  }

  /** Takes a tolerance if the coupling has such a dimension; else the key is to blame. */
  private void accept(Section s, String key, Tolerance t) {
    Tolerances alone = Tolerances.of(t);
    alone.checkNames(supports, axes);
    if (!alone.haveDimension(supports)) {
      String nothing = "no seat meant here has a " + t.kind().words();
      if (t.support().isEmpty() && t.part().isEmpty()) {
        s.warn(key, nothing + ", so this does nothing");
      } else {
        s.error(key, nothing);
      }
    }
    found.add(t);
  }

  private static QuantityKind quantity(ToleranceKind.Measure measure) {
    return switch (measure) {
      case LENGTH -> QuantityKind.LENGTH;
      case ANGLE -> QuantityKind.ANGLE;
      case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
    };
  }
}
