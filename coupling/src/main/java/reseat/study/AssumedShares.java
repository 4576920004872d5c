package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.check.Argument;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.LimitBasis;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Subject;
import reseat.design.AssumedValue;
import reseat.design.BallMounting;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.design.Friction;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.design.Targets;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;
import reseat.equilibrium.PointStiffness;
import reseat.remount.Cause;
import reseat.repeatability.LinearScatter;
import reseat.space.Vec3;

/**
 * How much of the deciding figures rests on what a design file does not state. The deciding figures
 * are the scatter of the tool point, its stiffness, the preload in the contacts, peak pressure, and
 * friction against the limit of seating.
 *
 * <p>Of an amount by which tool changes differ it is the share that its cause has of the variance
 * of the tool point, along the worst axis with a target (all axes if there is none), from the
 * closed form. Of any other value it is the part by which a figure changes if the value is wrong by
 * its usual uncertainty (judgement, no source): friction by its whole range; a ball taken as rigid
 * by a mounting as soft as the softest contact of the ball, which is what a stud usually is; a
 * modulus of the catalog by 3 %, of which the stiffness of a contact changes by two thirds (Hertz);
 * accuracy of a device by itself; coverage by that of 99.7 %, if the file has a target; gravity by
 * the weight beside the preloads. A default limit carries no share: the limit tells its source.
 */
public final class AssumedShares {

  /** Share above which an assumption asks for a decision where a strict verdict is wanted. */
  public static final double MUCH = 0.1;

  private static final double MODULUS = 0.03;
  private static final Coverage ALMOST_ALL = Coverage.of(0.997);

  private final SeatedCheck check;
  private final CouplingDesign design;
  private final Optional<LinearScatter> linear;
  private double rigid = -1;

  private AssumedShares(SeatedCheck check) {
    this.check = check;
    design = check.design();
    linear =
        check.toolChanges().linear().isPresent()
            ? check.toolChanges().linear()
            : LinearScatter.of(check.standing());
  }

  /**
   * Tells what a result rests on.
   *
   * @param result the check
   * @return one entry for each value that is assumed, the largest share first; all shares are 0
   *     where the coupling does not stand
   */
  public static List<AssumedShare> of(CheckResult result) {
    AssumedShares shares = result instanceof SeatedCheck s ? new AssumedShares(s) : null;
    List<AssumedShare> all = new ArrayList<>();
    for (AssumedValue a : result.stated().assumed()) {
      double share = shares == null ? 0 : shares.share(a);
      all.add(new AssumedShare(a, Math.min(1, Math.max(0, share))));
    }
    all.sort((a, b) -> Double.compare(b.share(), a.share()));
    return List.copyOf(all);
  }

  /**
   * Makes the verdict strict: what carries more than a tenth of a deciding figure and is not stated
   * asks for a decision, taken by stating it.
   *
   * @param result the check
   * @return the same with these findings; unchanged if the coupling does not stand
   */
  public static CheckResult strict(CheckResult result) {
    return result instanceof SeatedCheck s ? strict(s) : result;
  }

  /**
   * Makes the verdict strict, as {@link #strict(CheckResult)}.
   *
   * @param s the check
   * @return the same with findings on what is assumed
   */
  public static SeatedCheck strict(SeatedCheck s) {
    List<Finding> findings = new ArrayList<>(s.findings());
    for (AssumedShare a : of(s)) {
      if (a.share() > MUCH) {
        findings.add(finding(a));
      }
    }
    return new SeatedCheck(
        s.stated(),
        s.constraint(),
        s.standing(),
        s.limits(),
        s.frictionless(),
        s.sticking(),
        s.cases(),
        s.weakest(),
        s.preloadLines(),
        s.preloadScatter(),
        s.waysHome(),
        s.toolChanges(),
        s.preload(),
        findings);
  }

  private static Finding finding(AssumedShare a) {
    return new Finding(
        CheckKind.ASSUMPTION,
        Judged.DECIDE,
        new Subject(Subject.Kind.KEY, a.value().key()),
        a.share(),
        MUCH,
        Finding.Sense.AT_MOST,
        LimitBasis.ASSUMED,
        Measure.SHARE,
        Statement.of(
            Said.RESTS_ON,
            a.value().key(),
            a.value().text(),
            a.value().source(),
            Argument.computed(Measure.SHARE, a.share())),
        Statement.of(Said.STATE_IT, a.value().key()));
  }

  private double share(AssumedValue a) {
    String key = a.key().toLowerCase(Locale.ROOT);
    String last = key.substring(key.lastIndexOf('.') + 1);
    return switch (last) {
      case "temperature_scatter", "holder_expansion" -> of(Cause.TEMPERATURE);
      case "friction_scatter" -> of(Cause.FRICTION);
      case "film_scatter" -> of(Cause.FILM);
      case "seating_force" -> of(Cause.APPROACH);
      case "scatter" -> of(Cause.PRELOAD_SIZE);
      case "line_wander", "direction_wander" -> of(Cause.PRELOAD_LINE);
      case "surface", "nominal" -> friction();
      case "mounting", "axial_stiffness", "lateral_stiffness" -> rigid();
      case "material", "body_material" -> 2 * MODULUS / 3;
      case "force_accuracy", "rate_accuracy", "remanence_accuracy" -> a.value();
      case "coverage" -> coverage();
      case "gravity", "centre_of_mass" -> weight();
      default -> 0;
    };
  }

  /** Share of a cause in the variance along the worst axis that counts. */
  private double of(Cause cause) {
    if (linear.isEmpty()) {
      return 0;
    }
    double most = 0;
    for (int k = 0; k < 3; k++) {
      if (counts(k) && linear.get().deviation().component(k) > 0) {
        most = Math.max(most, linear.get().share(cause, k));
      }
    }
    return most;
  }

  private boolean counts(int axis) {
    Targets.AxisLimits t = design.targets().repeatability();
    boolean any =
        Double.isFinite(t.first()) || Double.isFinite(t.second()) || Double.isFinite(t.third());
    return !any || Double.isFinite(t.limit(axis));
  }

  /** Range of the friction beside its upper end, which has to stay below the limit of seating. */
  private double friction() {
    Friction f = design.friction();
    return f.high() > 0 ? (f.high() - f.low()) / f.high() : 0;
  }

  private double weight() {
    double pull = 0;
    for (Preload p : design.preloads()) {
      pull += p.force();
    }
    double weight = design.weight().force().norm();
    return weight + pull > 0 ? weight / (weight + pull) : 0;
  }

  private double coverage() {
    Targets.AxisLimits t = design.targets().repeatability();
    if (linear.isEmpty()) {
      return 0;
    }
    double most = 0;
    for (int k = 0; k < 3; k++) {
      double wide = linear.get().halfWidth(k, ALMOST_ALL);
      if (Double.isFinite(t.limit(k)) && wide > 0) {
        most = Math.max(most, 1 - linear.get().halfWidth(k, design.targets().coverage()) / wide);
      }
    }
    return most;
  }

  /** What the softest axis loses if rigid balls stand as softly as their softest contact. */
  private double rigid() {
    if (rigid < 0) {
      rigid = found();
    }
    return rigid;
  }

  private double found() {
    List<Support> supports = new ArrayList<>();
    for (int b = 0; b < design.supports().size(); b++) {
      Support s = design.supports().get(b);
      double softest = Double.POSITIVE_INFINITY;
      for (Equilibrium.Contact c : check.standing().contacts()) {
        if (c.line().ballIndex() == b) {
          softest = Math.min(softest, c.normalStiffness());
        }
      }
      boolean stands = s.mounting().stud().isEmpty() && softest > 0 && Double.isFinite(softest);
      supports.add(
          stands
              ? s.withMounting(
                  new BallMounting(s.mounting().axis(), 1 / softest, 1 / softest, "supposed"))
              : s);
    }
    try {
      CouplingDesign soft = design.toBuilder().supports(supports).build();
      Equilibrium standing = CouplingModel.of(soft).standing();
      Vec3 now = check.frictionless().toolPoint().alongAxes();
      Vec3 then =
          PointStiffness.alongAxes(
              CouplingStiffness.of(standing, Bound.FRICTIONLESS),
              design.toolPoint(),
              design.axes());
      double most = 0;
      for (int k = 0; k < 3; k++) {
        most = Math.max(most, 1 - then.component(k) / now.component(k));
      }
      return most;
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return 1;
    }
  }
}
