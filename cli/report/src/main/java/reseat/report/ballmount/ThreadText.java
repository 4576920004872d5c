package reseat.report.ballmount;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadComparison;
import reseat.ballmount.ThreadComparison.Quantity;
import reseat.ballmount.ThreadDuty;
import reseat.ballmount.ThreadStrength;
import reseat.ballmount.ThreadTolerance;
import reseat.design.StudThread;
import reseat.report.check.BallMountWords;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.study.BallMountResult;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/** The thread of a stud as a table, beside another thread if one is to be compared. */
public final class ThreadText {

  private final StudThread stud;
  private final Optional<ScrewThread> other;
  private final FigureText figures;
  private final TextTable table;

  private ThreadText(BallMountResult result, FigureText figures) {
    this.figures = figures;
    stud = result.design().mount().thread().orElseThrow();
    other = result.design().otherThread();
    table =
        other.isPresent()
            ? new TextTable("lrr", "", thread().designation(), other.get().designation())
            : new TextTable("lr", "", thread().designation());
  }

  private ScrewThread thread() {
    return stud.limits().thread();
  }

  /**
   * Tells of the thread.
   *
   * @param result the mount, which has a thread
   * @param figures how numbers are written
   * @return lines with their ends
   */
  public static String of(BallMountResult result, FigureText figures) {
    return new ThreadText(result, figures).text(result);
  }

  private String text(BallMountResult result) {
    ThreadTolerance limits = stud.limits();
    StringBuilder out = new StringBuilder();
    out.append(
        Paragraph.of(
            "",
            FilledText.of(
                "Thread: %s, fit %s, %s engaged in %s; pitch %s",
                thread(),
                limits.fit().classes(thread().form()),
                length(stud.engagement()),
                stud.body().name(),
                pitch())));
    each("travel for 1 deg", t -> length(t.travelPerDegree()));
    each("travel for a clock minute (6 deg)", t -> length(t.travelPerClockMinute()));
    each("travel for 2 deg, finest by hand", t -> length(t.travelPerDegree() * 2));
    each("stress area", t -> figures.quantity(t.stressArea(), QuantityKind.AREA));
    each("holds itself above a friction of", t -> FilledText.of("%.3f", t.selfLockingFriction()));
    each("axial play, most", t -> length(ThreadTolerance.of(t, limits.fit()).axialPlayMax()));
    Optional<ThreadStrength> strength = result.strength();
    if (strength.isPresent()) {
      strength(result, strength.get());
    }
    out.append(table.text());
    if (strength.isPresent()) {
      out.append(
          Paragraph.of(
              "  ",
              "Overloaded, "
                  + BallMountWords.weakest(strength.get().weakest())
                  + " first, at "
                  + force(strength.get().capacity())
                  + "; load and lock nut pull "
                  + force(result.threadForce())
                  + "."));
    }
    result.comparison().ifPresent(c -> out.append(Paragraph.of("  ", judged(c))));
    return out.toString();
  }

  private void strength(BallMountResult result, ThreadStrength s) {
    Map<Quantity, Double> second =
        result.comparison().map(ThreadComparison::secondValues).orElse(Map.of());
    row("screw breaks at", force(s.tensileLoad()), second, Quantity.TENSILE_LOAD, this::force);
    row(
        "screw threads strip at",
        force(s.screwStrippingLoad()),
        second,
        Quantity.SCREW_STRIPPING_LOAD,
        this::force);
    row(
        "tapped threads strip at",
        force(s.nutStrippingLoad()),
        second,
        Quantity.NUT_STRIPPING_LOAD,
        this::force);
    row(
        "engage for the screw to break first",
        length(s.engagementSoScrewBreaks()),
        second,
        Quantity.ENGAGEMENT_NEEDED,
        this::length);
    Optional<ThreadDuty> duty = result.comparison().map(ThreadComparison::duty);
    double load = duty.map(ThreadDuty::axialForce).orElse(result.threadForce());
    row(
        "flank pressure under " + force(load),
        pressure(s.flankPressure(load)),
        second,
        Quantity.FLANK_PRESSURE,
        this::pressure);
    result
        .comparison()
        .ifPresent(
            c ->
                row(
                    "torque to pull " + force(load),
                    torque(c.firstValues().get(Quantity.LOCK_TORQUE)),
                    second,
                    Quantity.LOCK_TORQUE,
                    this::torque));
  }

  private static String judged(ThreadComparison c) {
    double finer = c.advantageOfFirst(Quantity.TRAVEL_PER_DEGREE);
    double stronger = c.advantageOfFirst(Quantity.CAPACITY);
    return FilledText.of(
        "%s sets %s and bears %s; %s",
        c.first(),
        finer >= 1 ? times(finer) + " as finely" : times(1 / finer) + " as coarsely",
        stronger >= 1 ? times(stronger) + " as much" : "only " + times(stronger) + " as much",
        (finer >= 1) == (stronger >= 1)
            ? (finer >= 1 ? c.first() : c.second()) + " is the better on both counts."
            : "take the finer one unless the strength is needed.");
  }

  private static String times(double factor) {
    return FilledText.of("%.2f times", factor);
  }

  private void each(String what, Function<ScrewThread, String> value) {
    if (other.isPresent()) {
      table.row(what, value.apply(thread()), value.apply(other.get()));
    } else {
      table.row(what, value.apply(thread()));
    }
  }

  private void row(
      String what,
      String first,
      Map<Quantity, Double> second,
      Quantity quantity,
      Function<Double, String> shown) {
    if (other.isEmpty()) {
      table.row(what, first);
    } else {
      table.row(what, first, second.isEmpty() ? "-" : shown.apply(second.get(quantity)));
    }
  }

  private String pitch() {
    String metric = FilledText.of("%.4f mm", 1e3 * thread().pitch());
    String inch = FilledText.of("%.4g to the inch", thread().threadsPerInch());
    return switch (figures.system()) {
      case METRIC -> metric;
      case INCH -> inch;
      case BOTH -> metric + " (" + inch + ")";
    };
  }

  private String length(double metres) {
    return figures.length(metres);
  }

  private String force(double newtons) {
    return figures.quantity(newtons, QuantityKind.FORCE);
  }

  private String pressure(double pascals) {
    return figures.quantity(pascals, QuantityKind.PRESSURE);
  }

  private String torque(double newtonMetres) {
    return figures.quantity(newtonMetres, QuantityKind.TORQUE);
  }
}
