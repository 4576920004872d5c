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
import reseat.report.form.SeatWords;
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
                        SeatWords.seat(f.subject().name()) + " closes last",
                        f.judged())));
    return found;
  }

  /** The half-width along the axis that decides, with those along the others. */
  private static Optional<Figure> repeatability(SeatedCheck check, FigureText figures) {
    ToolChangeOutlook outlook = check.toolChanges();
    if (outlook.road() == ToolChangeOutlook.Road.NOT_ASKED) {
      return Optional.empty();
    }
    if (outlook.halfWidth().isEmpty()) {
      Finding seating = tightest(check, CheckKind.TOOL_CHANGE_SEATING).orElseThrow();
      return Optional.of(
          new Figure(
              COMES_BACK,
              outlook.changes() == 0 ? "hangs up" : outlook.hungUp() + " hang up",
              "at most 0.1 %",
              outlook.changes() == 0 ? "on friction" : "of " + outlook.changes() + " tool changes",
              seating.judged()));
    }
    Vec3 half = outlook.halfWidth().get();
    Optional<Finding> worst = tightest(check, CheckKind.REPEATABILITY);
    int told = told(check, half, worst);
    double largest = Math.max(half.x(), Math.max(half.y(), half.z()));
    double most = half.component(told);
    List<String> others = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      if (k != told) {
        others.add(
            check.design().axes().axis(k).name()
                + " ±"
                + figures.scatterNumber(half.component(k), largest));
      }
    }
    return Optional.of(
        new Figure(
            COMES_BACK,
            "±" + worst.map(f -> beside(f, figures)).orElse(scatter(most, figures)),
            worst
                .map(f -> "at most ±" + figures.beside(Measure.LENGTH, f.limit(), f.value(), false))
                .orElse("no target"),
            check.design().axes().axis(told).name()
                + ", "
                + check.design().targets().coverage().written()
                + "; "
                + String.join(", ", others)
                + (figures.scatterUnit(largest).equals(figures.scatterUnit(most))
                    ? ""
                    : " " + figures.scatterUnit(largest)),
            worst.map(Finding::judged).orElse(Judged.ADVICE)));
  }

  /** The axis that decides, or else the one along which it scatters most. */
  private static int told(SeatedCheck check, Vec3 half, Optional<Finding> worst) {
    int told = 0;
    for (int k = 0; k < 3; k++) {
      if (worst.isPresent()
          ? worst.get().subject().name().equals(check.design().axes().axis(k).name())
          : half.component(k) > half.component(told)) {
        told = k;
      }
    }
    return told;
  }

  /** Two figures, or as many as keep it apart from its target. */
  private static String beside(Finding f, FigureText figures) {
    String fine = figures.beside(Measure.LENGTH, f.value(), f.limit(), true);
    return fine.equals(figures.of(Measure.LENGTH, f.value(), true))
        ? scatter(f.value(), figures)
        : fine;
  }

  private static String scatter(double size, FigureText figures) {
    return figures.scatterNumber(size, size) + " " + figures.scatterUnit(size);
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
            .map(c -> ": " + SeatWords.seat(c.liftOff().contact()) + " lifts")
            .findFirst()
            .orElse("");
    return new Figure(
        name,
        figures.beside(Measure.FACTOR, f.value(), f.limit(), true) + " × the load",
        "at least " + figures.beside(Measure.FACTOR, f.limit(), f.value(), false) + " ×",
        f.subject().name() + contact,
        f.judged());
  }

  private static Figure plain(String name, Finding f, FigureText figures) {
    String bound = f.sense() == Finding.Sense.AT_MOST ? "at most " : "at least ";
    return new Figure(
        name,
        figures.beside(f.measure(), f.value(), f.limit(), true),
        bound + figures.beside(f.measure(), f.limit(), f.value(), false),
        f.subject().kind() == Subject.Kind.CONTACT
            ? f.subject().name() + " at rest"
            : f.subject().name(),
        f.judged());
  }
}
