package reseat.report.interchange;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.check.Finding;
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
import reseat.report.check.FindingsJson;
import reseat.report.form.JsonWriter;
import reseat.report.remount.ScatterJson;
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
  private final ScatterJson spread;
  private final InterchangeResult result;
  private final List<Finding> findings;

  private InterchangeJson(InterchangeStudy study, List<Finding> findings) {
    this.study = study;
    this.findings = findings;
    design = study.design();
    spread = new ScatterJson(json, design.axes());
    result = study.simulated();
  }

  /**
   * Writes the result.
   *
   * @param study what came of it
   * @param findings those of the check of the design, and of the holders
   * @return a whole JSON text
   */
  public static String of(InterchangeStudy study, List<Finding> findings) {
    return new InterchangeJson(study, findings).text();
  }

  private String text() {
    json.beginDocument();
    json.key("title").value(design.title());
    FindingsJson.verdict(json, findings);
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
    spread.toolPoint(result.ownInCouplingAxes());
    json.key("machine_axes").beginArray();
    for (int k = 0; k < 3; k++) {
      machineAxis(k);
    }
    json.end();
    spread.along("rotation", result.ownRotation(), "_rad");
    spread.along("post", result.post(), "_m");
    spread.along("against_drawing", result.total(), "_m");
    sensitivities();
    tightening();
    study.advice().ifPresent(this::advice);
    offsets();
    return json.end().finish();
  }

  private void machineAxis(int k) {
    InterchangeScatter s = study.scatter();
    LinearComparison c = result.linear();
    json.beginObject();
    spread.machineAxis(result.own(), k);
    json.key("wanted_m").value(study.wish().within());
    json.key("coverage").value(study.design().targets().coverage().share());
    json.key("half_width_m").value(result.own().covered().component(k));
    json.key("holds").value(study.keepsWithin(k));
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
