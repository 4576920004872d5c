package reseat.report.shop;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.equilibrium.CaseResponse;
import reseat.making.Clearance;
import reseat.report.page.Page;
import reseat.study.ShopStudy;

/** What must not touch, and the least gap that the motion of the holder needs there. */
public final class ClearanceSheet {

  private ClearanceSheet() {}

  public static List<Page.Section> of(ShopStudy study, ShopUnits units) {
    List<Page.Row> rows = new ArrayList<>();
    for (Clearance c : study.clearances()) {
      double drawn = c.place().gap().orElse(Double.NaN);
      rows.add(
          new Page.Row(
              List.of(
                  c.place().name(),
                  units.point(c.place().at()),
                  units.small(total(c, c.rest())),
                  units.small(total(c, c.loads())),
                  units.small(total(c, c.scatter()) + total(c, c.tolerances())),
                  least(c, units),
                  Double.isNaN(drawn)
                      ? ""
                      : units.size(drawn) + (c.holds() ? ", enough" : ", TOO SMALL")),
              c.holds() ? Page.Tone.PLAIN : Page.Tone.BAD));
    }
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section(
            "list",
            "",
            List.of(
                new Page.Paragraph(
                    "Six contacts and no seventh: the gaps below are the least that the holder's motion"
                        + " needs, from first touch to rest, under the worst load case, with preloads"
                        + " and parts at their limits, all added. They are no allowance for dirt,"
                        + " paint, bent parts or a badly placed hole: a shop leaves "
                        + units.pair("0.2 mm", "0.008 in")
                        + " and more where it can (common practice)."),
                new Page.Table(
                    "Points in the coupling frame: x and y in the plane of the ball centres, z from"
                        + " the base to the holder. Sideways is across z.",
                    List.of(
                        "what",
                        "where (x, y, z)",
                        "to rest",
                        "under load",
                        "preload, parts",
                        "least gap",
                        "drawn, or measured"),
                    rows))));
    sections.add(
        new Page.Section("look", "Look at each", List.of(new Page.Points(looks(study, units)))));
    return sections;
  }

  private static double total(Clearance c, Clearance.Room r) {
    return c.place().across().isPresent() ? r.across() : Elementary.hypot(r.sideways(), r.along());
  }

  private static String least(Clearance c, ShopUnits units) {
    Clearance.Room r = c.least();
    return c.place().across().isPresent()
        ? units.gap(r.across()) + " across the gap"
        : units.gap(r.sideways()) + " sideways, " + units.gap(r.along()) + " along z";
  }

  private static List<String> looks(ShopStudy study, ShopUnits units) {
    List<String> points = new ArrayList<>();
    if (Double.isFinite(study.catchRange()) && study.catchRange() > 0) {
      points.add(
          "Setting down: the seats catch a holder that is off sideways by up to "
              + units.coarse(study.catchRange())
              + ". What has less room sideways than the holder is off when it is set down guides it"
              + " in the seats' place: give it room, or chamfer it.");
    }
    if (study.liftOut() > 0) {
      points.add(
          "Taking off: lift by "
              + units.coarse(study.liftOut())
              + " before moving sideways, until the balls are out of their seats; shanks and stops"
              + " must let it.");
    }
    points.add(
        "Bolt shank: free in its hole all round with the holder seated; head or nut on a spherical"
            + " washer or a spring, so that it pulls and does not locate.");
    points.add("Magnet faces: never touch; a strip of paper must slide between them.");
    points.add("Dowels used in assembly: pulled out, or shortened below the other half.");
    points.add(
        "Seals and covers: soft, and touching one half only; a seal that is pressed is a force that"
            + " the check does not know.");
    points.add(
        "Cables and hoses: slack enough to hang by themselves with the holder lifted; tied to the"
            + " holder near its middle. A pull of a cable is a load case: give it in the design file.");
    points.add(
        "Look through the gap against a light, then slide paper of "
            + units.pair("0.1 mm", "0.004 in")
            + " all round.");
    List<String> open = new ArrayList<>();
    for (CaseResponse c : study.check().cases()) {
      if (c.liftsOff()) {
        open.add(c.loadCase().name());
      }
    }
    if (!open.isEmpty()) {
      points.add(
          "Not counted, since the holder comes off its seats: "
              + String.join(", ", open)
              + ". What it strikes then must bear it.");
    }
    return points;
  }
}
