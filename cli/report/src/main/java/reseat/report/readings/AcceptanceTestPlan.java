package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.csv.PlainCell;
import reseat.readings.AcceptancePlan;
import reseat.readings.ColumnFacts;
import reseat.readings.GaugeNoise;
import reseat.readings.Probe;
import reseat.report.form.Paragraph;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * The acceptance test before it is made: how many mounts, how much wear-in, which probes where,
 * what counts as a pass; as text, and as a blank file that the readings are written into.
 */
public final class AcceptanceTestPlan {

  private final List<AcceptancePlan> plans;
  private final Unit unit;
  private final List<String> sources;
  private final int mounts;
  private final Map<String, ColumnFacts> gauges;

  /**
   * Takes a plan without a word of the gauges.
   *
   * @param plans one per axis, in m; the greatest number of mounts holds for all
   * @param unit unit in which the readings are to be written
   * @param sources where the targets come from, sentences; may be empty
   */
  public AcceptanceTestPlan(List<AcceptancePlan> plans, Unit unit, List<String> sources) {
    this(plans, unit, sources, Map.of());
  }

  /**
   * Takes a plan with the gauges that are to be used.
   *
   * @param plans one per axis, in m; the greatest number of mounts holds for all
   * @param unit unit in which the readings are to be written
   * @param sources where the targets come from, sentences; may be empty
   * @param gauges noise and step of the gauge by the name of the axis; may lack axes
   */
  public AcceptanceTestPlan(
      List<AcceptancePlan> plans,
      Unit unit,
      List<String> sources,
      Map<String, ColumnFacts> gauges) {
    this.gauges = Map.copyOf(gauges);
    this.plans = List.copyOf(plans);
    this.unit = unit;
    this.sources = List.copyOf(sources);
    this.mounts = plans.stream().mapToInt(AcceptancePlan::mounts).max().orElseThrow();
  }

  /**
   * Writes the plan for people.
   *
   * @return text of whole lines
   */
  public String text() {
    return plan("");
  }

  /**
   * Writes the blank form: a readings file with the plan as remarks and a row for every mount.
   *
   * @return CSV text; ASCII but for names, so that a spreadsheet cannot spoil the units
   */
  public String csv() {
    String remarks = plan("# ").replace("\u00b1", "+-").replace('\u00b5', 'u');
    StringBuilder out = new StringBuilder(remarks);
    String symbol = unit.symbol().replace('\u00b5', 'u');
    out.append("#\ncycle");
    plans.forEach(p -> out.append(',').append(PlainCell.quoted(p.axis() + " [" + symbol + "]")));
    out.append(",temperature [degC],date,clock,note\n");
    for (int i = 1; i <= mounts; i++) {
      out.append(i).append(",".repeat(plans.size() + 4)).append('\n');
    }
    return out.toString();
  }

  private String plan(String margin) {
    int wearIn = plans.stream().mapToInt(AcceptancePlan::wearIn).max().orElseThrow();
    StringBuilder out = new StringBuilder();
    out.append(Paragraph.of(margin, "Acceptance test: remount repeatability"));
    sources.forEach(s -> out.append(Paragraph.of(margin, s)));
    out.append(Paragraph.of(margin, "").stripTrailing()).append('\n');
    out.append(
        Paragraph.of(
            margin, "1. Wear in with " + wearIn + " seatings without reading (common practice)."));
    List<Probe> probes = plans.get(0).probes();
    if (!probes.isEmpty()) {
      out.append(Paragraph.of(margin, "2. Set up the probes, in the coupling frame:"));
      probes.forEach(p -> out.append(Paragraph.of(margin + "   ", where(p))));
    } else {
      out.append(
          Paragraph.of(
              margin,
              "2. Set up a probe along each axis, at the tool point or as near to it as can be."));
    }
    out.append(
        Paragraph.of(
            margin,
            "3. Mount "
                + mounts
                + " times, always in the same way, and read every probe after each. Write down"
                + " every mount, also a bad one, with a note."));
    out.append(Paragraph.of(margin, "4. A pass, axis by axis (s: standard deviation, n - 1):"));
    plans.forEach(p -> out.append(Paragraph.of(margin + "   ", pass(p.withMounts(mounts)))));
    plans.forEach(p -> gauge(p).ifPresent(g -> out.append(Paragraph.of(margin + "   ", g))));
    out.append(
        Paragraph.of(
            margin, "5. Gauge, its step and noise: ______________  Date, name: ______________"));
    return out.toString();
  }

  /** Holds the stated gauge against the target, and says which step would do. */
  private Optional<String> gauge(AcceptancePlan p) {
    ColumnFacts stated = gauges.getOrDefault(p.axis(), ColumnFacts.NONE);
    double rounding = GaugeNoise.ROUNDING * stated.resolution();
    double noise = Math.max(stated.gaugeNoise(), rounding);
    if (noise == 0) {
      return Optional.empty();
    }
    String gauge =
        p.axis()
            + ": your gauge"
            + (rounding >= stated.gaugeNoise()
                ? ", of step " + limit(stated.resolution()) + ", has a noise of "
                : " has a noise of ")
            + length(noise);
    return Optional.of(
        noise <= p.gaugeLimit()
            ? gauge + ", fine enough."
            : gauge
                + (noise > p.target()
                    ? ": it cannot prove the target."
                    : ", too much beside the target.")
                + " Take one that reads in steps of "
                + length(p.gaugeLimit() / GaugeNoise.ROUNDING)
                + " or finer, and repeats within s "
                + length(p.gaugeLimit())
                + ".");
  }

  private String where(Probe probe) {
    boolean inch = unit.isInch();
    Unit place = inch ? UnitCatalog.INCH : UnitCatalog.MM;
    List<String> at = new ArrayList<>();
    List<String> toward = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      at.add(QuantityFormat.fixedNumber(probe.position().component(k), place, inch ? 4 : 2));
      toward.add(FilledText.of("%.3f", probe.direction().component(k)));
    }
    return probe.name()
        + ": at ("
        + String.join(", ", at)
        + ") "
        + place.symbol()
        + ", reading grows toward ("
        + String.join(", ", toward)
        + ")";
  }

  private String pass(AcceptancePlan p) {
    return p.axis()
        + ": s of at most "
        + limit(p.passLimit())
        + " shows with "
        + ReadingsRemarks.percent(p.confidence())
        + " confidence that the true s is at most "
        + limit(p.target())
        + "; chance of that "
        + (p.chanceOfPass() > 0.99
            ? "over 99 %"
            : ReadingsRemarks.percent(Math.floor(100 * p.chanceOfPass()) / 100))
        + " if the true s is "
        + length(p.expected())
        + ". Gauge noise at most "
        + length(p.gaugeLimit())
        + ".";
  }

  private String limit(double si) {
    return QuantityFormat.significant(si, unit, 3);
  }

  private String length(double si) {
    return QuantityFormat.significant(si, unit, 2);
  }
}
