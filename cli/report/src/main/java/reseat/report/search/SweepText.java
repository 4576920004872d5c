package reseat.report.search;

import reseat.report.form.FigureText;
import reseat.report.check.FindingWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.check.Finding;
import reseat.design.CouplingDesign;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.study.Output;
import reseat.study.OutputCatalog;
import reseat.study.OutputValue;
import reseat.study.SweepAxis;
import reseat.study.SweepPoint;
import reseat.study.SweepStudy;

/** A sweep on the screen: a row for each point, what binds there, where all checks hold. */
public final class SweepText {

  private static final String BEYOND = " *";
  private static final String WITHIN = "  ";

  private final SweepStudy study;
  private final List<OutputColumn> columns;
  private final Map<String, String> reasons = new LinkedHashMap<>();

  private SweepText(SweepStudy study) {
    this.study = study;
    columns = SweepUnits.columns(study);
  }

  /**
   * Writes a sweep.
   *
   * @param study what came of it
   * @param title title of the design
   * @return lines with their ends
   */
  public static String of(SweepStudy study, String title) {
    return new SweepText(study).text(title);
  }

  /**
   * Lists the outputs that a design can be asked for.
   *
   * @param design the coupling
   * @return a table
   */
  public static String outputs(CouplingDesign design) {
    List<Output> usual = OutputCatalog.usual(design);
    List<String> shown = usual.stream().map(Output::name).toList();
    TextTable table = new TextTable("ll", "output", "what it is");
    for (Output o : OutputCatalog.of(design)) {
      table.row(
          o.name(),
          o.words()
              + (o.simulated() ? "; simulated, slower" : "")
              + (shown.contains(o.name()) ? " (shown if none is named)" : ""));
    }
    return table.text();
  }

  private String text(String title) {
    StringBuilder out = new StringBuilder();
    out.append(title.isEmpty() ? "Sweep" : title).append('\n');
    long hold = study.points().stream().filter(p -> p.state() == SweepPoint.State.HOLDS).count();
    out.append("All checks hold at ").append(hold).append(" of ").append(study.points().size());
    out.append(study.points().size() == 1 ? " point.\n\n" : " points.\n\n");
    out.append(table());
    out.append('\n');
    for (int i = 0; i < columns.size(); i++) {
      out.append(Paragraph.of("  ", explained(i)));
    }
    if (anythingBeyond()) {
      out.append("  * beyond its limit; where the row holds, a check only warns.\n");
    }
    if (!reasons.isEmpty()) {
      out.append('\n');
      int n = 1;
      for (String reason : reasons.values()) {
        out.append(Paragraph.of("", "[" + n++ + "] " + reason));
      }
    }
    if (study.plan().axes().size() == 1 && hold > 0) {
      out.append('\n');
      out.append(Paragraph.of("", "No check fails at " + String.join("; ", bands()) + "."));
    }
    return out.toString();
  }

  private String table() {
    List<String> heads = new ArrayList<>();
    List<String> units = new ArrayList<>();
    StringBuilder sides = new StringBuilder();
    for (SweepAxis axis : study.plan().axes()) {
      heads.add(axis.key().path());
      units.add("");
      sides.append('l');
      if (hasOther(axis)) {
        heads.add("");
        units.add("");
        sides.append('r');
      }
    }
    for (OutputColumn c : columns) {
      heads.add(c.output().name() + WITHIN);
      units.add(c.unitText() + WITHIN);
      sides.append('r');
    }
    heads.add("verdict");
    units.add("");
    TextTable table = new TextTable(sides.append('l').toString(), heads.toArray(new String[0]));
    table.row(units.toArray(new String[0]));
    for (int i = 0; i < study.points().size(); i++) {
      table.row(row(i).toArray(new String[0]));
    }
    return table.text();
  }

  private static boolean hasOther(SweepAxis axis) {
    return SweepUnits.other(axis, 0).isPresent();
  }

  private List<String> row(int number) {
    SweepPoint p = study.points().get(number);
    List<String> cells = new ArrayList<>();
    int rest = number;
    int block = study.points().size();
    for (int a = 0; a < study.plan().axes().size(); a++) {
      SweepAxis axis = study.plan().axes().get(a);
      block /= axis.values().size();
      cells.add(p.values().get(a));
      if (hasOther(axis)) {
        cells.add(SweepUnits.other(axis, rest / block).orElse(""));
      }
      rest %= block;
    }
    for (int i = 0; i < columns.size(); i++) {
      Optional<OutputValue> v = p.outputs().get(i);
      OutputColumn column = columns.get(i);
      cells.add(
          v.map(o -> column.number(o.value()) + (o.holds() ? WITHIN : BEYOND))
              .orElse("-" + WITHIN));
    }
    cells.add(verdict(p));
    return cells;
  }

  private String verdict(SweepPoint p) {
    return switch (p.state()) {
      case HOLDS -> "holds";
      case UNDECIDED -> "decide " + binding(p);
      case FAILS -> "FAILS " + binding(p);
      case DOES_NOT_STAND -> "does not stand " + mark(p);
      case CANNOT_BE_MADE -> "cannot be made " + mark(p);
    };
  }

  /**
   * Names what decides about a point.
   *
   * @param p the point
   * @return the worst failed check, or that to be decided, and how many others there are; or why
   *     there is no such coupling; empty if all holds
   */
  public static String binding(SweepPoint p) {
    List<Finding> listed = p.failing().isEmpty() ? p.deciding() : p.failing();
    if (listed.isEmpty()) {
      return FindingWords.of(p.reason(), FigureText.METRIC);
    }
    Finding worst = listed.get(0);
    long others = listed.stream().map(Finding::check).distinct().count() - 1;
    String where = worst.subject().name();
    return worst.check().words()
        + (where.isEmpty() ? "" : " (" + where + ")")
        + (others > 0 ? " and " + others + " more" : "");
  }

  /** Reasons that differ only in their numbers are told once, with the first. */
  private String mark(SweepPoint p) {
    String reason = FindingWords.of(p.reason(), FigureText.BOTH);
    String sort = reason.replaceAll("[0-9.]+", "#");
    reasons.putIfAbsent(sort, "at " + String.join(", ", p.values()) + ": " + reason);
    return "[" + (new ArrayList<>(reasons.keySet()).indexOf(sort) + 1) + "]";
  }

  private boolean anythingBeyond() {
    return study.points().stream()
        .flatMap(p -> p.outputs().stream())
        .anyMatch(v -> v.isPresent() && !v.get().holds());
  }

  /** What an output is, from where to where it goes, and its limit. */
  private String explained(int index) {
    OutputColumn c = columns.get(index);
    StringBuilder text = new StringBuilder(c.output().name()).append(": ");
    text.append(c.output().words());
    List<OutputValue> values =
        study.points().stream().flatMap(p -> p.outputs().get(index).stream()).toList();
    if (values.isEmpty()) {
      return text.append("; at no point is there one.").toString();
    }
    double least = values.stream().mapToDouble(OutputValue::value).min().orElseThrow();
    double most = values.stream().mapToDouble(OutputValue::value).max().orElseThrow();
    text.append("; ").append(c.both(least));
    if (!c.both(least).equals(c.both(most))) {
      text.append(" to ").append(c.both(most));
    }
    OutputValue first = values.get(0);
    if (first.isLimited()) {
      boolean same = values.stream().allMatch(v -> near(v.limit(), first.limit()));
      text.append(first.sense() == Finding.Sense.AT_MOST ? "; at most " : "; at least ");
      text.append(c.both(values.stream().mapToDouble(OutputValue::limit).min().orElseThrow()));
      if (!same) {
        text.append(" to ");
        text.append(c.both(values.stream().mapToDouble(OutputValue::limit).max().orElseThrow()));
      }
    }
    return text.append('.').toString();
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= 1e-9 * Math.abs(b);
  }

  /** Unbroken runs of values at which all checks hold, in the order given. */
  private List<String> bands() {
    List<String> bands = new ArrayList<>();
    List<SweepPoint> points = study.points();
    int from = -1;
    for (int i = 0; i <= points.size(); i++) {
      boolean holds = i < points.size() && points.get(i).state() == SweepPoint.State.HOLDS;
      if (holds && from < 0) {
        from = i;
      } else if (!holds && from >= 0) {
        bands.add(from == i - 1 ? value(from) : value(from) + " to " + value(i - 1));
        from = -1;
      }
    }
    return bands;
  }

  private String value(int point) {
    SweepAxis axis = study.plan().axes().get(0);
    return axis.values().get(point)
        + SweepUnits.other(axis, point).map(o -> " (" + o + ")").orElse("");
  }
}
