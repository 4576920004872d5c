package reseat.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Measure;
import reseat.check.Subject;
import reseat.design.CheckKind;
import reseat.repeatability.ToolChangeOutlook;
import reseat.report.form.FigureText;
import reseat.space.Vec3;
import reseat.study.SeatedCheck;

/** The figures that decide about a design, each beside its limit. */
public final class DecidingFigures {

  /** Name of the figure that tells how well the tool point comes back. */
  public static final String COMES_BACK = "tool comes back";

  private DecidingFigures() {}

  /**
   * One figure.
   *
   * @param name what it is
   * @param value what was found, with its unit
   * @param limit what is allowed or wanted; empty if nothing is
   * @param where what it is about
   * @param judged how it is judged
   */
  public record Figure(String name, String value, String limit, String where, Judged judged) {}

  /**
   * Picks the figures of a coupling that stands.
   *
   * @param check the check
   * @param figures how numbers are written
   * @return repeatability, lift-off, pressure, motion under load, seating: those that there are
   */
  public static List<Figure> of(SeatedCheck check, FigureText figures) {
    List<Figure> found = new ArrayList<>();
    repeatability(check, figures).ifPresent(found::add);
    tightest(check, CheckKind.LIFT_OFF)
        .ifPresent(f -> found.add(factor("lift-off", f, figures, check)));
    tightest(check, CheckKind.CONTACT_PRESSURE)
        .ifPresent(f -> found.add(plain("peak pressure", f, figures)));
    tightest(check, CheckKind.ERROR_MOTION)
        .ifPresent(f -> found.add(plain("tool point moves", f, figures)));
    tightest(check, CheckKind.SELF_SEATING)
        .ifPresent(
            f ->
                found.add(
                    new Figure(
                        "seats below friction",
                        figures.of(Measure.FACTOR, f.value(), true),
                        "expected "
                            + figures.of(Measure.FACTOR, check.design().friction().low())
                            + " to "
                            + figures.of(Measure.FACTOR, check.design().friction().high()),
                        f.subject().name() + " closes last",
                        f.judged())));
    return found;
  }

  /** Half-widths along all axes in one line, judged by the worst. */
  private static Optional<Figure> repeatability(SeatedCheck check, FigureText figures) {
    ToolChangeOutlook outlook = check.toolChanges();
    if (outlook.road() == ToolChangeOutlook.Road.NOT_ASKED) {
      return Optional.empty();
    }
    if (outlook.halfWidth().isEmpty()) {
      Finding seating = tightest(check, CheckKind.TOOL_CHANGE_SEATING).orElseThrow();
      return Optional.of(
          new Figure(COMES_BACK, hangUps(outlook), "at most 0.1 %", "", seating.judged()));
    }
    Vec3 half = outlook.halfWidth().get();
    List<String> axes = new ArrayList<>();
    double largest = 0;
    for (int k = 0; k < 3; k++) {
      largest = Math.max(largest, half.component(k));
    }
    for (int k = 0; k < 3; k++) {
      axes.add(
          check.design().axes().axis(k).name()
              + " ±"
              + figures.scatterNumber(half.component(k), largest));
    }
    Optional<Finding> worst = tightest(check, CheckKind.REPEATABILITY);
    return Optional.of(
        new Figure(
            COMES_BACK,
            String.join(", ", axes) + " " + figures.scatterUnit(largest),
            worst.map(f -> "at most ±" + figures.length(f.limit())).orElse("no target"),
            worst.map(f -> f.subject().name() + ", ").orElse("")
                + check.design().targets().coverage().written(),
            worst.map(Finding::judged).orElse(Judged.ADVICE)));
  }

  private static String hangUps(ToolChangeOutlook outlook) {
    return outlook.changes() == 0
        ? "tool changes hang up on friction"
        : outlook.hungUp() + " of " + outlook.changes() + " tool changes hang up";
  }

  /** The worst judged finding of a kind. */
  private static Optional<Finding> tightest(SeatedCheck check, CheckKind kind) {
    // findings stand worst first
    return check.findings().stream()
        .filter(f -> f.check() == kind && f.judged() != Judged.ADVICE)
        .findFirst();
  }

  private static Figure factor(String name, Finding f, FigureText figures, SeatedCheck check) {
    String contact =
        check.cases().stream()
            .filter(c -> c.loadCase().name().equals(f.subject().name()))
            .map(c -> ", " + c.liftOff().contact())
            .findFirst()
            .orElse("");
    return new Figure(
        name,
        figures.of(Measure.FACTOR, f.value(), true) + " × the load",
        "at least " + figures.of(Measure.FACTOR, f.limit()) + " ×",
        f.subject().name() + contact,
        f.judged());
  }

  private static Figure plain(String name, Finding f, FigureText figures) {
    String bound = f.sense() == Finding.Sense.AT_MOST ? "at most " : "at least ";
    return new Figure(
        name,
        figures.of(f.measure(), f.value(), true),
        bound + figures.of(f.measure(), f.limit()),
        f.subject().kind() == Subject.Kind.CONTACT
            ? f.subject().name() + " at rest"
            : f.subject().name(),
        f.judged());
  }
}
