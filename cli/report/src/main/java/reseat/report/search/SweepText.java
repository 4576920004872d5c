package reseat.report.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.check.Finding;
import reseat.design.CouplingDesign;
import reseat.report.check.FindingWords;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.study.Output;
import reseat.study.OutputCatalog;
import reseat.study.OutputValue;
import reseat.study.SweepAxis;
import reseat.study.SweepPoint;
import reseat.study.SweepStudy;

/** A sweep on one screen: where all checks hold, a row for each point, what binds there. */
public final class SweepText {

  private static final String BEYOND = "*";
  private static final String WITHIN = " ";

  /** Lines of a short screen. */
  private static final int LINES = 25;

  /** Fewest rows of a short screen. */
  private static final int ROWS = 6;

  private final SweepStudy study;
  private final Screen screen;
  private final FigureText figures;
  private final List<OutputColumn> columns;
  private final Map<String, String> reasons = new LinkedHashMap<>();

  private SweepText(SweepStudy study, Screen screen) {
    this.study = study;
    this.screen = screen;
    figures = screen.figures();
    columns = SweepUnits.columns(study, screen.units());
  }

  /**
   * Writes a sweep.
   *
   * @param study what came of it
   * @param title title of the design
   * @param file the design file as it was named, for the next step
   * @param screen how it is asked for
   * @return lines with their ends
   */
  public static String of(SweepStudy study, String title, String file, Screen screen) {
    return new SweepText(study, screen).text(title, file);
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

  private String text(String title, String file) {
    String head = title.isEmpty() ? "" : Paragraph.of("", title);
    head += Paragraph.of("", verdict());
    StringBuilder foot = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      foot.append(Paragraph.of("  ", explained(i)));
    }
    if (anythingBeyond()) {
      foot.append("  *: beyond its limit.\n");
    }
    StringBuilder why = new StringBuilder();
    for (SweepPoint p : study.points()) {
      if (!stands(p)) {
        mark(p);
      }
    }
    int n = 1;
    for (String reason : reasons.values()) {
      why.append(Paragraph.of("", "[" + n++ + "] " + reason));
    }
    foot.append(why);
    String next = screen.next("check", file, "");
    long used = (head + foot + next).lines().count() + 3;
    Set<Integer> told = told((int) Math.max(ROWS, LINES - used - 1));
    String left =
        told.size() < study.points().size()
            ? "  "
                + told.size()
                + " of "
                + study.points().size()
                + " points are shown (all: --all or --csv).\n"
            : "";
    return head + table(told) + left + foot + next;
  }

  private String verdict() {
    long hold = study.points().stream().filter(p -> p.state() == SweepPoint.State.HOLDS).count();
    int all = study.points().size();
    String counted =
        hold == 0
            ? all == 1
                ? "The one point does not pass every check"
                : "None of the " + all + " points passes every check"
            : hold == all
                ? all == 1
                    ? "The one point passes every check"
                    : "All " + all + " points pass every check"
                : hold
                    + " of "
                    + all
                    + " points "
                    + (hold == 1 ? "passes" : "pass")
                    + " every check";
    return study.plan().axes().size() == 1 && hold > 0
        ? counted
            + ": "
            + study.plan().axes().get(0).key().path()
            + " = "
            + String.join("; ", bands())
            + "."
        : counted + ".";
  }

  /**
   * Which points are shown: both ends, both sides of every change of what binds, others between.
   */
  private Set<Integer> told(int most) {
    int all = study.points().size();
    Set<Integer> told = new TreeSet<>();
    if (screen.all() || all <= most) {
      for (int i = 0; i < all; i++) {
        told.add(i);
      }
      return told;
    }
    told.add(0);
    told.add(all - 1);
    for (int i = 1; i < all && told.size() < most - 1; i++) {
      if (!state(study.points().get(i)).equals(state(study.points().get(i - 1)))) {
        told.add(i - 1);
        told.add(i);
      }
    }
    for (int parts = 2; parts < all && told.size() < most; parts++) {
      for (int k = 1; k < parts && told.size() < most; k++) {
        told.add(k * (all - 1) / parts);
      }
    }
    return told;
  }

  private static boolean stands(SweepPoint p) {
    return p.state() != SweepPoint.State.DOES_NOT_STAND
        && p.state() != SweepPoint.State.CANNOT_BE_MADE;
  }

  private String table(Set<Integer> told) {
    TextTable table = table(told, true);
    return screen.all() || table.width() <= Paragraph.WIDTH
        ? table.text()
        : table(told, false).text();
  }

  private TextTable table(Set<Integer> told, boolean wide) {
    List<String> head = new ArrayList<>();
    StringBuilder sides = new StringBuilder();
    for (SweepAxis axis : study.plan().axes()) {
      head.add(axis.key().path().replaceFirst("\\.(?=[^.]*$)", ".\n"));
      sides.append('l');
      if (hasOther(axis)) {
        head.add("");
        sides.append('r');
      }
    }
    for (OutputColumn c : columns) {
      String unit = c.unitText().isEmpty() ? "" : "\n" + c.unitText() + WITHIN;
      head.add(c.output().name().replaceFirst("-(?=[^-]*$)", "-" + WITHIN + "\n") + WITHIN + unit);
      sides.append('r');
    }
    head.add("verdict");
    TextTable table = new TextTable(sides.append('l').toString(), head.toArray(new String[0]));
    for (int i : told) {
      table.row(row(i, wide).toArray(new String[0]));
    }
    return table;
  }

  private boolean hasOther(SweepAxis axis) {
    return SweepUnits.other(axis, 0, screen.units()).isPresent();
  }

  private List<String> row(int number, boolean wide) {
    SweepPoint p = study.points().get(number);
    List<String> cells = new ArrayList<>();
    int rest = number;
    int block = study.points().size();
    for (int a = 0; a < study.plan().axes().size(); a++) {
      SweepAxis axis = study.plan().axes().get(a);
      block /= axis.values().size();
      cells.add(p.values().get(a));
      if (hasOther(axis)) {
        cells.add(SweepUnits.other(axis, rest / block, screen.units()).orElse(""));
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
    cells.add(wide ? verdict(p) : state(p));
    return cells;
  }

  private String verdict(SweepPoint p) {
    return switch (p.state()) {
      case HOLDS -> "holds";
      case UNDECIDED -> "decide: " + binding(p, figures);
      case FAILS -> "FAILS: " + binding(p, figures);
      case DOES_NOT_STAND -> "does not stand " + mark(p);
      case CANNOT_BE_MADE -> "cannot be made " + mark(p);
    };
  }

  /** The verdict without the place where it binds. */
  private String state(SweepPoint p) {
    return switch (p.state()) {
      case HOLDS -> "holds";
      case UNDECIDED -> "decide: " + p.deciding().get(0).check().words();
      case FAILS -> "FAILS: " + p.failing().get(0).check().words();
      case DOES_NOT_STAND, CANNOT_BE_MADE -> verdict(p);
    };
  }

  /**
   * Names what decides about a point.
   *
   * @param p the point
   * @param figures how numbers are written
   * @return the worst failed check, or that to be decided, and how many others there are; or why
   *     there is no such coupling; empty if all holds
   */
  public static String binding(SweepPoint p, FigureText figures) {
    List<Finding> listed = p.failing().isEmpty() ? p.deciding() : p.failing();
    if (listed.isEmpty()) {
      return FindingWords.of(p.reason(), figures);
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
    String reason = FindingWords.of(p.reason(), figures);
    String sort = reason.replaceAll("[0-9.]+", "#");
    reasons.putIfAbsent(sort, "at " + String.join(", ", p.values()) + ": " + reason);
    return "[" + (new ArrayList<>(reasons.keySet()).indexOf(sort) + 1) + "]";
  }

  private boolean anythingBeyond() {
    return study.points().stream()
        .flatMap(p -> p.outputs().stream())
        .anyMatch(v -> v.isPresent() && !v.get().holds());
  }

  /** What an output is, and its limit. */
  private String explained(int index) {
    OutputColumn c = columns.get(index);
    StringBuilder text = new StringBuilder(c.output().name()).append(": ");
    text.append(c.output().words());
    List<OutputValue> values =
        study.points().stream().flatMap(p -> p.outputs().get(index).stream()).toList();
    if (values.isEmpty()) {
      return text.append("; at no point is there one.").toString();
    }
    OutputValue first = values.get(0);
    if (first.isLimited()) {
      text.append(first.sense() == Finding.Sense.AT_MOST ? "; at most " : "; at least ");
      text.append(
          c.range(
              values.stream().mapToDouble(OutputValue::limit).min().orElseThrow(),
              values.stream().mapToDouble(OutputValue::limit).max().orElseThrow()));
    }
    return text.append('.').toString();
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
        + SweepUnits.other(axis, point, screen.units()).map(o -> " (" + o + ")").orElse("");
  }
}
