package reseat.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import reseat.cli.page.Page;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NaturalFrequencies;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadScatter;
import reseat.remount.SelfSeating;
import reseat.space.Vec3;
import reseat.study.SeatedCheck;

/** The parts of a page that tell the mechanics: contacts, stiffness, load cases, seating. */
final class MechanicsSections {

  private MechanicsSections() {}

  static Page.Section contacts(SeatedCheck check, List<Page.Block> pictures) {
    List<Page.Row> rows = new ArrayList<>();
    for (int i = 0; i < check.standing().contacts().size(); i++) {
      Equilibrium.Contact c = check.standing().contacts().get(i);
      ContactLimits limits = check.limits().get(i);
      double p = c.peakPressure();
      rows.add(
          Page.Row.of(
              c.line().name(),
              Shown.force(c.force()),
              Shown.micrometres(c.approach()),
              Shown.micrometres(c.hertz().semiMajor(c.force()))
                  + " × "
                  + Shown.micrometres(c.hertz().semiMinor(c.force())),
              Shown.pressure(p),
              limits
                  .governing()
                  .map(
                      l ->
                          Shown.percent(p / l.peakPressure())
                              + " of "
                              + Shown.pressure(l.peakPressure()))
                  .orElse("no limit known"),
              Shown.stiffness(c.normalStiffness())
                  + " / "
                  + Shown.stiffness(c.tangentialStiffnessLong())));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "Contacts under preload and weight",
            List.of(
                "contact",
                "force",
                "approach, µm",
                "half axes of the patch, µm",
                "peak pressure",
                "of the limit",
                "stiffness normal / tangential, N/µm"),
            rows));
    blocks.addAll(pictures);
    return new Page.Section("contacts", "Contacts", blocks);
  }

  static Page.Section stiffness(SeatedCheck check, List<Page.Block> pictures) {
    CouplingDesign d = check.design();
    PointStiffness soft = check.frictionless().toolPoint();
    PointStiffness stiff = check.sticking().toolPoint();
    List<Page.Row> rows = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      rows.add(
          Page.Row.of(
              d.axes().axis(k).name(),
              Shown.stiffness(soft.alongAxes().component(k)),
              Shown.stiffness(stiff.alongAxes().component(k)),
              share(check.frictionless(), d.axes().axis(k).direction())));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Paragraph(
            "Stiffness of the tool point against a force on it, the holder free to tilt, in two"
                + " bounds: contacts that slide, and contacts that stick. Small vibrations see the"
                + " second; a load that makes contacts slide falls toward the first."));
    blocks.add(
        new Page.Table(
            "At the tool point",
            List.of(
                "axis", "sliding, N/µm", "sticking, N/µm", "largest shares of the give (sliding)"),
            rows));
    blocks.add(new Page.Paragraph(frequencies(check)));
    blocks.addAll(pictures);
    return new Page.Section("stiffness", "Stiffness", blocks);
  }

  private static String frequencies(SeatedCheck check) {
    NaturalFrequencies low = check.frictionless().frequencies();
    NaturalFrequencies high = check.sticking().frequencies();
    if (low.hertz().isEmpty()) {
      return "Natural frequencies need the holder's mass.";
    }
    return String.format(
        Locale.ROOT,
        "First natural frequency of the holder on its contacts: %.0f Hz sliding, %.0f Hz sticking%s."
            + " Post and machine are taken as rigid, so the machine's own first mode is lower.",
        low.hertz().get(0),
        high.hertz().get(0),
        low.withInertia() ? "" : " (mass alone; radii of gyration were not given)");
  }

  private static String share(SeatedCheck.Elasticity elasticity, Vec3 direction) {
    List<CouplingStiffness.Share> shares =
        new ArrayList<>(elasticity.stiffness().shares(elasticity.toolPoint().point(), direction));
    shares.sort((a, b) -> Double.compare(b.share(), a.share()));
    List<String> words = new ArrayList<>();
    for (CouplingStiffness.Share s : shares.subList(0, Math.min(3, shares.size()))) {
      words.add(s.name() + " " + Shown.percent(s.share()));
    }
    return String.join(", ", words);
  }

  static Page.Section cases(SeatedCheck check, List<Page.Block> pictures) {
    CouplingDesign d = check.design();
    List<Page.Row> rows = new ArrayList<>();
    for (CaseResponse c : check.cases()) {
      Vec3 soft = d.axes().of(c.motion().shift());
      Vec3 stuck = d.axes().of(c.stickingMotion().shift());
      rows.add(
          new Page.Row(
              List.of(
                  c.loadCase().name(),
                  Shown.factor(c.liftOff().factor())
                      + (c.liftOff().contact().isEmpty() ? "" : ", " + c.liftOff().contact()),
                  triple(soft),
                  triple(stuck)),
              c.liftsOff() ? Page.Tone.BAD : Page.Tone.PLAIN));
    }
    for (PreloadScatter p : check.preloadScatter()) {
      rows.add(
          Page.Row.of(
              p.preload().name() + " ± " + Shown.percent(p.preload().forceSpread().limit()),
              "-",
              triple(d.axes().of(p.stronger().shift())),
              "-"));
    }
    String axes =
        d.axes().first().name() + ", " + d.axes().second().name() + ", " + d.axes().third().name();
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "Load on top of preload and weight",
            List.of(
                "case",
                "lifts off at times the load, first contact",
                "tool point moves along " + axes + ", µm (sliding)",
                "the same, sticking, µm"),
            rows));
    blocks.add(
        new Page.Paragraph(
            "Least force at the tool point that lifts a contact: "
                + Shown.force(check.weakest().force())
                + " at "
                + check.weakest().contact()
                + "."));
    blocks.addAll(pictures);
    return new Page.Section("cases", "Load cases", blocks);
  }

  static String triple(Vec3 v) {
    return Shown.micrometres(v.x())
        + ", "
        + Shown.micrometres(v.y())
        + ", "
        + Shown.micrometres(v.z());
  }

  static Page.Section seating(SeatedCheck check) {
    List<Page.Row> rows = new ArrayList<>();
    double high = check.design().friction().high();
    for (SelfSeating.Path p : check.waysHome()) {
      rows.add(
          new Page.Row(
              List.of(
                  String.join(", ", p.open()),
                  p.lastSeat(),
                  friction(p.limitFriction()),
                  friction(p.restFriction())),
              p.restFriction() < high ? Page.Tone.CAREFUL : Page.Tone.PLAIN));
    }
    return new Page.Section(
        "seating",
        "Will it seat itself?",
        List.of(
            new Page.Paragraph(
                String.format(
                    Locale.ROOT,
                    "With one contact still open the other five slide. The slide stalls where the"
                        + " friction coefficient reaches the value given; a holder that is set down"
                        + " gently there can stand still from a lower one; the range assumed here is"
                        + " %.2f to %.2f.",
                    check.design().friction().low(),
                    high)),
            new Page.Table(
                "Last contact to close, worst first",
                List.of(
                    "contact still open",
                    "last seat to close",
                    "stalls at friction",
                    "can stand still from"),
                rows)));
  }

  private static String friction(double limit) {
    return limit >= SelfSeating.GREATEST ? "never" : String.format(Locale.ROOT, "%.3f", limit);
  }
}
