package reseat.cli.report;

import java.util.Locale;
import reseat.readings.CauseFit;
import reseat.readings.PredictionTest;
import reseat.study.PredictionStudy;

/** Measured scatter beside the simulated one, as JSON. */
final class PredictionJson {

  private PredictionJson() {}

  static void write(JsonWriter json, PredictionStudy study) {
    json.key("prediction").beginObject();
    json.key("mounts").value(study.mounts());
    json.key("axes").beginArray();
    for (PredictionTest t : study.tests()) {
      json.beginObject();
      json.key("axis").value(t.axis());
      json.key("measured_s_m").value(t.measured());
      json.key("predicted_s_m").value(t.predicted());
      json.key("ratio").value(t.ratio());
      json.key("ratio_low").value(t.ratioLow());
      json.key("ratio_high").value(t.ratioHigh());
      json.key("p").value(t.p());
      json.key("verdict").value(t.verdict().name().toLowerCase(Locale.ROOT));
      json.end();
    }
    json.end();
    json.key("causes").beginArray();
    study.fit().ifPresent(f -> causes(json, f));
    json.end();
    json.end();
  }

  private static void causes(JsonWriter json, CauseFit fit) {
    for (CauseFit.Share s : fit.shares()) {
      json.beginObject();
      json.key("cause").value(s.signature().cause().name().toLowerCase(Locale.ROOT));
      json.key("multiplier").value(s.multiplier());
      json.key("multiplier_low").value(s.low());
      json.key("multiplier_high").value(s.high());
      json.key("share").value(s.share());
      json.key("separable").value(s.separable());
      json.end();
    }
  }
}
