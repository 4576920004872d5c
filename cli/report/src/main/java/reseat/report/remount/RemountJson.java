package reseat.report.remount;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.remount.CauseShares;
import reseat.remount.RemountScatter;
import reseat.report.check.FindingsJson;
import reseat.report.form.JsonWriter;
import reseat.seating.SelfSeating;
import reseat.study.RemountStudy;

/**
 * Simulated tool changes for programs: SI units, the unit at the end of each key.
 *
 * <p>{@code tool_point} runs along x, y, z of the coupling frame; {@code machine_axes}, {@code
 * rotation}, {@code causes} and {@code bounds} along the machine's axes in the order of the file.
 */
public final class RemountJson {

  private final JsonWriter json = new JsonWriter();
  private final RemountStudy study;
  private final CouplingDesign design;
  private final ScatterJson spread;
  private final RemountScatter scatter;

  private RemountJson(RemountStudy study) {
    this.study = study;
    design = study.design();
    spread = new ScatterJson(json, design.axes());
    scatter = study.scatter();
  }

  /**
   * Writes the result.
   *
   * @param study what came of the simulation
   * @return a whole JSON text
   */
  public static String of(RemountStudy study) {
    return new RemountJson(study).text();
  }

  private String text() {
    json.beginDocument();
    json.key("title").value(design.title());
    FindingsJson.verdict(json, study.check().findings());
    json.key("mounts").value(scatter.plan().mounts());
    json.key("failed").value(scatter.failed());
    json.key("seed").value(scatter.plan().seed());
    spread.toolPoint(scatter.inCouplingAxes());
    json.key("machine_axes").beginArray();
    for (int k = 0; k < 3; k++) {
      machineAxis(k);
    }
    json.end();
    spread.along("rotation", scatter.rotation(), "_rad");
    spread.along("after_cut", scatter.afterCut(), "_m");
    spread.along("after_reclamp", scatter.afterReclamp(), "_m");
    causes();
    seating();
    failures();
    json.key("bounds").beginObject();
    json.key("friction_over_normal_stiffness_m").value(study.bound().perContact());
    json.key("full_slip_m").value(study.bound().fullSlip());
    json.key("tool_point_m").value(study.bound().toolPoint());
    json.end();
    return json.end().finish();
  }

  private void machineAxis(int k) {
    json.beginObject();
    spread.machineAxis(scatter.toolPoint(), k);
    json.key("wanted_m").value(design.targets().repeatability().limit(k));
    json.key("coverage").value(design.targets().coverage().share());
    json.key("half_width_m").value(scatter.toolPoint().covered().component(k));
    json.end();
  }

  private void causes() {
    json.key("causes").beginArray();
    if (study.causes().isPresent()) {
      for (CauseShares.Share s : study.causes().get().causes()) {
        json.beginObject();
        json.key("cause").value(s.cause().words());
        json.key("sd_alone_m").value(s.alone());
        json.key("share_first").value(s.first());
        json.key("share_total").value(s.total());
        json.end();
      }
    }
    json.end();
    if (study.causes().isPresent()) {
      CauseShares c = study.causes().get();
      json.key("interaction").beginObject();
      json.key("share").value(c.interaction());
      json.key("standard_error").value(c.interactionError());
      json.key("mounts_per_set").value(c.mounts());
      json.key("left_out").value(c.dropped());
      json.end();
    }
  }

  private void seating() {
    json.key("seating").beginObject();
    json.key("friction").beginObject();
    json.key("low").value(design.friction().low());
    json.key("nominal").value(design.friction().nominal());
    json.key("high").value(design.friction().high());
    json.key("source").value(design.friction().source());
    json.end();
    ways("by_seating_force", study.byHand());
    ways("by_preload", study.byPreload());
    json.end();
  }

  private void ways(String key, RemountStudy.Ways ways) {
    json.key(key).beginObject();
    json.key("one_open").beginArray();
    for (SelfSeating.Path p : ways.oneOpen()) {
      path(p);
    }
    json.end();
    json.key("worst_two_open");
    path(ways.worstTwoOpen());
    json.key("worst_three_open");
    path(ways.worstThreeOpen());
    json.end();
  }

  private void path(SelfSeating.Path p) {
    json.beginObject();
    json.key("open").beginArray();
    p.open().forEach(json::value);
    json.end();
    json.key("last_seat").value(p.lastSeat());
    json.key("limit_friction").value(limit(p.limitFriction()));
    json.key("limit_friction_at_rest").value(limit(p.restFriction()));
    json.key("tip_friction").value(limit(p.tipFriction()));
    json.end();
  }

  /** No limit below the greatest friction looked at is written as none. */
  private static double limit(double friction) {
    return friction >= SelfSeating.GREATEST ? Double.POSITIVE_INFINITY : friction;
  }

  private void failures() {
    json.key("failures").beginArray();
    List<RemountScatter.Failure> failures = scatter.failures();
    for (RemountScatter.Failure f : failures) {
      json.beginObject();
      json.key("count").value(f.count());
      json.key("contact").value(f.contact());
      json.key("message").value("the holder " + f.words());
      json.end();
    }
    json.end();
  }
}
