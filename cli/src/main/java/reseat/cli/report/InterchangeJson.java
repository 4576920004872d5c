package reseat.cli.report;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.interchange.Contributor;
import reseat.interchange.Fit;
import reseat.interchange.InterchangeResult;
import reseat.interchange.InterchangeScatter;
import reseat.interchange.LinearComparison;
import reseat.interchange.LinearStack;
import reseat.interchange.OffsetPrediction;
import reseat.interchange.Owner;
import reseat.interchange.Sensitivity;
import reseat.interchange.TighteningGain;
import reseat.interchange.ToleranceAdvice;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;
import reseat.study.InterchangeStudy;

/**
 * Several holders on one post for programs: SI units, the unit at the end of each key.
 *
 * <p>{@code tool_point} runs along x, y, z of the coupling frame; everything else along the
 * machine's axes in the order of the file. Both tell holders against a perfect holder on the same
 * post.
 */
public final class InterchangeJson {

  private final JsonWriter json = new JsonWriter();
  private final InterchangeStudy study;
  private final CouplingDesign design;
  private final InterchangeResult result;

  private InterchangeJson(InterchangeStudy study) {
    this.study = study;
    design = study.design();
    result = study.simulated();
  }

  /**
   * Writes the result.
   *
   * @param study what came of it
   * @return a whole JSON text
   */
  public static String of(InterchangeStudy study) {
    return new InterchangeJson(study).text();
  }

  private String text() {
    json.beginObject();
    json.key("title").value(design.title());
    json.key("holds").value(study.holds());
    json.key("posts").value(result.plan().posts());
    json.key("holders").value(result.plan().holders());
    json.key("seed").value(result.plan().seed());
    json.key("misfits").value(result.misfits());
    json.key("misfit_kinds").beginArray();
    for (Map.Entry<Fit, Long> e : result.fits().entrySet()) {
      if (e.getKey() != Fit.FITS) {
        json.beginObject();
        json.key("count").value(e.getValue());
        json.key("message").value(e.getKey().words());
        json.end();
      }
    }
    json.end();
    json.key("tool_point").beginObject();
    String[] names = {"x", "y", "z"};
    for (int k = 0; k < 3; k++) {
      json.key(names[k]).beginObject();
      statistics(result.ownInCouplingAxes(), k, "_m");
      json.end();
    }
    json.end();
    covariances("covariance_m2", result.ownInCouplingAxes());
    json.key("machine_axes").beginArray();
    for (int k = 0; k < 3; k++) {
      machineAxis(k);
    }
    json.end();
    along("rotation", result.ownRotation(), "_rad");
    along("post", result.post(), "_m");
    along("against_drawing", result.total(), "_m");
    sensitivities();
    tightening();
    study.advice().ifPresent(this::advice);
    offsets();
    return json.end().finish();
  }

  private void statistics(VectorScatter v, int k, String unit) {
    json.key("mean" + unit).value(v.mean().component(k));
    json.key("sd" + unit).value(v.deviation().component(k));
    json.key("range" + unit).value(v.range().component(k));
    json.key("p95" + unit).value(v.band().component(k));
    json.key("least" + unit).value(v.least().component(k));
    json.key("greatest" + unit).value(v.greatest().component(k));
  }

  private void covariances(String key, VectorScatter v) {
    Vec3 s = v.deviation();
    Vec3 c = v.covariances();
    json.key(key).beginArray();
    json.row(s.x() * s.x(), c.x(), c.z());
    json.row(c.x(), s.y() * s.y(), c.y());
    json.row(c.z(), c.y(), s.z() * s.z());
    json.end();
  }

  private void machineAxis(int k) {
    InterchangeScatter s = study.scatter();
    LinearComparison c = result.linear();
    json.beginObject();
    json.key("name").value(design.axes().axis(k).name());
    json.key("direction").value(design.axes().axis(k).direction());
    statistics(result.own(), k, "_m");
    json.key("wanted_m").value(study.wish().within());
    json.key("holds").value(study.holds(k));
    json.key("repeatability_sd_m").value(s.repeatability().component(k));
    json.key("between_holders_sd_m").value(s.withoutTable().component(k));
    json.key("with_offset_table_sd_m").value(s.withTable().component(k));
    json.key("against_drawing_sd_m").value(s.againstDrawing().component(k));
    json.key("linear_sd_m").value(c.linear().component(k));
    json.key("linear_worst_case_m")
        .value(study.stack().sum(LinearStack.BETWEEN_HOLDERS).worstCase().component(k));
    json.key("sd_bound_m").value(c.deviationBound().component(k));
    json.key("mean_bound_m").value(c.meanBound().component(k));
    json.key("linear_differs").value(c.differs(k));
    json.end();
  }

  private void along(String key, VectorScatter v, String unit) {
    json.key(key).beginArray();
    for (int k = 0; k < 3 && v.count() > 0; k++) {
      json.beginObject();
      json.key("axis").value(design.axes().axis(k).name());
      statistics(v, k, unit);
      json.end();
    }
    json.end();
  }

  private static String unit(Contributor c) {
    return switch (c.kind().measure()) {
      case LENGTH -> "m";
      case ANGLE -> "rad";
      case TEMPERATURE -> "K";
    };
  }

  private void sensitivities() {
    Vec3 between = study.stack().sum(LinearStack.BETWEEN_HOLDERS).deviation();
    Vec3 post = study.stack().sum(EnumSet.of(Owner.POST)).deviation();
    json.key("sensitivities").beginArray();
    for (Sensitivity.Effect e : study.stack().sensitivity().effects()) {
      Contributor c = e.contributor();
      json.beginObject();
      json.key("tolerance").value(c.name());
      json.key("kind").value(c.kind().name().toLowerCase(Locale.ROOT));
      json.key("belongs_to").value(c.owner().words());
      json.key("unit").value(unit(c));
      json.key("limit").value(c.spread().limit());
      json.key("shape").value(c.spread().shape().words());
      json.key("shift_m_per_unit").value(e.shiftInMachineAxes());
      json.key("rotation_rad_per_unit").value(design.axes().of(e.rotation()));
      json.key("share_of_variance")
          .value(shares(e.standardShift(), c.owner() == Owner.POST ? post : between));
      json.end();
    }
    json.end();
  }

  private static Vec3 shares(Vec3 part, Vec3 whole) {
    double[] share = new double[3];
    for (int k = 0; k < 3; k++) {
      double ratio = whole.component(k) > 0 ? part.component(k) / whole.component(k) : 0;
      share[k] = ratio * ratio;
    }
    return new Vec3(share[0], share[1], share[2]);
  }

  private void tightening() {
    json.key("tighten_first").beginArray();
    for (int k = 0; k < 3; k++) {
      for (TighteningGain g :
          TighteningGain.ranking(study.stack(), LinearStack.BETWEEN_HOLDERS, k)) {
        if (g.gain() > 0) {
          json.beginObject();
          json.key("axis").value(design.axes().axis(k).name());
          json.key("tolerance").value(g.contributor().name());
          json.key("sd_m").value(g.before());
          json.key("sd_halved_m").value(g.after());
          json.end();
        }
      }
    }
    json.end();
  }

  private void advice(ToleranceAdvice a) {
    json.key("advice").beginObject();
    json.key("feasible").value(a.feasible());
    json.key("cost").value(a.cost());
    json.key("cost_now").value(a.costNow());
    json.key("sd_m").value(a.reached());
    json.key("tolerances").beginArray();
    for (ToleranceAdvice.Line l : a.lines()) {
      json.beginObject();
      json.key("tolerance").value(l.contributor().name());
      json.key("unit").value(unit(l.contributor()));
      json.key("limit").value(l.contributor().spread().limit());
      json.key("enough").value(l.limit());
      json.end();
    }
    json.end();
    json.end();
  }

  private void offsets() {
    json.key("offsets").beginArray();
    for (OffsetPrediction.Offset o : study.offsets()) {
      json.beginObject();
      json.key("holder").value(o.holder());
      json.key("offset_m").value(o.offset());
      json.key("standard_uncertainty_m").value(o.own());
      json.key("common_standard_uncertainty_m").value(o.common());
      json.key("rotation_rad").value(o.rotation());
      json.key("lifted").value(o.lifted());
      json.end();
    }
    json.end();
  }
}
