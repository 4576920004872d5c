package reseat.report.ballmount;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.AdjustingScrews;
import reseat.ballmount.BondJoint;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.IndexedSlotting;
import reseat.ballmount.LockNut;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.StudCompliance;
import reseat.ballmount.ThreadComparison;
import reseat.ballmount.ThreadStrength;
import reseat.design.AdjustmentTask;
import reseat.design.BallMountDesign;
import reseat.design.StudThread;
import reseat.report.check.FindingsJson;
import reseat.report.form.JsonWriter;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.study.BallMountResult;

/** One ball mount for programs: SI units, each unit at the end of its key. */
public final class BallMountJson {

  private final BallMountResult result;
  private final BallMountDesign design;
  private final JsonWriter json = new JsonWriter();

  private BallMountJson(BallMountResult result) {
    this.result = result;
    this.design = result.design();
  }

  /**
   * Tells a result.
   *
   * @param result everything about a mount
   * @return JSON text; tables that the file leaves out are missing
   */
  public static String of(BallMountResult result) {
    return new BallMountJson(result).text();
  }

  private String text() {
    json.beginDocument();
    json.key("title").value(design.title());
    FindingsJson.verdict(json, result.findings());
    stud();
    design.mount().bond().ifPresent(this::bond);
    design.mount().thread().ifPresent(this::thread);
    result.lockNut().ifPresent(this::lockNut);
    result.pivot().ifPresent(this::pivot);
    design.adjustment().ifPresent(this::adjusting);
    FindingsJson.write(json, result.findings());
    return json.end().finish();
  }

  private void stud() {
    StudCompliance c = result.compliance();
    json.key("stud").beginObject();
    json.key("axial_compliance_m_per_N").value(c.axial());
    json.key("lateral_compliance_m_per_N").value(c.lateral());
    json.key("coupling_compliance_rad_per_N").value(c.coupling());
    json.key("tilt_compliance_rad_per_Nm").value(c.tilt());
    json.key("torsion_compliance_rad_per_Nm").value(c.torsion());
    json.key("axial_stiffness_N_per_m").value(c.axialStiffness());
    json.key("lateral_stiffness_N_per_m").value(c.lateralStiffness());
    json.key("neck_stress_sustained_Pa")
        .value(
            design
                .mount()
                .stud()
                .neckStress(design.sustained().pull(), design.sustained().lateral()));
    json.key("neck_stress_peak_Pa")
        .value(design.mount().stud().neckStress(design.peak().pull(), design.peak().lateral()));
    json.end();
  }

  private void bond(BondJoint b) {
    json.key("bond").beginObject();
    json.key("use_sustained").value(b.use(design.sustained(), true));
    json.key("use_peak").value(b.use(design.peak(), false));
    json.key("test_strength_N").value(b.testStrength());
    json.key("axial_stiffness_N_per_m").value(b.axialStiffness());
    json.key("lateral_stiffness_N_per_m").value(b.lateralStiffness());
    json.key("cure_movement_m").value(b.cureMovement());
    json.key("cautions").beginArray();
    b.cautions(design.sustained(), design.peak())
        .forEach(c -> json.value(c.name().toLowerCase(Locale.ROOT)));
    json.end();
    json.end();
  }

  private void thread(StudThread t) {
    ScrewThread thread = t.limits().thread();
    json.key("thread").beginObject();
    json.key("designation").value(thread.designation());
    json.key("pitch_m").value(thread.pitch());
    json.key("travel_per_degree_m").value(thread.travelPerDegree());
    json.key("travel_per_clock_minute_m").value(thread.travelPerClockMinute());
    json.key("stress_area_m2").value(thread.stressArea());
    json.key("self_locking_above_friction").value(thread.selfLockingFriction());
    json.key("self_locking").value(thread.selfLocking(t.friction()));
    json.key("axial_play_min_m").value(t.limits().axialPlayMin());
    json.key("axial_play_max_m").value(t.limits().axialPlayMax());
    json.key("unlocked_tilt_rad").value(t.limits().unlockedTilt(t.engagement()));
    json.key("force_N").value(result.threadForce());
    result.strength().ifPresent(this::strength);
    result.comparison().ifPresent(this::comparison);
    json.end();
  }

  private void strength(ThreadStrength s) {
    json.key("screw_shear_area_m2").value(s.screwShearArea());
    json.key("nut_shear_area_m2").value(s.nutShearArea());
    json.key("screw_stripping_load_N").value(s.screwStrippingLoad());
    json.key("nut_stripping_load_N").value(s.nutStrippingLoad());
    json.key("tensile_load_N").value(s.tensileLoad());
    json.key("weakest").value(s.weakest().name().toLowerCase(Locale.ROOT));
    json.key("capacity_N").value(s.capacity());
    json.key("engagement_needed_m").value(s.engagementSoScrewBreaks());
    json.key("flank_pressure_Pa").value(s.flankPressure(result.threadForce()));
  }

  private void comparison(ThreadComparison c) {
    json.key("comparison").beginObject();
    json.key("first").value(c.first().designation());
    json.key("second").value(c.second().designation());
    json.key("load_N").value(c.duty().axialForce());
    json.key("quantities").beginArray();
    for (Map.Entry<ThreadComparison.Quantity, Double> e : c.firstValues().entrySet()) {
      json.beginObject();
      json.key("quantity").value(e.getKey().name().toLowerCase(Locale.ROOT));
      json.key("first").value(e.getValue());
      json.key("second").value(c.secondValues().get(e.getKey()));
      json.key("advantage_of_first").value(c.advantageOfFirst(e.getKey()));
      json.end();
    }
    json.end();
    json.end();
  }

  private void lockNut(LockNut n) {
    json.key("lock_nut").beginObject();
    json.key("torque_Nm").value(n.tighteningTorque());
    json.key("clamp_force_N").value(n.clampForce());
    json.key("takes_up_play").value(n.takesUpPlay());
    json.key("shift_min_m").value(n.shiftMin());
    json.key("shift_max_m").value(n.shiftMax());
    json.key("shift_expected_m").value(n.shiftExpected());
    json.key("stretch_m").value(n.stretch());
    json.end();
  }

  private void pivot(BallMountResult.PivotState p) {
    json.key("seat").beginObject();
    json.key("force_N").value(p.force());
    json.key("contact_force_N").value(p.duty().seat().contactForce(p.force()));
    json.key("peak_pressure_Pa").value(p.duty().seat().peakPressure(p.force()));
    json.key("friction").value(p.duty().friction());
    json.key("over_determined").value(p.duty().seat().overDetermined());
    matrix("stiffness_sliding", p.sliding());
    matrix("stiffness_sticking", p.sticking());
    json.key("friction_moment_seat_axis_Nm").value(p.friction().momentAboutSeatAxis());
    json.key("friction_moment_x_Nm").value(p.friction().momentAbout(Vec3.X));
    json.key("friction_moment_y_Nm").value(p.friction().momentAbout(Vec3.Y));
    json.key("friction_moment_tilt_Nm").value(p.friction().greatestTransverseMoment());
    p.duty().slotting().ifPresent(this::slotting);
    json.end();
    p.pad().ifPresent(this::pad);
  }

  private void slotting(IndexedSlotting s) {
    json.key("slotting").beginArray();
    for (IndexedSlotting.Source source : IndexedSlotting.Source.values()) {
      IndexedSlotting.Effect e = s.worst(source);
      json.beginObject();
      json.key("source").value(source.name().toLowerCase(Locale.ROOT));
      json.key("ball_up_m").value(e.up());
      json.key("ball_aside_m").value(e.aside());
      json.key("contact_angle_rad").value(e.contactAngle());
      json.key("contact_force").value(e.force());
      json.end();
    }
    json.end();
  }

  private void matrix(String key, Optional<Matrix6> m) {
    if (m.isEmpty()) {
      json.key(key).none();
      return;
    }
    json.key(key).beginArray();
    for (int i = 0; i < 6; i++) {
      Matrix6 k = m.get();
      json.row(k.get(i, 0), k.get(i, 1), k.get(i, 2), k.get(i, 3), k.get(i, 4), k.get(i, 5));
    }
    json.end();
  }

  private void pad(FluidFilmPad pad) {
    json.key("film_pad").beginObject();
    json.key("held_tilt_rad").value(pad.heldTilt());
    json.key("tilt_allowed_rad").value(design.targets().tilt());
    json.key("pressure_offset_m").value(pad.pressureOffset());
    json.key("edge_loss").value(pad.edgeLoss());
    json.key("pivot_stiffness_N_per_m").value(pad.pivotStiffness());
    json.key("series_stiffness_N_per_m").value(pad.seriesStiffness());
    json.key("film_share").value(pad.filmShare());
    json.end();
  }

  private void adjusting(AdjustmentTask task) {
    List<AdjustingScrews.Step> steps = result.steps();
    json.key("adjusting").beginArray();
    for (AdjustingScrews.Step s : steps) {
      json.beginObject();
      json.key("screw").value(task.screwNames().get(s.screw() - 1));
      json.key("turn").value(s.turn().name().toLowerCase(Locale.ROOT));
      json.key("degrees").value(s.degrees());
      json.key("clock_minutes").value(s.clockMinutes());
      json.key("rise_m").value(s.rise());
      json.key("readings_after_m")
          .row(s.readingsAfter().stream().mapToDouble(Double::doubleValue).toArray());
      json.end();
    }
    json.end();
  }
}
