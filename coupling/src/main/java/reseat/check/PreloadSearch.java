package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.contact.ContactLimits;
import reseat.design.Acceptance;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;
import reseat.repeatability.ToolChangeOutlook;
import reseat.space.Vec3;

/**
 * The search for the band of preload in which every check holds, tool changes by their closed form.
 *
 * <p>Where tool changes of the design as it stands were simulated, the closed form is tied to them:
 * its half-widths are taken in the ratio found there, and a doubt about seating that they cleared
 * counts no more. What is accepted counts as holding.
 */
final class PreloadSearch {

  /** Scales looked at lie between this and its reciprocal. */
  private static final double SMALLEST = 0.01;

  private static final int STEPS = 80;

  /** Ratio to which an end is found. */
  private static final double CLOSE = 2e-4;

  private final CouplingDesign design;
  private final CouplingModel model;
  private final List<ContactLimits> limits;
  private final Depth depth;
  private final Vec3 ratio;
  private final boolean doubtCounts;
  private final List<Acceptance> accepted;

  private PreloadSearch(StandingCoupling coupling) {
    design = coupling.design();
    model = coupling.standing().model();
    limits = coupling.limits();
    ToolChangeOutlook outlook = coupling.toolChanges();
    boolean asked = outlook.road() != ToolChangeOutlook.Road.NOT_ASKED;
    depth = asked ? Depth.CLOSED_FORM : Depth.STATICS;
    ratio = outlook.overClosedForm(design.targets().coverage());
    boolean open = false;
    for (Finding f : RepeatabilityCheck.of(design, outlook)) {
      open |= f.check() == CheckKind.TOOL_CHANGE_SEATING && f.judged() == Judged.FAILS;
    }
    doubtCounts = open;
    accepted = coupling.accepted();
  }

  /** How one size of the preloads is judged: the worst of what does not hold, if anything. */
  private record Judgement(Optional<Finding> open) {

    boolean holds() {
      return open.isEmpty();
    }

    boolean fails() {
      return open.isPresent() && open.get().judged() == Judged.FAILS;
    }
  }

  /**
   * Finds the band nearest to the preload as designed.
   *
   * @param coupling the coupling at rest
   * @return the band; empty without a preload, or if no size of the preloads makes every check hold
   */
  static Optional<AllowedPreload> of(StandingCoupling coupling) {
    if (coupling.design().preloads().isEmpty()) {
      return Optional.empty();
    }
    return new PreloadSearch(coupling).found();
  }

  /** Whether every check holds at both ends of what the preloads scatter by. */
  static boolean coversScatter(StandingCoupling coupling) {
    PreloadSearch search = new PreloadSearch(coupling);
    double scatter = 0;
    for (Preload p : coupling.design().preloads()) {
      if (p.modelled().isPresent()) {
        scatter =
            Math.max(
                scatter,
                p.modelled().get().scatter().halfRange()
                    + p.modelled().get().accuracy().halfRange());
      }
    }
    return scatter < 1
        && search.at(1 - scatter, false).holds()
        && search.at(1 + scatter, false).holds();
  }

  private Optional<AllowedPreload> found() {
    int start = -1;
    for (int i = 0; i <= STEPS && start < 0; i++) {
      // 0, 1, -1, 2, -2 ... steps away from the design
      int step = i % 2 == 0 ? -i / 2 : (i + 1) / 2;
      if (at(scale(step), false).holds()) {
        start = step + STEPS / 2;
      }
    }
    if (start < 0) {
      return Optional.empty();
    }
    double nominal = 0;
    for (Preload p : design.preloads()) {
      nominal += p.force();
    }
    AllowedPreload.End least = end(start - STEPS / 2, -1, false, nominal);
    AllowedPreload.End most = end(start - STEPS / 2, 1, false, nominal);
    return Optional.of(
        new AllowedPreload(
            nominal,
            least,
            most,
            outer(least, start - STEPS / 2, -1, nominal),
            outer(most, start - STEPS / 2, 1, nominal),
            AllowedPreload.scatter(design)));
  }

  /** Where failures begin: at the end itself, unless only a decision is wanted there. */
  private AllowedPreload.End outer(AllowedPreload.End end, int start, int way, double nominal) {
    if (end.check().isEmpty()) {
      return end;
    }
    double beyond = end.force() / nominal * (1 + 2 * way * CLOSE);
    return at(beyond, true).fails() ? end : end(start, way, true, nominal);
  }

  private static double scale(int step) {
    return Math.pow(SMALLEST, -step / (STEPS / 2.0));
  }

  private AllowedPreload.End end(int from, int way, boolean failures, double nominal) {
    int step = from;
    int stride = 1;
    int next = from + way;
    Judgement beyond = null;
    while (Math.abs(next) <= STEPS / 2) {
      beyond = at(scale(next), failures);
      if (failures ? beyond.fails() : !beyond.holds()) {
        break;
      }
      beyond = null;
      step = next;
      stride = 2 * stride;
      next = step + way * Math.min(stride, Math.max(1, STEPS / 2 - Math.abs(step)));
    }
    if (beyond == null) {
      return new AllowedPreload.End(way < 0 ? 0 : Double.POSITIVE_INFINITY, "", "");
    }
    double good = scale(step);
    double bad = scale(next);
    Finding binds = beyond.open().orElseThrow();
    while (Math.abs(bad / good - 1) > CLOSE) {
      double middle = Math.sqrt(good * bad);
      Judgement j = at(middle, failures);
      if (failures ? j.fails() : !j.holds()) {
        bad = middle;
        binds = j.open().orElseThrow();
      } else {
        good = middle;
      }
    }
    return new AllowedPreload.End(
        good * nominal, binds.check().words(), binds.subject().name());
  }

  /**
   * Judges a size of the preloads.
   *
   * @param failures whether only a failure counts, so that what is to be decided is passed over
   */
  private Judgement at(double scale, boolean failures) {
    List<Preload> scaled = new ArrayList<>();
    for (Preload p : design.preloads()) {
      scaled.add(p.withForce(scale * p.force()));
    }
    try {
      CouplingDesign member = design.toBuilder().preloads(scaled).build();
      Equilibrium standing = model.withLoadsOf(member).standing();
      List<Finding> atRest = LiftOffCheck.atRest(standing);
      if (!atRest.isEmpty()) {
        return new Judgement(Optional.of(atRest.get(0)));
      }
      StandingCoupling coupling = new StandingCoupling(standing, e -> limits, false, depth);
      for (OrderedCheck check : OrderedCheck.thatCanFail()) {
        for (Finding f : AcceptedDecisions.over(of(check, coupling), accepted, List.of())) {
          if (f.judged() == Judged.FAILS || (!failures && f.judged() == Judged.DECIDE)) {
            return new Judgement(Optional.of(f));
          }
        }
      }
      return new Judgement(Optional.empty());
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return new Judgement(Optional.of(doesNotStand()));
    }
  }

  private List<Finding> of(OrderedCheck check, StandingCoupling coupling) {
    if (check == OrderedCheck.PRELOAD_DEVICE) {
      return List.of();
    }
    if (check != OrderedCheck.REPEATABILITY) {
      return check.of(coupling);
    }
    List<Finding> counted = new ArrayList<>();
    ToolChangeOutlook closed = coupling.toolChanges().inProportion(ratio);
    for (Finding f : RepeatabilityCheck.of(coupling.design(), closed)) {
      if (doubtCounts || f.said().key() != Said.SEATING_NOT_LOOKED_AT) {
        counted.add(f);
      }
    }
    return counted;
  }

  private static Finding doesNotStand() {
    return new Finding(
        CheckKind.LIFT_OFF,
        Judged.FAILS,
        Subject.COUPLING,
        0,
        1,
        Finding.Sense.AT_LEAST,
        LimitBasis.MECHANICS,
        Measure.FACTOR,
        Statement.NOTHING,
        Statement.NOTHING);
  }
}
