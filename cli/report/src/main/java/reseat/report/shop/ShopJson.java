package reseat.report.shop;

import java.util.Map;
import java.util.OptionalDouble;
import reseat.ballmount.LockNut;
import reseat.design.Preload;
import reseat.making.Clearance;
import reseat.making.GaugeReading;
import reseat.making.HeightSetting;
import reseat.making.PinSpacing;
import reseat.making.TwoGaugeAngle;
import reseat.preload.BenchSetting;
import reseat.readings.AcceptancePlan;
import reseat.report.check.FindingsJson;
import reseat.report.form.JsonWriter;
import reseat.study.ShopStudy;

/** The numbers of the papers for programs: SI units, each unit at the end of its key. */
public final class ShopJson {

  private final ShopStudy study;
  private final JsonWriter json = new JsonWriter();

  private ShopJson(ShopStudy study) {
    this.study = study;
  }

  /**
   * Tells the numbers.
   *
   * @param study everything that the papers tell
   * @param rises wanted rises of balls, m, by name of the support; may be empty
   * @return JSON text
   */
  public static String of(ShopStudy study, Map<String, Double> rises) {
    return new ShopJson(study).text(rises);
  }

  private String text(Map<String, Double> rises) {
    json.beginDocument();
    json.key("title").value(study.design().title());
    FindingsJson.verdict(json, study.check().findings());
    json.key("gauge").beginArray();
    study.readings().forEach(this::reading);
    json.end();
    json.key("angles").beginArray();
    study.angles().forEach(this::angle);
    json.end();
    json.key("pin_spacings").beginArray();
    study.spacings().forEach(this::spacing);
    json.end();
    json.key("heights").beginArray();
    for (HeightSetting h : study.settings()) {
      height(h, rises.getOrDefault(h.support(), 0.0));
    }
    json.end();
    json.key("preloads").beginArray();
    study.design().preloads().forEach(this::preload);
    json.end();
    json.key("clearances").beginArray();
    study.clearances().forEach(this::clearance);
    json.end();
    json.key("catch_range_m").value(study.catchRange());
    json.key("lift_out_m").value(study.liftOut());
    json.key("shift_per_particle").value(study.perParticle());
    json.key("acceptance").beginArray();
    for (AcceptancePlan p : study.acceptance()) {
      json.beginObject();
      json.key("axis").value(p.axis());
      json.key("target_m").value(p.target());
      json.key("expected_m").value(p.expected());
      json.key("mounts").value(p.mounts());
      json.key("pass_limit_m").value(p.passLimit());
      json.key("gauge_limit_m").value(p.gaugeLimit());
      json.end();
    }
    json.end();
    FindingsJson.write(json, study.check().findings());
    return json.end().finish();
  }

  private void reading(GaugeReading r) {
    json.beginObject();
    json.key("support").value(r.support());
    json.key("gauge_m").value(r.gauge());
    json.key("datum").value(r.datum().words());
    json.key("height_m").value(r.overDatum());
    optional("band_m", r.datumBand());
    json.key("over_ball_centre_m").value(r.overBallCentre());
    optional("over_ball_centre_band_m", r.ballBand());
    json.key("per_gauge").value(r.perGauge());
    json.key("per_depth").value(r.perDepth());
    optional("per_mouth", r.perMouth());
    json.key("per_angle_at_depth_m_per_rad").value(r.perAngleAtDepth());
    optional("per_angle_at_mouth_m_per_rad", r.perAngleAtMouth());
    json.key("per_pin_spacing").value(r.perPinSpacing());
    json.key("per_pin_diameter").value(r.perPinDiameter());
    json.end();
  }

  private void optional(String key, OptionalDouble value) {
    json.key(key);
    if (value.isPresent()) {
      json.value(value.getAsDouble());
    } else {
      json.none();
    }
  }

  private void angle(TwoGaugeAngle a) {
    json.beginObject();
    json.key("support").value(a.support());
    json.key("small_m").value(a.small());
    json.key("large_m").value(a.large());
    json.key("difference_m").value(a.difference());
    json.key("band_m").value(a.band());
    json.key("flank_angle_rad").value(a.flankAngle());
    json.key("per_difference_rad_per_m").value(a.perDifference());
    json.end();
  }

  private void spacing(PinSpacing p) {
    json.beginObject();
    json.key("support").value(p.support());
    json.key("over_m").value(p.over());
    json.key("between_m").value(p.between());
    json.key("band_m").value(p.band());
    json.end();
  }

  private void height(HeightSetting h, double rise) {
    HeightSetting.Turn turn = h.turnFor(rise);
    json.beginObject();
    json.key("support").value(h.support());
    json.key("thread").value(h.thread().limits().thread().designation());
    json.key("travel_per_degree_m").value(h.travelPerDegree());
    optional("lock_nut_torque_Nm", shift(h, LockNut::tighteningTorque));
    optional("lock_shift_m", shift(h, LockNut::shiftExpected));
    optional("lock_shift_uncertainty_m", shift(h, LockNut::shiftUncertainty));
    json.key("tool_point_per_rise").value(h.toolPointPerRise());
    json.key("rise_m").value(rise);
    json.key("clockwise").value(turn.clockwise());
    json.key("degrees").value(turn.degrees());
    json.key("clock_minutes").value(turn.clockMinutes());
    json.end();
  }

  private static OptionalDouble shift(
      HeightSetting h, java.util.function.ToDoubleFunction<LockNut> of) {
    return h.lockNut().isPresent()
        ? OptionalDouble.of(of.applyAsDouble(h.lockNut().get()))
        : OptionalDouble.empty();
  }

  private void preload(Preload p) {
    json.beginObject();
    json.key("name").value(p.name());
    json.key("force_N").value(p.force());
    BenchSetting setting = p.modelled().flatMap(d -> d.settingFor(d.nominalForce())).orElse(null);
    json.key("setting");
    if (setting == null) {
      json.none();
    } else {
      json.beginObject();
      json.key("quantity").value(setting.kind().label());
      json.key("unit").value(setting.kind().unit());
      json.key("value").value(setting.value());
      json.end();
    }
    if (study.allowed().isPresent()) {
      json.key("least_N").value(study.allowed().get().scales().least() * p.force());
      json.key("most_N").value(study.allowed().get().scales().most() * p.force());
    } else {
      json.key("least_N").none();
      json.key("most_N").none();
    }
    json.end();
  }

  private void clearance(Clearance c) {
    json.beginObject();
    json.key("what").value(c.place().name());
    json.key("at_m").value(c.place().at());
    json.key("across");
    if (c.place().across().isPresent()) {
      json.value(c.place().across().get());
    } else {
      json.none();
    }
    room("rest", c.rest());
    room("loads", c.loads());
    room("scatter", c.scatter());
    room("tolerances", c.tolerances());
    json.key("least_gap_m").value(c.leastGap());
    optional("drawn_gap_m", c.place().gap());
    json.key("holds").value(c.holds());
    json.end();
  }

  private void room(String key, Clearance.Room room) {
    json.key(key + "_sideways_m").value(room.sideways());
    json.key(key + "_along_m").value(room.along());
    json.key(key + "_across_m").value(room.across());
  }
}
