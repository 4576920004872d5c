package reseat.report.shop;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;
import reseat.report.page.Page;
import reseat.seat.SeatClearance;
import reseat.space.Vec3;
import reseat.study.ShopStudy;

/** What to look at and to clean, how often, and what dirt and wear do. */
public final class UpkeepSheet {

  /** Size of a particle that is told of, m. */
  private static final double PARTICLE = 1e-6;

  private UpkeepSheet() {}

  public static List<Page.Section> of(ShopStudy study, ShopUnits units) {
    CouplingDesign design = study.design();
    MachineAxes axes = design.axes();
    Vec3 dirt = study.perParticle().times(PARTICLE);
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section(
            "every",
            "At every change",
            List.of(
                new Page.Steps(
                    List.of(
                        "Blow or wipe chips off before the holder is lifted, so that none falls into a"
                            + " seat.",
                        "Wipe balls and seats with a lint-free paper and solvent, one paper for each;"
                            + " look at each against the light.",
                        "Oil or no oil: always the same. A trace, wiped off again, is enough.",
                        "Set the holder down gently and let it find its seats; tap it lightly if it is"
                            + " used to it. Then the preload, from loose to tight, in one go.",
                        "A holder that rocks, clicks or reads otherwise than yesterday is lifted and"
                            + " cleaned, not pulled tighter.")),
                new Page.Paragraph(
                    "A particle of "
                        + units.small(PARTICLE)
                        + " under a ball moves the tool point by up to "
                        + units.small(dirt.x())
                        + " along "
                        + axes.first().name()
                        + ", "
                        + units.small(dirt.y())
                        + " along "
                        + axes.second().name()
                        + ", "
                        + units.small(dirt.z())
                        + " along "
                        + axes.third().name()
                        + "; one of ten times the size ten times as far."))));
    sections.add(
        new Page.Section(
            "times",
            "From time to time",
            List.of(
                new Page.Table(
                    "Intervals are common practice, no source: shorten them where the log says so.",
                    List.of("when", "what", "if not"),
                    List.of(
                        Page.Row.of(
                            "every week",
                            "master holder mounted five times, readings into the log",
                            "outside its limits (reseat readings, later checks): clean, look, test"
                                + " again"),
                        Page.Row.of(
                            "every month",
                            "seats and balls under a glass: marks, rust, cracks, chips pressed in",
                            "see below"),
                        Page.Row.of(
                            "every month",
                            "preload: setting as on the setting sheet; springs whole, magnets free of"
                                + " chips",
                            "set again; renew tired springs"),
                        Page.Row.of(
                            "every month",
                            "lock nuts tight, bonds without crack or whitening",
                            "setting and bonding sheets"),
                        Page.Row.of(
                            "every half year", "clearance list, gap by gap", "find what has moved"),
                        Page.Row.of(
                            "after a crash, a fall, a changed ball",
                            "all of the above, then the acceptance test",
                            "offsets of all holders are read again"))))));
    sections.add(marks(study, units));
    return sections;
  }

  private static Page.Section marks(ShopStudy study, ShopUnits units) {
    MergedRows rows = new MergedRows();
    List<Support> supports = study.design().supports();
    for (Equilibrium.Contact c : study.check().standing().contacts()) {
      Support s = supports.get(c.line().ballIndex());
      rows.add(
          c.line().support() + " " + c.line().flank(),
          units.coarse(2 * c.semiMajor()) + " by " + units.coarse(2 * c.semiMinor()),
          edge(s, c.line().flank(), units));
    }
    return new Page.Section(
        "marks",
        "Where the marks should be",
        List.of(
            new Page.Table(
                "A used seat shows one bright mark for each contact, as large as the patch at rest and"
                    + " a little larger in the direction of the cut.",
                List.of("contact", "patch across", "middle of the mark from the nearest edge"),
                rows.rows()),
            new Page.Points(
                List.of(
                    "A mark that is much larger, has a raised rim or can be felt with a finger nail: the"
                        + " seat was overloaded; see the pressure in the check, then renew it.",
                    "Two marks on one flank, or one at an edge: something shifted, or there was dirt.",
                    "Red-brown powder: fretting. Clean, oil, look for a load that rocks the holder.",
                    "Never scrape or polish a seat: it is measured and rebuilt, or left alone."))));
  }

  private static String edge(Support s, String flank, ShopUnits units) {
    double least = Double.POSITIVE_INFINITY;
    for (SeatClearance c : s.seat().clearances(s.ball())) {
      if (c.flank().equals(flank)) {
        least = Math.min(least, c.distance());
      }
    }
    return Double.isFinite(least) ? units.coarse(least) : "not stated";
  }
}
