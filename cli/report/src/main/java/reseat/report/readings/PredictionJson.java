package reseat.report.readings;

import java.util.List;
import java.util.Locale;
import reseat.readings.MeasuredSeries;
import reseat.readings.PredictionTest;
import reseat.report.form.JsonWriter;
import reseat.study.CauseCalibration;
import reseat.study.CauseCalibration.Amount;
import reseat.study.PredictionStudy;

/** Measured scatter beside the simulated one, as JSON. */
public final class PredictionJson {

  private PredictionJson() {}

  public static void write(JsonWriter json, PredictionStudy study, MeasuredSeries series) {
    json.key("prediction").beginObject();
    json.key("mounts").value(study.mounts());
    tests(json, "axes", study.tests());
    json.key("flagged_mounts").beginArray();
    study.flagged().forEach(i -> json.value(series.cycle(i)));
    json.end();
    tests(json, "axes_without_flagged", study.typical());
    json.key("causes").beginArray();
    study.fit().ifPresent(f -> causes(json, f));
    json.end();
    json.key("simulated_with_fit_s_m").beginArray();
    study.fit().ifPresent(f -> f.simulated().forEach(json::value));
    json.end();
    if (study.fit().isPresent()) {
      json.key("misfit_p").value(study.fit().get().fit().p());
    }
    json.end();
  }

  private static void tests(JsonWriter json, String key, List<PredictionTest> tests) {
    json.key(key).beginArray();
    for (PredictionTest t : tests) {
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
  }

  private static String unit(Amount a) {
    return switch (a.cause()) {
      case FRICTION, PRELOAD -> "";
      case PRELOAD_LINE, DIRT -> "_m";
      case TEMPERATURE, GAUGE, OTHER -> "_k";
    };
  }

  private static void causes(JsonWriter json, CauseCalibration fit) {
    for (Amount s : fit.amounts()) {
      json.beginObject();
      json.key("cause").value(s.cause().name().toLowerCase(Locale.ROOT));
      json.key("assumed" + unit(s)).value(s.assumed());
      json.key("fitted" + unit(s)).value(s.fitted());
      json.key("fitted_low" + unit(s)).value(s.low());
      json.key("fitted_high" + unit(s)).value(s.high());
      json.key("share").value(s.share());
      json.key("separable").value(s.separable());
      json.key("alignment").value(s.alignment());
      json.end();
    }
  }
}
