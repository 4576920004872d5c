package reseat.report.check;

import java.util.List;
import java.util.Locale;
import reseat.contact.ContactLimits;
import reseat.contact.ContactLimits.Body;
import reseat.contact.Dent;
import reseat.design.MachineAxes;
import reseat.elementary.Elementary;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadScatter;
import reseat.remedy.Counsel;
import reseat.report.form.JsonWriter;
import reseat.seating.SelfSeating;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.study.AssumedShares;
import reseat.study.CheckResult;
import reseat.study.SeatedCheck;
import reseat.study.UnconstrainedCheck;
import reseat.study.UnseatedCheck;

/**
 * A checked design for programs: the keys are the same whatever came of it, in the same order; what
 * does not exist is an empty array or null.
 */
public final class CheckJson {

  private CheckJson() {}

  /**
   * Tells a result.
   *
   * @param result what came of checking a design
   * @param counsel what can be done about it
   * @return JSON text, SI units, each unit at the end of its key
   */
  public static String of(CheckResult result, Counsel counsel) {
    JsonWriter json = new JsonWriter();
    json.beginDocument();
    json.key("title").value(result.design().title());
    FindingsJson.verdict(json, result.findings());
    constraint(json, result.constraint());
    result.accept(
        new CheckResult.Visitor<Void>() {
          @Override
          public Void unconstrained(UnconstrainedCheck unconstrained) {
            json.key("state").value("unconstrained");
            json.key("contacts").beginArray().end();
            nothingMore(json);
            return null;
          }

          @Override
          public Void unseated(UnseatedCheck unseated) {
            json.key("state").value("unseated");
            json.key("contacts").beginArray();
            for (Equilibrium.Contact c : unseated.standing().contacts()) {
              json.beginObject();
              force(json, c);
              json.end();
            }
            json.end();
            nothingMore(json);
            return null;
          }

          @Override
          public Void seated(SeatedCheck seated) {
            json.key("state").value("seated");
            json.key("contacts");
            contacts(json, seated.standing().contacts(), seated.limits());
            firstMount(json, seated);
            elasticity(json, seated);
            cases(json, seated);
            preload(json, seated);
            json.key("preload_band");
            if (seated.preload().get().isPresent()) {
              PreloadBandText.json(json, seated.preload().get().get());
            } else {
              json.none();
            }
            seating(json, seated.waysHome());
            return null;
          }
        });
    AssumedJson.write(json, AssumedShares.of(result));
    FindingsJson.write(json, result.findings());
    RemedyWords.json(json, counsel.remedies());
    HalvingText.json(json, counsel.halving());
    return json.end().finish();
  }

  private static void constraint(JsonWriter json, ConstraintQuality q) {
    json.key("constraint").beginObject();
    json.key("contacts").value(q.contacts());
    json.key("rank").value(q.rank());
    json.key("condition").value(q.condition());
    json.key("weakest_motion").value(MotionWords.of(q.weakest()));
    json.key("weakest_motion_unique").value(q.weakestUnique());
    json.end();
  }

  private static void nothingMore(JsonWriter json) {
    json.key("first_mount").none();
    json.key("stiffness").none();
    json.key("frequencies_Hz").beginArray().end();
    json.key("frequencies_sticking_Hz").beginArray().end();
    json.key("cases").beginArray().end();
    json.key("weakest_force").none();
    json.key("preload_scatter").beginArray().end();
    json.key("preload_band").none();
    json.key("seating").none();
  }

  private static void force(JsonWriter json, Equilibrium.Contact c) {
    json.key("ball").value(c.line().support());
    json.key("flank").value(c.line().flank());
    json.key("force_N").value(c.force());
  }

  private static void contacts(
      JsonWriter json, List<Equilibrium.Contact> contacts, List<ContactLimits> limits) {
    json.beginArray();
    for (int i = 0; i < contacts.size(); i++) {
      Equilibrium.Contact c = contacts.get(i);
      ContactLimits limit = limits.get(i);
      double force = Math.max(0, c.force());
      Body sheared =
          limit.maxShear(Body.FIRST, force) > limit.maxShear(Body.SECOND, force)
              ? Body.FIRST
              : Body.SECOND;
      json.beginObject();
      force(json, c);
      json.key("approach_m").value(c.approach());
      json.key("semi_major_m").value(c.semiMajor());
      json.key("semi_minor_m").value(c.semiMinor());
      json.key("peak_pressure_Pa").value(c.peakPressure());
      json.key("pressure_limit_Pa")
          .value(
              limit.governing().isEmpty()
                  ? Double.POSITIVE_INFINITY
                  : limit.governing().get().peakPressure());
      json.key("max_shear_Pa").value(limit.maxShear(sheared, force));
      json.key("max_shear_depth_m").value(limit.maxShearDepth(sheared, force));
      json.key("normal_stiffness_N_per_m").value(c.normalStiffness());
      json.key("tangential_stiffness_N_per_m").value(c.tangentialStiffnessLong());
      json.key("tangential_stiffness_short_axis_N_per_m").value(c.tangentialStiffnessShort());
      dent(json, c, limit);
      json.key("contact_angle_deg").value(Elementary.toDegrees(c.angle()));
      json.key("point_m").value(c.line().point());
      json.key("normal").value(c.line().normal());
      json.end();
    }
    json.end();
  }

  /** How far the tool point settles by the dents; null where no contact flows. */
  private static void firstMount(JsonWriter json, SeatedCheck check) {
    json.key("first_mount");
    Vec3 lost = check.standing().settled();
    if (lost.norm() == 0) {
      json.none();
      return;
    }
    json.beginObject();
    json.key("tool_point_settles_m").value(lost);
    json.key("along_axes_m");
    axes(json, check.design().axes(), check.design().axes().of(lost));
    json.end();
  }

  /** What the greatest force ever leaves behind; null where nothing flows. */
  private static void dent(JsonWriter json, Equilibrium.Contact c, ContactLimits limit) {
    double greatest = c.dent().map(Dent::greatestForce).orElse(Math.max(0, c.greatestForce()));
    json.key("surface").value(limit.surface(greatest).name().toLowerCase(Locale.ROOT));
    json.key("dent");
    if (c.dent().isEmpty()) {
      json.none();
      return;
    }
    Dent d = c.dent().get();
    json.beginObject();
    json.key("greatest_force_N").value(d.greatestForce());
    json.key("first_sink_m").value(d.sink());
    json.key("diameter_m").value(d.diameter());
    json.key("depth_m").value(d.depth());
    json.key("lip_m").value(d.lip());
    json.key("mean_pressure_Pa").value(d.meanPressure());
    json.key("stiffness_at_greatest_N_per_m").value(d.stiffness(d.greatestForce()));
    json.key("estimate").value(!d.established());
    json.end();
  }

  private static void elasticity(JsonWriter json, SeatedCheck check) {
    Vec3 at = check.frictionless().toolPoint().point();
    MachineAxes axes = check.design().axes();
    json.key("stiffness").beginObject();
    json.key("frictionless");
    matrix(json, check.frictionless().stiffness().at(at));
    json.key("sticking");
    matrix(json, check.sticking().stiffness().at(at));
    json.key("at").value(at);
    json.key("along_axes_frictionless_N_per_m");
    axes(json, axes, check.frictionless().toolPoint().alongAxes());
    json.key("along_axes_sticking_N_per_m");
    axes(json, axes, check.sticking().toolPoint().alongAxes());
    json.key("principal_frictionless");
    principal(json, check.frictionless().toolPoint());
    json.key("principal_sticking");
    principal(json, check.sticking().toolPoint());
    json.end();
    json.key("frequencies_Hz").row(array(check.frictionless().frequencies().hertz()));
    json.key("frequencies_sticking_Hz").row(array(check.sticking().frequencies().hertz()));
  }

  private static double[] array(List<Double> values) {
    double[] out = new double[values.size()];
    for (int i = 0; i < out.length; i++) {
      out[i] = values.get(i);
    }
    return out;
  }

  private static void matrix(JsonWriter json, Matrix6 m) {
    json.beginArray();
    for (int i = 0; i < 6; i++) {
      json.row(m.get(i, 0), m.get(i, 1), m.get(i, 2), m.get(i, 3), m.get(i, 4), m.get(i, 5));
    }
    json.end();
  }

  private static void axes(JsonWriter json, MachineAxes axes, Vec3 values) {
    json.beginObject();
    for (int i = 0; i < 3; i++) {
      json.key(axes.axis(i).name()).value(values.component(i));
    }
    json.end();
  }

  private static void principal(JsonWriter json, PointStiffness stiffness) {
    json.beginArray();
    for (PointStiffness.Principal p : stiffness.principal()) {
      json.beginObject();
      json.key("stiffness_N_per_m").value(p.stiffness());
      json.key("direction").value(p.direction());
      json.end();
    }
    json.end();
  }

  private static void cases(JsonWriter json, SeatedCheck check) {
    MachineAxes axes = check.design().axes();
    json.key("cases").beginArray();
    for (CaseResponse r : check.cases()) {
      json.beginObject();
      json.key("name").value(r.loadCase().name());
      json.key("must")
          .value(r.loadCase().demand().name().toLowerCase(Locale.ROOT).replace('_', ' '));
      json.key("lift_off_factor").value(r.liftOff().factor());
      json.key("first_to_open").value(r.liftOff().contact());
      json.key("lifts_off").value(r.liftsOff());
      motion(json, axes, r);
      json.key("contacts");
      contacts(json, r.state().contacts(), check.limits());
      json.end();
    }
    json.end();
    json.key("weakest_force").beginObject();
    json.key("force_N").value(check.weakest().force());
    json.key("direction").value(check.weakest().direction());
    json.key("opens").value(check.weakest().contact());
    json.end();
  }

  /** Motion of the tool point; null where the holder lifts off, which is no state of rest. */
  private static void motion(JsonWriter json, MachineAxes axes, CaseResponse r) {
    if (r.liftsOff()) {
      json.key("tool_point_shift_m").none();
      json.key("rotation_rad").none();
      json.key("along_axes_m").none();
    } else {
      json.key("tool_point_shift_m").value(r.motion().shift());
      json.key("rotation_rad").value(r.motion().rotation());
      json.key("along_axes_m");
      axes(json, axes, axes.of(r.motion().shift()));
    }
    json.key("tool_point_shift_sticking_m").value(r.stickingMotion().shift());
    json.key("rotation_sticking_rad").value(r.stickingMotion().rotation());
    json.key("along_axes_sticking_m");
    axes(json, axes, axes.of(r.stickingMotion().shift()));
  }

  private static void preload(JsonWriter json, SeatedCheck check) {
    MachineAxes axes = check.design().axes();
    json.key("preload_scatter").beginArray();
    for (PreloadScatter p : check.preloadScatter()) {
      json.beginObject();
      json.key("preload").value(p.preload().name());
      json.key("half_width").value(p.preload().forceSpread().limit());
      json.key("stronger_shift_m");
      axes(json, axes, axes.of(p.stronger().shift()));
      json.key("weaker_shift_m");
      axes(json, axes, axes.of(p.weaker().shift()));
      json.end();
    }
    json.end();
  }

  private static void seating(JsonWriter json, List<SelfSeating.Path> waysHome) {
    json.key("seating").beginObject();
    json.key("limit_friction").value(waysHome.get(0).limitFriction());
    json.key("limit_friction_at_rest").value(SelfSeating.worstAtRest(waysHome).restFriction());
    json.key("modes").beginArray();
    for (SelfSeating.Path p : waysHome) {
      json.beginObject();
      json.key("last_to_close").value(String.join(", ", p.open()));
      json.key("limit_friction").value(p.limitFriction());
      json.key("limit_friction_at_rest").value(p.restFriction());
      json.key("tip_friction").value(p.tipFriction());
      json.end();
    }
    json.end();
    json.end();
  }
}
