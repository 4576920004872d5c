package reseat.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.AllowedPreload;
import reseat.check.Finding;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.StudMount;
import reseat.design.Support;
import reseat.equilibrium.CaseResponse;
import reseat.repeatability.ToolChangeOutlook;
import reseat.report.check.ExplainText.Explained;
import reseat.report.check.ExplainText.Figures;
import reseat.report.form.FigureText;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The figures of a coupling in use, each with its formula. */
final class ExplainedUse {

  private ExplainedUse() {}

  static Optional<Explained> liftOff(Figures f) {
    double asked = f.check().design().targets().liftOffFactor();
    CaseResponse worst = null;
    for (CaseResponse c : f.check().cases()) {
      if (c.liftOff().index() >= 0
          && (worst == null
              || c.liftOff().factor() / c.wantedFactor(asked)
                  < worst.liftOff().factor() / worst.wantedFactor(asked))) {
        worst = c;
      }
    }
    if (worst == null) {
      return Optional.empty();
    }
    FigureText text = f.text();
    List<String> inputs = new ArrayList<>();
    inputs.add(
        "load case "
            + worst.loadCase().name()
            + ": "
            + text.of(Measure.FORCE, worst.loadCase().load().force().norm())
            + " (design file)");
    inputs.add("contact forces at rest (see --explain contact-force)");
    inputs.add("required: " + ExplainText.factor(worst.wantedFactor(asked), text) + " ×");
    return Optional.of(
        new Explained(
            "lift-off factor of " + worst.loadCase().name() + ", at " + worst.liftOff().contact(),
            ExplainText.factor(worst.liftOff().factor(), text) + " × the load",
            "the factor n at which the first contact has no force left: F at rest + n ΔF = 0, ΔF the"
                + " change of its force by the load case",
            inputs,
            "balance of forces and moments; no friction",
            List.of("preload", "device", "must", "lift_off", "holder")));
  }

  static Optional<Explained> repeatability(Figures f) {
    ToolChangeOutlook outlook = f.check().toolChanges();
    if (outlook.halfWidth().isEmpty()) {
      return Optional.empty();
    }
    CouplingDesign d = f.check().design();
    Vec3 half = outlook.halfWidth().get();
    List<String> axes = new ArrayList<>();
    List<String> inputs = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      axes.add(d.axes().axis(k).name() + " ±" + f.text().length(half.component(k)));
    }
    for (Preload p : d.preloads()) {
      inputs.add(
          p.name()
              + ": "
              + f.text().of(Measure.FORCE, p.force())
              + " ±"
              + FigureText.percent(p.forceSpread().limit())
              + " from change to change");
    }
    inputs.add(
        "friction "
            + f.text().of(Measure.FACTOR, d.friction().low())
            + " to "
            + f.text().of(Measure.FACTOR, d.friction().high())
            + " ("
            + d.friction().source()
            + ")");
    inputs.add("scatter of temperature, film and friction ([remount] of the design file)");
    inputs.add("coverage " + d.targets().coverage().written());
    String road =
        outlook.road() == ToolChangeOutlook.Road.SIMULATED
            ? outlook.changes()
                + " simulated tool changes (fixed seed): standard deviation times"
                + " the ratio for the coverage"
            : "closed form: root sum square of what each cause does to the tool point, times the"
                + " ratio for the coverage";
    return Optional.of(
        new Explained(
            "repeatability of the tool point",
            String.join(", ", axes),
            road,
            inputs,
            "linear covariance of preload, temperature, film and friction, held against simulation"
                + " in the tests; friction after Coulomb, sticking contacts after Mindlin",
            List.of(
                "remount",
                "friction.nominal",
                "preload",
                "coverage",
                "mounting.stud",
                "].mounting")));
  }

  static Optional<Explained> seating(Figures f) {
    SelfSeating.Path worst = f.check().waysHome().get(0);
    CouplingDesign d = f.check().design();
    return Optional.of(
        new Explained(
            "seating limit, with " + String.join(", ", worst.open()) + " still open",
            worst.limitFriction() >= SelfSeating.GREATEST
                ? "seats at any friction"
                : "friction " + f.text().of(Measure.FACTOR, worst.limitFriction(), true),
            "the friction at which the push along the last free path no longer overcomes friction"
                + " at the closed contacts",
            List.of(
                "expected friction "
                    + f.text().of(Measure.FACTOR, d.friction().low())
                    + " to "
                    + f.text().of(Measure.FACTOR, d.friction().high())
                    + " ("
                    + d.friction().source()
                    + ")",
                "lines of the contacts and of the preload (design file)"),
            "balance of the sliding holder, Coulomb friction against the slide",
            List.of("friction", "preload", "seating")));
  }

  static Optional<Explained> preloadBand(Figures f) {
    if (f.check().design().preloads().isEmpty()) {
      return Optional.empty();
    }
    Optional<AllowedPreload> allowed = f.check().preload().get();
    double all = 0;
    for (Preload p : f.check().design().preloads()) {
      all += p.force();
    }
    String value =
        allowed.isEmpty()
            ? "no size of these preloads passes every check"
            : PreloadBandText.of(allowed.get(), f.text());
    return Optional.of(
        new Explained(
            "preload band, all preloads together",
            value,
            "all preloads scaled together, down and up to where the first check no longer holds; the"
                + " ends by halving",
            List.of(
                "preloads as designed: " + f.text().of(Measure.FORCE, all) + " (design file)",
                f.check().cases().size() + " load cases (design file)",
                "pressure limits (see --explain peak-pressure)"),
            "balance of forces, with Hertz's pressure",
            List.of("preload", "must", "pressure_share", "ball.material", "groove.", "seat.")));
  }

  static Optional<Explained> frequency(Figures f) {
    List<Double> sliding = f.check().frictionless().frequencies().hertz();
    if (sliding.isEmpty()) {
      return Optional.empty();
    }
    double sticking = f.check().sticking().frequencies().hertz().get(0);
    return Optional.of(
        new Explained(
            "first natural frequency of the holder on its contacts",
            hertz(sliding.get(0)) + " sliding, " + hertz(sticking) + " sticking",
            "(K - ω² M) x = 0, f = ω / 2π; K the 6x6 stiffness at rest, M mass and radii of gyration",
            List.of(
                "mass "
                    + f.text().of(Measure.MASS, f.check().design().holder().mass())
                    + " (design file)",
                f.check().frictionless().frequencies().withInertia()
                    ? "radii of gyration (design file)"
                    : "radii of gyration are not given: the mass is taken as a point",
                "stiffness of the contacts (see --explain normal-stiffness) and of ball mountings"),
            "small vibrations about rest; post and machine rigid",
            List.of("holder", "mounting", "material")));
  }

  private static String hertz(double f) {
    return QuantityFormat.significant(f, UnitCatalog.HERTZ, 3);
  }

  static Optional<Explained> studStress(Figures f) {
    return ExplainText.saying(f.check(), Said.STUD_STRESS)
        .map(
            one ->
                new Explained(
                    "stress of the ball stud " + one.subject().name(),
                    f.text().of(one.measure(), one.value(), true),
                    "σ = F axial / (π d²/4) + 32 F across l / (π d³), at the foot of the neck",
                    withStud(f, one),
                    "bending and tension of a round bar, any strength-of-materials text",
                    List.of("mounting", "stud")));
  }

  static Optional<Explained> bondUse(Figures f) {
    return ExplainText.saying(f.check(), Said.BOND_USE)
        .map(
            one ->
                new Explained(
                    "use of the bond " + one.subject().name(),
                    f.text().of(one.measure(), one.value(), true),
                    "load on the bond over what it may bear: strength in a test times the shares for"
                        + " lasting or short load, temperature and gap",
                    withStud(f, one),
                    "derating is common practice, no source; strength as the file or its adhesive"
                        + " says",
                    List.of("bond", "adhesive")));
  }

  private static List<String> withStud(Figures f, Finding one) {
    List<String> inputs = new ArrayList<>();
    for (Support s : f.check().design().supports()) {
      Optional<StudMount> mount = s.mounting().stud();
      if (s.name().equals(one.subject().name()) && mount.isPresent()) {
        inputs.add(
            "stud neck "
                + f.text().length(mount.get().stud().neckDiameter())
                + ", standing out "
                + f.text().length(mount.get().stud().stickOut())
                + ", of "
                + mount.get().material().name()
                + " (design file)");
      }
    }
    inputs.add("the worst load on this ball: contact forces at rest and under every load case");
    inputs.add("what was found: " + FindingWords.of(one.said(), f.text()));
    inputs.add(ExplainText.limit(one, f.text()));
    return inputs;
  }
}
