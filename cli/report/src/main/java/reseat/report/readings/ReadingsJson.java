package reseat.report.readings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.design.InputDoubt;
import reseat.readings.BetweenHolders;
import reseat.readings.BoundsGround;
import reseat.readings.ColumnAnalysis;
import reseat.readings.ControlChart;
import reseat.readings.Drift;
import reseat.readings.GaugeNoise;
import reseat.readings.OffsetTable;
import reseat.readings.Outliers;
import reseat.readings.ProofOfTarget;
import reseat.readings.ReadingForm;
import reseat.readings.Repeatability;
import reseat.readings.ScatterBounds;
import reseat.readings.SeriesAnalysis;
import reseat.readings.SeriesDecision;
import reseat.readings.SeriesVersion;
import reseat.readings.ShapelessBound;
import reseat.readings.TemperatureRegression;
import reseat.report.form.JsonWriter;

/** A remount series as JSON: SI, the unit as the end of the key. */
public final class ReadingsJson {

  private static final double NINETY_FIVE = 0.95;

  private final ReadingsReport report;
  private final SeriesAnalysis analysis;
  private final SeriesDecision decision;
  private final JsonWriter json = new JsonWriter();
  private String unit = "_m";

  private ReadingsJson(ReadingsReport report) {
    this.report = report;
    this.analysis = report.analysis();
    this.decision = report.decision();
  }

  /**
   * Writes the report.
   *
   * @param report what is reported
   * @return JSON text
   */
  public static String of(ReadingsReport report) {
    return new ReadingsJson(report).text();
  }

  private String text() {
    json.beginDocument();
    json.key("file").value(analysis.series().source());
    json.key("mounts").value(analysis.series().mounts());
    json.key("rows_without_readings").value(analysis.series().notMade());
    json.key("confidence").value(analysis.options().confidence());
    json.key("false_alarm").value(analysis.options().falseAlarm());
    json.key("wear_in").value(analysis.wearIn());
    json.key("settled").value(analysis.hasSettled());
    json.key("verdict").value(lower(decision.word()));
    json.key("holds").value(report.holds());
    understood();
    json.key("doubts").beginArray();
    for (InputDoubt doubt : report.doubts()) {
      json.beginObject();
      json.key("column").value(doubt.key());
      json.key("message").value(doubt.message());
      json.end();
    }
    json.end();
    json.key("columns").beginArray();
    analysis.columns().forEach(this::column);
    json.end();
    report.predictions().forEach(p -> PredictionJson.write(json, p, report.analysis().series()));
    report.poses().forEach(p -> PoseJson.write(json, p, report.points()));
    offsets(report.offsets());
    later();
    json.end();
    return json.finish();
  }

  private JsonWriter size(String name, double value) {
    return json.key(name + unit).value(value);
  }

  private void column(ColumnAnalysis c) {
    unit = ReadingsRemarks.isLength(c) ? "_m" : "_rad";
    json.beginObject();
    json.key("name").value(c.column().name());
    c.all().ifPresent(this::figures);
    json.key("settled").beginObject();
    json.key("wear_in").value(c.settling().wearIn());
    json.key("has_settled").value(c.settling().settled());
    json.key("p").value(c.settling().p());
    c.settled().ifPresent(this::figures);
    size("scatter", c.scatter().s());
    json.key("freedom").value(c.scatter().freedom());
    c.bounds().ifPresent(b -> bounds(b, c.ground()));
    if (c.isSkewed()) {
      shapeless(c);
    }
    c.toleranceFactor().ifPresent(k -> json.key("tolerance_factor").value(k));
    json.end();
    c.drift().ifPresent(this::drift);
    flagged(c);
    c.gauge().ifPresent(this::gauge);
    c.shape().ifPresent(s -> json.key("normal_p").value(s.p()));
    c.temperature().ifPresent(this::temperature);
    c.holders().ifPresent(this::holders);
    c.directions()
        .ifPresent(
            d -> {
              json.key("directions").beginObject();
              size("reversal", d.meanReversal());
              size("bidirectional_4s", d.repeatability());
              json.end();
            });
    versions(c);
    if (c.hasTarget()) {
      proof(c);
    }
    json.end();
  }

  private void figures(Repeatability r) {
    json.key("n").value(r.n());
    size("mean", r.mean());
    size("s", r.s());
    size("range", r.range());
    size("min", r.min());
    size("max", r.max());
    size("repeatability_4s", r.iso230());
    // Equal readings bound nothing by themselves: no number, rather than a zero.
    size(
        "s_upper95", r.s() == 0 ? Double.POSITIVE_INFINITY : r.bounds(NINETY_FIVE).upperOneSided());
  }

  private void bounds(ScatterBounds b, Optional<BoundsGround> ground) {
    json.key("bounds").beginObject();
    json.key("confidence").value(b.confidence());
    size("lower", b.lower());
    size("upper", b.upper());
    size("upper_one_sided", b.upperOneSided());
    json.key("assume").value("normal, independent readings");
    ground.ifPresent(this::ground);
    json.end();
  }

  /** Too skewed for bounds: what the range says without any shape. */
  private void shapeless(ColumnAnalysis c) {
    int n = c.scatter().readings();
    double confidence = analysis.options().confidence();
    json.key("no_bounds").beginObject();
    json.key("why").value("skewed");
    c.ground().ifPresent(this::ground);
    json.key("share_within_range").value(ShapelessBound.between(n, confidence));
    json.key("share_below_largest").value(ShapelessBound.belowLargest(n, confidence));
    json.end();
  }

  private void ground(BoundsGround g) {
    double level = analysis.options().falseAlarm();
    json.key("skewness").value(g.skewness());
    json.key("lag_1_correlation").value(g.neighbours());
    json.key("not_normal").value(g.isNotNormal(level));
    json.key("not_independent").value(g.isNotIndependent(level));
  }

  private void drift(Drift d) {
    json.key("drift").beginObject();
    json.key("verdict").value(d.verdict().name().toLowerCase(Locale.ROOT));
    json.key("mounts").value(d.line().n());
    size("change", d.change());
    json.key("slope" + unit + "_per_mount").value(d.line().slope());
    json.key("slope_p").value(d.line().p());
    json.key("theil_sen" + unit + "_per_mount").value(d.monotonic().slope());
    json.key("mann_kendall_p").value(d.monotonic().p());
    json.key("von_neumann_ratio").value(d.differences().ratio());
    json.key("von_neumann_p").value(d.differences().p());
    size("s_mount_to_mount", d.differences().sigma());
    json.end();
  }

  private void flagged(ColumnAnalysis c) {
    json.key("flagged").beginArray();
    for (Outliers.Flag f : c.flagged()) {
      json.beginObject();
      json.key("mount").value(analysis.series().cycle(f.index()));
      json.key("line").value(analysis.series().line(f.index()));
      size("value", f.value());
      json.key("statistic").value(f.statistic());
      json.key("limit").value(f.limit());
      c.cause(f)
          .ifPresent(
              slip -> {
                json.key("slip").value(lower(slip.slip()));
                size("meant", slip.meant());
              });
      json.end();
    }
    json.end();
    size("s_without_flagged", c.scatterWithoutFlagged().s());
  }

  private void gauge(GaugeNoise g) {
    json.key("gauge").beginObject();
    size("noise", g.gauge());
    size("step", g.resolution());
    json.key("resolvable").value(g.mount().isPresent());
    g.mount().ifPresent(s -> size("mount_s", s));
    json.end();
  }

  private void temperature(TemperatureRegression t) {
    json.key("temperature").beginObject();
    json.key("slope" + unit + "_per_K").value(t.alone().slope());
    json.key("p").value(t.alone().p());
    json.key("correlation_with_mount").value(t.correlationWithMount());
    json.key("slope_beside_drift" + unit + "_per_K").value(t.jointSlope());
    json.key("p_beside_drift").value(t.jointP());
    json.end();
  }

  private void holders(BetweenHolders b) {
    json.key("between_holders").beginObject();
    size("repeatability_s", b.repeatability());
    size("between_s", b.interchangeability());
    size("overall_s", b.overall());
    size("between_s_upper95", b.interchangeabilityBelow(NINETY_FIVE));
    json.key("p_alike").value(b.chanceThatAlike());
    json.key("p_one_scatter").value(b.chanceOfOneScatter());
    json.key("holders").beginArray();
    for (BetweenHolders.Holder h : b.holders()) {
      json.beginObject();
      json.key("holder").value(h.name());
      json.key("n").value(h.n());
      size("mean", h.mean());
      size("s", h.s());
      json.end();
    }
    json.end();
    json.end();
  }

  private void proof(ColumnAnalysis c) {
    SeriesDecision.OfColumn decided = decision.of(c.column().name());
    json.key("target").beginObject();
    size("s", c.target());
    json.key("verdict").value(lower(decided.word()));
    json.key("missing").beginArray();
    decided.missing().forEach(m -> json.value(lower(m)));
    json.end();
    json.key("further_mounts").value(decided.furtherMounts());
    json.end();
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  /** The ways to count the series that what was seen asks for. */
  private void versions(ColumnAnalysis c) {
    json.key("counted").beginArray();
    for (SeriesVersion v : c.versions()) {
      json.beginObject();
      json.key("way").value(lower(v.way()));
      size("s", v.scatter().s());
      json.key("freedom").value(v.scatter().freedom());
      v.bounds().ifPresent(b -> size("upper_one_sided", b.upperOneSided()));
      v.proof()
          .ifPresent(p -> json.key("within").value(p.verdict() == ProofOfTarget.Verdict.PROVEN));
      json.end();
    }
    json.end();
  }

  private void understood() {
    ReadingForm form = analysis.series().form();
    json.key("understood").beginObject();
    json.key("separator").value(String.valueOf(form.delimiter()));
    json.key("decimal").value(lower(form.mark()));
    json.key("counter").value(form.counter());
    json.key("title_lines").beginArray();
    form.titles().forEach(t -> json.value(t));
    json.end();
    json.key("not_read").beginArray();
    form.passedOver().forEach(json::value);
    form.emptyColumns().forEach(json::value);
    json.end();
    json.key("left_out").beginArray();
    for (ReadingForm.TakenOut t : form.takenOut()) {
      json.beginObject();
      json.key("mount").value(t.mount());
      json.key("line").value(t.line());
      json.key("why").value(lower(t.why()));
      json.end();
    }
    json.end();
    json.end();
  }

  private void offsets(List<OffsetTable> tables) {
    for (OffsetTable table : tables) {
      json.key("offsets").beginObject();
      json.key("reference").value(table.reference());
      json.key("confidence").value(table.confidence());
      json.key("date").value(table.conditions().date());
      if (table.conditions().hasTemperature()) {
        json.key("temperature_K").value(table.conditions().temperature());
      }
      json.key("holders").beginArray();
      table.rows().forEach(row -> row(table, row));
      json.end();
      json.end();
    }
  }

  private void row(OffsetTable table, OffsetTable.Row row) {
    json.beginObject();
    json.key("holder").value(row.holder());
    json.key("mounts").value(row.mounts());
    for (int i = 0; i < row.entries().size(); i++) {
      OffsetTable.AxisRule axis = table.axes().get(i);
      json.key(axis.axis()).beginObject();
      json.key("diameter").value(axis.diameter());
      json.key("sign").value(axis.sign());
      json.key("offset_m").value(row.entries().get(i).offset());
      json.key("uncertainty_m").value(row.entries().get(i).uncertainty());
      json.key("next_mount_m").value(row.entries().get(i).nextMount());
      json.end();
    }
    json.end();
  }

  private void later() {
    if (report.later().isEmpty()) {
      return;
    }
    json.key("later").beginObject();
    json.key("file").value(report.laterFile());
    json.key("columns").beginArray();
    for (ColumnAnalysis c : analysis.columns()) {
      ControlChart chart = report.later().get(c.column().name());
      if (chart != null) {
        unit = ReadingsRemarks.isLength(c) ? "_m" : "_rad";
        json.beginObject();
        json.key("name").value(c.column().name());
        size("centre", chart.mean());
        size("lower_limit", chart.lowerLimit());
        size("upper_limit", chart.upperLimit());
        size("moving_range_limit", chart.movingRangeLimit());
        json.key("signals").beginArray();
        for (ControlChart.Signal s : chart.signals()) {
          if (s.index() >= chart.baseline()) {
            json.beginObject();
            json.key("reading").value(s.index() - chart.baseline() + 1);
            json.key("rule").value(s.rule().name().toLowerCase(Locale.ROOT));
            json.end();
          }
        }
        json.end();
        json.end();
      }
    }
    json.end();
    json.end();
  }
}
