package reseat.cli.report;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxis;
import reseat.numerics.VectorScatter;
import reseat.remount.CauseShares;
import reseat.remount.RemountScatter;
import reseat.remount.SelfSeating;
import reseat.space.Vec3;
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
  private final RemountScatter scatter;

  private RemountJson(RemountStudy study) {
    this.study = study;
    design = study.design();
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
    json.beginObject();
    json.key("title").value(design.title());
    json.key("holds").value(study.holds());
    json.key("mounts").value(scatter.plan().mounts());
    json.key("failed").value(scatter.failed());
    json.key("seed").value(scatter.plan().seed());
    json.key("tool_point").beginObject();
    String[] names = {"x", "y", "z"};
    for (int k = 0; k < 3; k++) {
      json.key(names[k]).beginObject();
      statistics(scatter.inCouplingAxes(), k, "_m");
      json.end();
    }
    json.end();
    covariances("covariance_m2", scatter.inCouplingAxes());
    json.key("machine_axes").beginArray();
    for (int k = 0; k < 3; k++) {
      machineAxis(k);
    }
    json.end();
    along("rotation", scatter.rotation(), "_rad");
    along("after_cut", scatter.afterCut(), "_m");
    along("after_reclamp", scatter.afterReclamp(), "_m");
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
    MachineAxis axis = design.axes().axis(k);
    json.beginObject();
    json.key("name").value(axis.name());
    json.key("direction").value(axis.direction());
    statistics(scatter.toolPoint(), k, "_m");
    json.key("wanted_m").value(design.targets().repeatability().limit(k));
    json.key("holds").value(study.holds(k));
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
