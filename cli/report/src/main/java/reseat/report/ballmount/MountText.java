package reseat.report.ballmount;

import reseat.report.form.FigureText;
import reseat.report.check.VerdictWords;
import java.util.List;
import reseat.design.BallMountDesign;
import reseat.design.StudMount;
import reseat.elementary.Elementary;
import reseat.mount.AdjustingScrews;
import reseat.mount.BondJoint;
import reseat.mount.FluidFilmPad;
import reseat.mount.LockNut;
import reseat.mount.SocketPivot;
import reseat.mount.StudCompliance;
import reseat.mount.ThreadDuty;
import reseat.report.check.FindingsText;
import reseat.report.form.Paragraph;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.study.MountResult;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/** One ball mount on one screen: verdict, what to change, then stud, bond, thread and seat. */
public final class MountText {

  private static final String CAUTION =
      "Mind your hands and eyes: a bonded ball that lets go, a spring or a magnet can throw or pinch."
          + " Load a new bond first with nobody in line with it, and only after its full cure. These"
          + " figures do not replace a test of the part; where people may be hurt, local codes and"
          + " the judgement of a licensed engineer decide.";

  private final MountResult result;
  private final BallMountDesign design;
  private final StringBuilder out = new StringBuilder(6000);

  private MountText(MountResult result) {
    this.result = result;
    this.design = result.design();
  }

  /**
   * Tells a result.
   *
   * @param result everything about a mount
   * @return text of whole lines
   */
  public static String of(MountResult result) {
    return new MountText(result).text();
  }

  private String text() {
    if (!design.title().isEmpty()) {
      out.append(Paragraph.of("", design.title()));
    }
    out.append(VerdictWords.line(result.findings())).append('\n');
    out.append(FindingsText.paragraphs(result.findings(), FigureText.BOTH, true));
    stud();
    design.mount().bond().ifPresent(this::bond);
    if (design.mount().thread().isPresent()) {
      out.append('\n').append(ThreadText.of(result));
    }
    result.lockNut().ifPresent(this::lockNut);
    result.pivot().ifPresent(this::pivot);
    if (!result.steps().isEmpty()) {
      steps();
    }
    out.append('\n').append(Paragraph.of("", CAUTION));
    return out.toString();
  }

  private void heading(String words) {
    out.append('\n').append(Paragraph.of("", words));
  }

  private void stud() {
    StudMount m = design.mount();
    StudCompliance c = result.compliance();
    StudCompliance bare = m.stud().compliance();
    heading("Ball on its stud: " + m.description());
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
        "a side force of 10 N",
        "moves the ball " + length(10 * c.lateral()),
        "and tilts it " + QuantityFormat.metric(10 * c.coupling(), QuantityKind.ANGLE));
    if (m.bond().isPresent()) {
      t.row(
          "of which the bond",
          Shown.percent(1 - bare.lateral() / c.lateral()) + " sideways",
          Shown.percent(1 - bare.axial() / c.axial()) + " along");
    }
    t.row(
        "stress at the neck",
        pressure(m.stud().neckStress(design.sustained().pull(), design.sustained().lateral()))
            + " always",
        pressure(m.stud().neckStress(design.peak().pull(), design.peak().lateral())) + " at peak");
    out.append(t.text());
  }

  private static String along(BondJoint.Load load) {
    return force(Math.abs(load.pull())) + (load.pull() > 0 ? " pulling" : " pressing");
  }

  private void bond(BondJoint b) {
    heading("Bond: " + b.adhesive().name() + " (" + b.adhesive().basis() + ")");
    TextTable t =
        new TextTable(
            "lll",
            "design strength used",
            Shown.percent(b.use(design.sustained(), true)) + " by the load that stays",
            Shown.percent(b.use(design.peak(), false)) + " at peak");
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
            + QuantityFormat.both(nut.tighteningTorque(), QuantityKind.TORQUE)
            + " pulls "
            + force(nut.clampForce())
            + " and lifts the ball by "
            + length(nut.shiftMin())
            + " to "
            + length(nut.shiftMax())
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

  private void pivot(MountResult.PivotState p) {
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
    p.duty().slotting().ifPresent(s -> out.append(SlottingText.of(s)));
  }

  private static void stiffness(TextTable t, String what, Matrix6 k) {
    t.row(what, stiffness(k.get(0, 0)) + " across", stiffness(k.get(2, 2)) + " along");
  }

  private static void pad(TextTable t, FluidFilmPad pad) {
    t.row(
        "film and mount together",
        stiffness(pad.seriesStiffness()),
        Shown.percent(pad.filmShare()) + " of the give is the film's");
    t.row(
        "tilt that may stay",
        QuantityFormat.metric(pad.heldTilt(), QuantityKind.ANGLE),
        Shown.percent(pad.edgeLoss()) + " of the film at the edge");
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
            "then " + stations.get(0),
            stations.get(1),
            stations.get(2));
    for (AdjustingScrews.Step s : result.steps()) {
      t.row(
          names.get(s.screw() - 1),
          turn(s),
          FilledText.of("%.1f", s.degrees()),
          FilledText.of("%.2f", s.clockMinutes()),
          micrometres(s.readingsAfter().get(0)),
          micrometres(s.readingsAfter().get(1)),
          micrometres(s.readingsAfter().get(2)));
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
                Shown.plain(screws.magnification(), 2))));
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

  private static String micrometres(double metres) {
    return FilledText.of("%.2f µm", 1e6 * metres + 0.0);
  }

  private static String stiffness(double newtonsPerMetre) {
    return QuantityFormat.both(newtonsPerMetre, QuantityKind.STIFFNESS);
  }

  private static String moment(double newtonMetres) {
    return QuantityFormat.both(newtonMetres, QuantityKind.TORQUE);
  }

  private static String length(double metres) {
    return Shown.length(metres);
  }

  private static String force(double newtons) {
    return Shown.force(newtons);
  }

  private static String pressure(double pascals) {
    return Shown.pressure(pascals);
  }
}
