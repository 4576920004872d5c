package reseat.report.ballmount;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.ballmount.AdjustingScrews;
import reseat.ballmount.BondJoint;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.LockNut;
import reseat.ballmount.SocketPivot;
import reseat.ballmount.StudCompliance;
import reseat.ballmount.ThreadDuty;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.design.AssumedValue;
import reseat.design.BallMountDesign;
import reseat.design.CheckKind;
import reseat.design.StudMount;
import reseat.elementary.Elementary;
import reseat.report.check.AssumedWords;
import reseat.report.check.FindingsText;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.SeatWords;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.study.BallMountResult;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/**
 * One ball mount on one screen: verdict, the figures that decide beside their limits, what to
 * change, what to turn; on request stud, bond, thread and seat in full.
 */
public final class BallMountText {

  /** Checks told in words on a short screen. */
  private static final int WORST = 3;

  /** Assumed values told on a short screen. */
  private static final int ASSUMED = 3;

  private final BallMountResult result;
  private final List<AssumedValue> assumed;
  private final Screen screen;
  private final FigureText figures;
  private final BallMountDesign design;
  private final StringBuilder out = new StringBuilder(6000);

  private BallMountText(BallMountResult result, List<AssumedValue> assumed, Screen screen) {
    this.result = result;
    this.assumed = assumed;
    this.screen = screen;
    figures = screen.figures();
    design = result.design();
  }

  /**
   * Tells a result.
   *
   * @param result everything about a mount
   * @param assumed values that its file leaves to a default
   * @param file the file as it was named, for the next step
   * @param screen how it is asked for
   * @return text of whole lines
   */
  public static String of(
      BallMountResult result, List<AssumedValue> assumed, String file, Screen screen) {
    return new BallMountText(result, assumed, screen).text(file);
  }

  private String text(String file) {
    if (!design.title().isEmpty()) {
      out.append(Paragraph.of("", design.title()));
    }
    out.append(VerdictWords.line(result.findings())).append('\n');
    deciding();
    if (screen.all()) {
      out.append(FindingsText.paragraphs(result.findings(), figures, true));
      stud();
      design.mount().bond().ifPresent(this::bond);
      if (design.mount().thread().isPresent()) {
        out.append('\n').append(ThreadText.of(result, figures));
      }
      result.lockNut().ifPresent(this::lockNut);
      result.pivot().ifPresent(this::pivot);
      if (!result.steps().isEmpty()) {
        steps();
      }
      out.append('\n');
    } else {
      worst();
      shortly();
    }
    assumptions();
    out.append(Paragraph.of("", caution()));
    out.append(
        screen.all()
            ? screen.next("shopsheet", file, " -o sheets")
            : screen.next("mount", file, " --all"));
    return out.toString();
  }

  /** The worst figure of each check. */
  private void deciding() {
    TextTable t = new TextTable("lll", "", "", "");
    Set<CheckKind> told = EnumSet.noneOf(CheckKind.class);
    for (Finding f : result.findings()) {
      if (f.judged() != Judged.ADVICE && Double.isFinite(f.limit()) && told.add(f.check())) {
        t.row(
            f.check().words(),
            figures.of(f.measure(), f.value(), true),
            (f.sense() == Finding.Sense.AT_MOST ? "at most " : "at least ")
                + figures.of(f.measure(), f.limit()));
      }
    }
    out.append(t.text());
  }

  /** What each check says first, with the first thing to do about it. */
  private void worst() {
    Set<CheckKind> told = EnumSet.noneOf(CheckKind.class);
    int left = 0;
    for (Finding f : result.findings()) {
      if (f.judged() == Judged.ADVICE || f.judged() == Judged.HOLDS) {
        continue;
      }
      if (told.contains(f.check()) || told.size() == WORST) {
        left++;
      } else {
        told.add(f.check());
        String words = FindingsText.words(f, figures);
        int or = words.indexOf(" Or: ");
        out.append("  ")
            .append(Paragraph.of("    ", or < 0 ? words : words.substring(0, or)).stripLeading());
      }
    }
    if (left > 0) {
      out.append("  and ").append(left).append(" more, and other remedies (--all)\n");
    }
  }

  private void shortly() {
    StudCompliance c = result.compliance();
    String seat =
        result
            .pivot()
            .map(
                p ->
                    "; seat: "
                        + force(p.duty().seat().contactForce(p.force()))
                        + " and "
                        + pressure(p.duty().seat().peakPressure(p.force()))
                        + (p.duty().seat().point().isPresent() ? " at each contact" : " in all"))
            .orElse("");
    out.append(
        Paragraph.of(
            "",
            "Ball on its stud: "
                + stiffness(c.lateralStiffness())
                + " sideways, "
                + stiffness(c.axialStiffness())
                + " along"
                + seat
                + "."));
    design
        .mount()
        .thread()
        .ifPresent(
            t ->
                out.append(
                    Paragraph.of(
                        "",
                        "Thread "
                            + t.limits().thread().designation()
                            + ": 1 deg moves the ball "
                            + length(t.limits().thread().travelPerDegree())
                            + result
                                .lockNut()
                                .map(
                                    n ->
                                        "; locking lifts it "
                                            + figures.range(n.shiftMin(), n.shiftMax())
                                            + ", allow for "
                                            + length(n.shiftExpected()))
                                .orElse("")
                            + ".")));
    if (!result.steps().isEmpty()) {
      List<String> names = design.adjustment().orElseThrow().screwNames();
      List<String> turns = new ArrayList<>();
      for (AdjustingScrews.Step s : result.steps()) {
        turns.add(
            names.get(s.screw() - 1) + " " + FilledText.of("%.1f deg ", s.degrees()) + turn(s));
      }
      out.append(
          Paragraph.of(
              "",
              "Turn the screws, seen from their heads: " + String.join("; then ", turns) + "."));
    }
  }

  private void assumptions() {
    if (assumed.isEmpty()) {
      return;
    }
    if (screen.all()) {
      out.append("\nAssumed, not stated:\n");
      for (String one : AssumedWords.of(assumed, figures, true)) {
        out.append("  ").append(Paragraph.of("    ", one).stripLeading());
      }
      return;
    }
    int most = Math.min(ASSUMED, assumed.size());
    List<String> told = new ArrayList<>();
    for (AssumedValue a : assumed.subList(0, most)) {
      told.add(AssumedWords.brief(a, figures));
    }
    int left = assumed.size() - most;
    out.append(
        Paragraph.of(
            "",
            "Assumed, not stated: "
                + String.join("; ", told)
                + (left > 0 ? "; and " + left + " more (--all)." : ".")));
  }

  private String caution() {
    return (design.mount().bond().isPresent()
            ? "Mind hands and eyes: load a new bond first with nobody in line. "
            : "")
        + "No figure replaces a test; where people may be hurt, local codes and a licensed engineer"
        + " decide.";
  }

  private void heading(String words) {
    out.append('\n').append(Paragraph.of("", words));
  }

  private void stud() {
    StudMount m = design.mount();
    StudCompliance c = result.compliance();
    StudCompliance bare = m.stud().compliance();
    heading("Ball on its stud: " + SeatWords.stud(m, figures));
    // The first row stands where headings would: these tables need none.
    TextTable t =
        new TextTable(
            "lll",
            "load that stays",
            along(design.sustained()),
            force(design.sustained().lateral()) + " sideways");
    t.row("load at peak", along(design.peak()), force(design.peak().lateral()) + " sideways");
    t.row(
        "stiffness at the ball",
        stiffness(c.lateralStiffness()) + " sideways",
        stiffness(c.axialStiffness()) + " along");
    t.row(
        "a side force of " + force(10),
        "moves the ball " + length(10 * c.lateral()),
        "and tilts it " + QuantityFormat.metric(10 * c.coupling(), QuantityKind.ANGLE));
    if (m.bond().isPresent()) {
      t.row(
          "of which the bond",
          PageNumbers.percent(1 - bare.lateral() / c.lateral()) + " sideways",
          PageNumbers.percent(1 - bare.axial() / c.axial()) + " along");
    }
    t.row(
        "stress at the neck",
        pressure(m.stud().neckStress(design.sustained().pull(), design.sustained().lateral()))
            + " always",
        pressure(m.stud().neckStress(design.peak().pull(), design.peak().lateral())) + " at peak");
    out.append(t.text());
  }

  private String along(BondJoint.Load load) {
    return force(Math.abs(load.pull())) + (load.pull() > 0 ? " pulling" : " pressing");
  }

  private void bond(BondJoint b) {
    heading("Bond: " + b.adhesive().name() + " (" + b.adhesive().basis() + ")");
    TextTable t =
        new TextTable(
            "lll",
            "design strength used",
            PageNumbers.percent(b.use(design.sustained(), true)) + " by the load that stays",
            PageNumbers.percent(b.use(design.peak(), false)) + " at peak");
    t.row(
        "a fresh joint breaks at",
        force(b.testStrength()) + " along",
        FilledText.of(
            "counted: %.0f %% of it at peak, %.0f %% for ever",
            100 * b.derating().peakShare(), 100 * b.derating().sustainedShare()));
    t.row(
        "on curing",
        b.bottomsOnMetal()
            ? "the ball stays on the metal"
            : "the ball is drawn in by up to " + length(b.cureMovement()),
        "read its height after the cure");
    out.append(t.text());
  }

  private void lockNut(LockNut nut) {
    heading(
        "Lock nut: "
            + moment(nut.tighteningTorque())
            + " pulls "
            + force(nut.clampForce())
            + " and lifts the ball by "
            + figures.range(nut.shiftMin(), nut.shiftMax())
            + "; allow for "
            + length(nut.shiftExpected())
            + ".");
    int i = 1;
    for (LockNut.Step s : LockNut.procedure()) {
      out.append(Paragraph.of("    ", i + ". " + s.instruction()));
      i++;
    }
    out.append(
        Paragraph.of(
            "    ",
            "If the screw turns 5 deg with the nut, the ball moves "
                + length(nut.movementIfTurned(Elementary.toRadians(5)))
                + "."));
  }

  private void pivot(BallMountResult.PivotState p) {
    heading(
        "Seat: "
            + p.duty().seat().words()
            + " of "
            + p.duty().material().name()
            + " under "
            + force(p.force())
            + ", friction "
            + FilledText.of("%.2f", p.duty().friction())
            + " ("
            + p.duty().frictionBasis()
            + ")");
    boolean points = p.duty().seat().point().isPresent();
    TextTable t =
        new TextTable(
            "lll",
            points ? "each contact" : "normal force in all",
            force(p.duty().seat().contactForce(p.force())),
            pressure(p.duty().seat().peakPressure(p.force())) + " at most");
    if (p.sliding().isPresent()) {
      stiffness(t, "stiffness, sliding", p.sliding().get());
    } else {
      t.row("stiffness", "not modelled: the surfaces conform", "");
    }
    p.sticking().ifPresent(k -> stiffness(t, "stiffness, sticking", k));
    t.row(
        "friction holds against",
        moment(p.friction().momentAboutSeatAxis()) + " about the axis",
        moment(p.friction().greatestTransverseMoment()) + " of tilt");
    t.row(
        "tilt about x, about y",
        moment(p.friction().momentAbout(Vec3.X)),
        moment(p.friction().momentAbout(Vec3.Y)));
    p.pad().ifPresent(pad -> pad(t, pad));
    out.append(t.text());
    if (p.duty().seat() instanceof SocketPivot) {
      out.append(
          Paragraph.of(
              "  ",
              "The land of the socket is taken for a bed of springs as stiff as a disc on a half-space:"
                  + " good to perhaps half of itself, if the socket fits closely."));
    }
    p.duty().slotting().ifPresent(s -> out.append(SlottingText.of(s, figures)));
  }

  private void stiffness(TextTable t, String what, Matrix6 k) {
    t.row(what, stiffness(k.get(0, 0)) + " across", stiffness(k.get(2, 2)) + " along");
  }

  private void pad(TextTable t, FluidFilmPad pad) {
    t.row(
        "film and mount together",
        stiffness(pad.seriesStiffness()),
        PageNumbers.percent(pad.filmShare()) + " of the give is the film's");
    t.row(
        "tilt that may stay",
        QuantityFormat.metric(pad.heldTilt(), QuantityKind.ANGLE),
        PageNumbers.percent(pad.edgeLoss()) + " of the film at the edge");
  }

  private void steps() {
    AdjustingScrews screws = design.adjustment().orElseThrow().screws();
    List<String> names = design.adjustment().orElseThrow().screwNames();
    List<String> stations = design.adjustment().orElseThrow().stationNames();
    heading("Turn the screws " + screws.thread() + ", seen from their heads, in this order:");
    TextTable t =
        new TextTable(
            "llrrrrr",
            "screw",
            "turn",
            "degrees",
            "clock min",
            "then " + stations.get(0) + ", " + figures.column(QuantityKind.LENGTH).symbol(),
            stations.get(1),
            stations.get(2));
    for (AdjustingScrews.Step s : result.steps()) {
      t.row(
          names.get(s.screw() - 1),
          turn(s),
          FilledText.of("%.1f", s.degrees()),
          FilledText.of("%.2f", s.clockMinutes()),
          reading(s.readingsAfter().get(0)),
          reading(s.readingsAfter().get(1)),
          reading(s.readingsAfter().get(2)));
    }
    out.append(t.text());
    out.append(
        Paragraph.of(
            "  ",
            FilledText.of(
                "2 deg too much or too little at every screw leaves up to ±%s at an indicator; an"
                    + " error of one indicator comes out %s times as large at a screw. Lock, then"
                    + " read again.",
                length(screws.readingUncertainty(ThreadDuty.HAND_RESOLUTION)),
                PageNumbers.plain(screws.magnification(), 2))));
  }

  private static String turn(AdjustingScrews.Step s) {
    String way =
        switch (s.turn()) {
          case CLOCKWISE -> "clockwise";
          case COUNTERCLOCKWISE -> "counterclockwise";
          case NONE -> "leave";
        };
    return s.withinHandResolution() ? way + " (finer than a hand sets)" : way;
  }

  private String reading(double metres) {
    boolean inch = screen.units() == UnitSystem.INCH;
    return QuantityFormat.fixedNumber(
        metres + 0.0, figures.column(QuantityKind.LENGTH), inch ? 0 : 2);
  }

  private String stiffness(double newtonsPerMetre) {
    return figures.quantity(newtonsPerMetre, QuantityKind.STIFFNESS);
  }

  private String moment(double newtonMetres) {
    return figures.quantity(newtonMetres, QuantityKind.TORQUE);
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
}
