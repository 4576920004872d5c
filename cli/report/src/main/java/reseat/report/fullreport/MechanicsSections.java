package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.check.Measure;
import reseat.contact.ContactLimits;
import reseat.contact.Dent;
import reseat.design.CouplingDesign;
import reseat.elementary.Elementary;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NaturalFrequencies;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadScatter;
import reseat.report.check.DentWords;
import reseat.report.form.FigureText;
import reseat.report.page.Page;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.study.SeatedCheck;
import reseat.units.FilledText;

/** The parts of a page that tell the mechanics: contacts, stiffness, load cases, seating. */
public final class MechanicsSections {

  private MechanicsSections() {}

  public static Page.Section contacts(SeatedCheck check, PageFigures f) {
    EqualRows rows = new EqualRows();
    for (int i = 0; i < check.standing().contacts().size(); i++) {
      Equilibrium.Contact c = check.standing().contacts().get(i);
      ContactLimits limits = check.limits().get(i);
      double p = c.peakPressure();
      rows.add(
          Page.Tone.PLAIN,
          c.line().name(),
          f.force(c.force()),
          f.small(c.approach()),
          f.patch(2 * c.semiMajor(), 2 * c.semiMinor()),
          c.dent().isPresent() ? "dented" : f.pressure(p),
          limits
              .governing()
              .map(
                  l ->
                      FigureText.percent(p / l.peakPressure())
                          + " of "
                          + f.pressure(l.peakPressure()))
              .orElse("no limit known"),
          f.stiffness(c.normalStiffness()),
          f.stiffness(c.tangentialStiffnessLong()));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "Contacts under preload and weight",
            List.of(
                "contact",
                "force",
                "approach, " + f.smallUnit(),
                "patch",
                "peak pressure",
                "of the limit",
                "normal stiffness",
                "tangential stiffness"),
            rows.rows()));
    dents(check, f).ifPresent(blocks::add);
    return new Page.Section("contacts", "Contacts", blocks);
  }

  /** What the loads leave behind; nothing where all contacts stay elastic. */
  private static Optional<Page.Block> dents(SeatedCheck check, PageFigures f) {
    EqualRows rows = new EqualRows();
    for (int i = 0; i < check.standing().contacts().size(); i++) {
      Equilibrium.Contact c = check.standing().contacts().get(i);
      if (c.dent().isPresent()) {
        Dent d = c.dent().get();
        rows.add(
            Page.Tone.PLAIN,
            c.line().name(),
            DentWords.surface(check.limits().get(i).surface(d.greatestForce())),
            f.force(d.greatestForce()),
            f.text().rough(d.diameter()),
            f.text().rough(d.depth()),
            f.text().rough(d.lip()),
            f.stiffness(d.stiffness(d.greatestForce())),
            d.established() ? "" : "ellipse: an estimate");
      }
    }
    return rows.rows().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Page.Table(
                "Dents left by the greatest force ever; every other figure of these contacts is that"
                    + " after work-in",
                List.of(
                    "contact",
                    "surface",
                    "greatest force",
                    "diameter, about",
                    "depth, about",
                    "lip, up to",
                    "stiffness at that force",
                    ""),
                rows.rows()));
  }

  public static Page.Section stiffness(SeatedCheck check, PageFigures f) {
    CouplingDesign d = check.design();
    PointStiffness soft = check.frictionless().toolPoint();
    PointStiffness stiff = check.sticking().toolPoint();
    List<Page.Row> rows = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      rows.add(
          Page.Row.of(
              d.axes().axis(k).name(),
              f.stiffness(soft.alongAxes().component(k)),
              f.stiffness(stiff.alongAxes().component(k)),
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
            List.of("axis", "sliding", "sticking", "largest shares of the give (sliding)"),
            rows));
    blocks.add(new Page.Paragraph(frequencies(check)));
    return new Page.Section("stiffness", "Stiffness", blocks);
  }

  private static String frequencies(SeatedCheck check) {
    NaturalFrequencies low = check.frictionless().frequencies();
    NaturalFrequencies high = check.sticking().frequencies();
    if (low.hertz().isEmpty()) {
      return "Natural frequencies need the holder's mass.";
    }
    return FilledText.of(
        "First natural frequency of the holder on its contacts: %.0f Hz sliding, %.0f Hz sticking%s."
            + " Post and machine are taken as rigid, so the machine's own first mode is lower.",
        low.hertz().get(0),
        high.hertz().get(0),
        low.withInertia() ? "" : " (mass alone; radii of gyration were not given)");
  }

  private static String share(SeatedCheck.Elasticity elasticity, Vec3 direction) {
    List<CouplingStiffness.Share> shares =
        new ArrayList<>(elasticity.stiffness().shares(elasticity.toolPoint().point(), direction));
    // equal parts stay in their order, whatever their last bits
    shares.sort(Comparator.comparingDouble(s -> -Elementary.rint(1e9 * s.share())));
    List<String> words = new ArrayList<>();
    for (CouplingStiffness.Share s : shares.subList(0, Math.min(3, shares.size()))) {
      words.add(s.name() + " " + FigureText.percent(s.share()));
    }
    return String.join(", ", words);
  }

  public static Page.Section cases(SeatedCheck check, PageFigures f) {
    CouplingDesign d = check.design();
    List<Page.Row> rows = new ArrayList<>();
    for (CaseResponse c : check.cases()) {
      Vec3 soft = d.axes().of(c.motion().shift());
      Vec3 stuck = d.axes().of(c.stickingMotion().shift());
      rows.add(
          new Page.Row(
              List.of(
                  c.loadCase().name(),
                  factor(f, c.liftOff().factor())
                      + (c.liftOff().contact().isEmpty() ? "" : ", " + c.liftOff().contact()),
                  f.triple(soft),
                  f.triple(stuck)),
              c.liftsOff() ? Page.Tone.BAD : Page.Tone.PLAIN));
    }
    for (PreloadScatter p : check.preloadScatter()) {
      if (p.preload().forceSpread().limit() == 0) {
        continue;
      }
      rows.add(
          Page.Row.of(
              p.preload().name() + " ± " + FigureText.percent(p.preload().forceSpread().limit()),
              "-",
              f.triple(d.axes().of(p.stronger().shift())),
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
                "lifts off at × the load, first contact",
                "tool point moves along " + axes + ", " + f.smallUnit() + ", sliding",
                "the same, sticking"),
            rows));
    blocks.add(
        new Page.Paragraph(
            "Least force at the tool point that lifts a contact: "
                + f.force(check.weakest().force())
                + " at "
                + check.weakest().contact()
                + "."));
    return new Page.Section("cases", "Load cases", blocks);
  }

  private static String factor(PageFigures f, double value) {
    return Double.isInfinite(value) ? "never" : f.text().of(Measure.FACTOR, value, true);
  }

  public static Page.Section seating(SeatedCheck check) {
    EqualRows rows = new EqualRows();
    double high = check.design().friction().high();
    for (SelfSeating.Path p : check.waysHome()) {
      rows.add(
          p.restFriction() < high ? Page.Tone.CAREFUL : Page.Tone.PLAIN,
          String.join(", ", p.open()),
          p.lastSeat(),
          friction(p.limitFriction()),
          friction(p.restFriction()));
    }
    return new Page.Section(
        "seating",
        "Will it seat itself?",
        List.of(
            new Page.Paragraph(
                FilledText.of(
                    "With one contact still open the other five slide. A moving holder sticks where"
                        + " the friction coefficient reaches the value given; one set down gently"
                        + " can stand still from a lower one; expected here is %.2f to %.2f.",
                    check.design().friction().low(), high)),
            new Page.Table(
                "Last contact to close, worst first",
                List.of(
                    "contact still open",
                    "last seat to close",
                    "sticks at friction",
                    "can stand still from"),
                rows.rows())));
  }

  private static String friction(double limit) {
    return limit >= SelfSeating.GREATEST ? "never" : FilledText.of("%.3f", limit);
  }
}
