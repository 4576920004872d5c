package reseat.report.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import reseat.making.GaugeReading;
import reseat.making.GaugeStock;
import reseat.making.PinSpacing;
import reseat.making.TwoGaugeAngle;
import reseat.report.page.Page;
import reseat.seat.SeatClearance;
import reseat.seat.TrihedralSeat;
import reseat.study.ShopStudy;
import reseat.units.FilledText;
import reseat.units.UnitCatalog;

/** What to read over gauges in the seats, and what it says when it is off. */
public final class GaugeSheet {

  private static final double MINUTE = UnitCatalog.ARC_MINUTE.toSi(1);

  private final ShopStudy study;
  private final ShopUnits units;

  private GaugeSheet(ShopStudy study, ShopUnits units) {
    this.study = study;
    this.units = units;
  }

  public static List<Page.Section> of(ShopStudy study, ShopUnits units) {
    return new GaugeSheet(study, units).sections();
  }

  private List<Page.Section> sections() {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(heights());
    sections.add(errors());
    if (!study.angles().isEmpty()) {
      sections.add(angles());
    }
    if (!study.spacings().isEmpty()) {
      sections.add(spacings());
    }
    boolean trihedral =
        study.design().supports().stream().anyMatch(s -> s.seat() instanceof TrihedralSeat);
    if (trihedral) {
      sections.add(trihedral());
    }
    return sections;
  }

  private Page.Section heights() {
    List<Page.Row> rows = new ArrayList<>();
    for (GaugeReading r : study.readings()) {
      boolean own = hasDatum(r);
      double height = own ? r.overDatum() : r.overBallCentre();
      OptionalDouble band = own ? r.datumBand() : r.ballBand();
      rows.add(
          Page.Row.of(
              r.support(),
              units.size(r.gauge()),
              own ? r.datum().words() : "centre of the ball",
              units.height(height),
              band.isEmpty() ? "no tolerance" : units.limit(height - band.getAsDouble(), false),
              band.isEmpty() ? "no tolerance" : units.limit(height + band.getAsDouble(), true),
              units.height(r.overBallCentre()),
              ""));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "To the top of a ball, or of a pin laid along the groove; heights count the way the seat"
                + " opens.",
            List.of(
                "seat",
                "gauge",
                "over",
                "height",
                "not under",
                "not over",
                "over the ball's centre",
                "read"),
            rows));
    List<String> points = new ArrayList<>();
    points.add(
        "A reading outside breaks a tolerance of the drawing. One inside does not prove each of them:"
            + " look at the angle as well.");
    points.add(
        "The height over the ball's centre, as designed, compares seats with each other: set the part"
            + " on a plate, read all seats with one gauge; the differences must be those of this"
            + " column.");
    if (study.readings().stream().anyMatch(r -> r.datumBand().isEmpty() && hasDatum(r))) {
      points.add(
          "Where no tolerance is told the design file has none that acts: give seat_depth and"
              + " flank_angle (pins: pin_spacing, pin_diameter) in [tolerances].");
    }
    MergedRows unusable = new MergedRows();
    for (GaugeStock.Unusable u : study.unusable()) {
      unusable.add(u.support(), units.size(u.diameter()) + " " + reason(u) + ".");
    }
    for (Page.Row u : unusable.rows()) {
      points.add("Not in " + String.join(": ", u.cells()));
    }
    blocks.add(new Page.Points(points));
    return new Page.Section("heights", "Height over a gauge", blocks);
  }

  /** A height over the flat itself is the gauge's diameter and tells nothing of the flat. */
  private static boolean hasDatum(GaugeReading r) {
    return r.datum() == GaugeReading.Datum.FACE || r.datum() == GaugeReading.Datum.PIN_TOPS;
  }

  private static String reason(GaugeStock.Unusable u) {
    if (u.features().isEmpty()) {
      return "falls through or does not go in";
    }
    List<String> words = new ArrayList<>();
    for (SeatClearance.Feature f : u.features()) {
      words.add(f.words());
    }
    return "reaches over or down to the " + String.join(" and ", words);
  }

  private Page.Section errors() {
    MergedRows rows = new MergedRows();
    for (GaugeReading r : study.readings()) {
      boolean pins = r.datum() == GaugeReading.Datum.PIN_TOPS;
      rows.add(
          r.support(),
          units.size(r.gauge()),
          ratio(hasDatum(r) ? r.perDepth() : -1),
          r.perMouth().isPresent() ? ratio(r.perMouth().getAsDouble()) : "",
          r.perAngleAtDepth() == 0 ? "" : perMinute(r.perAngleAtDepth()),
          r.perAngleAtMouth().isPresent() ? perMinute(r.perAngleAtMouth().getAsDouble()) : "",
          pins ? ratio(r.perPinSpacing()) : "",
          pins ? ratio(r.perPinDiameter()) : "",
          ratio(r.perGauge()));
    }
    return new Page.Section(
        "errors",
        "What an error does to the height",
        List.of(
            rows.table(
                "Micrometres for each micrometre, or as written for each minute of arc of all flanks"
                    + " together. Width and depth are one error, not two: count either.",
                "seat",
                "gauge",
                "deeper",
                "wider mouth",
                "1' steeper, depth kept",
                "1' steeper, mouth kept",
                "pins wider apart",
                "both pins thicker",
                "gauge larger")));
  }

  private static String ratio(double r) {
    return r == 0 ? "0" : FilledText.of("%+.2f", r);
  }

  private String perMinute(double perRadian) {
    double shift = perRadian * MINUTE;
    return shift == 0 ? "0" : (shift > 0 ? "+" : "") + units.small(shift);
  }

  private Page.Section angles() {
    List<Page.Row> rows = new ArrayList<>();
    for (TwoGaugeAngle a : study.angles()) {
      boolean vee = isVee(a.support());
      double drawn = vee ? Math.PI - 2 * a.flankAngle() : a.flankAngle();
      double perStep = (vee ? 2 : 1) * a.perDifference() * units.step();
      rows.add(
          Page.Row.of(
              a.support(),
              units.size(a.small()) + " and " + units.size(a.large()),
              units.height(a.difference()),
              a.band() > 0 ? "± " + units.tolerance(a.band()) : "no tolerance",
              ShopUnits.angle(drawn) + (vee ? " included" : " flank"),
              FilledText.of("%.2f' %s", Math.abs(perStep) / MINUTE, vee ? "narrower" : "steeper"),
              ""));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "Read over a small and a large gauge, one after the other; the depth drops out.",
            List.of(
                "seat",
                "gauges",
                "heights differ by",
                "pass",
                "angle drawn",
                "each " + units.move(units.step()) + " more",
                "read"),
            rows));
    blocks.add(
        new Page.Paragraph(
            "With radii r and R and a difference D of the heights: cos(flank angle) = (R - r)/(D - (R -"
                + " r)). Gauges that the design file does not name are proposals: any two sizes that"
                + " rest on the flanks do, far apart is better."));
    return new Page.Section("angle", "Angle from two gauges", blocks);
  }

  private boolean isVee(String support) {
    return study.design().supports().stream()
        .anyMatch(s -> s.name().equals(support) && s.seat().isGroove());
  }

  private Page.Section spacings() {
    MergedRows rows = new MergedRows();
    for (PinSpacing p : study.spacings()) {
      rows.add(
          p.support(),
          units.height(p.over()),
          units.height(p.between()),
          p.band() > 0 ? "± " + units.tolerance(p.band()) : "no tolerance",
          "");
    }
    return new Page.Section(
        "spacing",
        "Spacing of the pins",
        List.of(
            new Page.Table(
                "Micrometer over both pins, gauge blocks between them; at both ends of the pins, which"
                    + " must agree.",
                List.of("seat", "over both", "between", "pass", "read"),
                rows.rows())));
  }

  private Page.Section trihedral() {
    return new Page.Section(
        "trihedral",
        "How to measure a trihedral seat",
        List.of(
            new Page.Points(
                List.of(
                    "Depth: height over one ball, as above. Turn the ball three times and read again:"
                        + " what changes is the ball or dirt.",
                    "Angle: heights over two balls. They give the mean of the three flanks.",
                    "Each flank: a trace of marking blue, ball set in and lifted out. Three marks"
                        + " equally high mean three equal flanks; two or one mean a flank that is off.",
                    "Place: the centre of a ball in the seat, probed as a sphere, is the place of the"
                        + " seat; take it from the ball, never from the edges of the mouth."))));
  }
}
