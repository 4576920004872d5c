package reseat.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.contact.ContactLimits;
import reseat.design.Acceptance;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.elementary.Elementary;
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

  /** Room of what holds or is open whatever its figure says. */
  private static final double STEP = 1e-9;

  /** Ratio to which an end is found. */
  private static final double CLOSE = 5e-4;

  private final CouplingDesign design;
  private final CouplingModel model;
  private final List<ContactLimits> limits;
  private final Depth depth;
  private final Vec3 ratio;
  private final boolean doubtCounts;
  private final List<Acceptance> accepted;
  private final Map<Double, Optional<StandingCoupling>> seen = new HashMap<>();
  private List<OrderedCheck> checks = OrderedCheck.thatJudge();

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
    PreloadSearch search = new PreloadSearch(coupling);
    Optional<AllowedPreload> most = search.withoutSlide();
    return most.isPresent() && search.slidesHomeAt(most.get()) ? most : search.found();
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

  /**
   * The band without the slide home, which takes long to look at and hardly depends on the size of
   * the preloads.
   */
  private Optional<AllowedPreload> withoutSlide() {
    List<OrderedCheck> others = new ArrayList<>(OrderedCheck.thatJudge());
    others.remove(OrderedCheck.SELF_SEATING);
    checks = others;
    Optional<AllowedPreload> most = found();
    checks = OrderedCheck.thatJudge();
    return most;
  }

  /** Whether the slide home is open at neither end of a band nor in its middle. */
  private boolean slidesHomeAt(AllowedPreload band) {
    double least = Math.max(band.least().force() / band.nominal(), SMALLEST);
    double most = Math.min(band.most().force() / band.nominal(), 1 / SMALLEST);
    for (double scale : new double[] {least, Math.sqrt(least * most), most}) {
      Optional<StandingCoupling> coupling = standing(scale);
      if (coupling.isEmpty()) {
        return false;
      }
      for (Finding f : accepted(OrderedCheck.SELF_SEATING, coupling.get())) {
        if (f.judged() == Judged.FAILS || f.judged() == Judged.DECIDE) {
          return false;
        }
      }
    }
    return true;
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
    return Elementary.pow(SMALLEST, -step / (STEPS / 2.0));
  }

  private AllowedPreload.End end(int from, int way, boolean failures, double nominal) {
    int step = from;
    int stride = 1;
    int next = from + way;
    Judgement beyond = null;
    while (Math.abs(next) <= STEPS / 2) {
      beyond = at(scale(next), failures);
      if (open(beyond, failures)) {
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
    while (true) {
      Finding binds = beyond.open().orElseThrow();
      double[] ends = root(good, bad, binds, failures);
      Judgement j = at(ends[0], failures);
      if (ends[0] == good || !open(j, failures)) {
        Finding told = at(ends[1], failures).open().orElse(binds);
        return new AllowedPreload.End(
            ends[0] * nominal, told.check().words(), told.subject().name());
      }
      beyond = j; // another check is broken before this one
      bad = ends[0];
    }
  }

  private static boolean open(Judgement j, boolean failures) {
    return failures ? j.fails() : !j.holds();
  }

  /** Where one check begins to be broken: the last scale at which it is not, and the next. */
  private double[] root(double inside, double outside, Finding binds, boolean failures) {
    double good = inside;
    double bad = outside;
    double above = Math.max(STEP, margin(good, binds, failures));
    double below = binds.margin() < 0 ? binds.margin() : -above;
    int side = 0;
    while (Math.abs(bad / good - 1) > CLOSE) {
      double wide = Elementary.log(bad / good);
      // a judgement that turns without its figure reaching the limit is halved in on
      boolean turns = above <= STEP || below >= -STEP;
      double part = (turns ? 0.5 : above / (above - below)) * wide;
      // not so near to an end that the other hardly moves
      double least = Math.min(0.5, 0.6 * CLOSE / Math.abs(wide));
      double t = Math.min(1 - least, Math.max(least, part / wide));
      double x = good * Elementary.exp(t * wide);
      double m = margin(x, binds, failures);
      if (m >= 0) {
        good = x;
        above = Math.max(STEP, m);
        below = side > 0 ? below / 2 : below;
        side = 1;
      } else {
        bad = x;
        below = m;
        above = side < 0 ? above / 2 : above;
        side = -1;
      }
    }
    return new double[] {good, bad};
  }

  /** Room that one check leaves at a scale; negative where it is broken. */
  private double margin(double scale, Finding binds, boolean failures) {
    try {
      Optional<StandingCoupling> coupling = standing(scale);
      if (coupling.isEmpty()) {
        return -1;
      }
      double least = 1;
      for (OrderedCheck check : OrderedCheck.thatJudge()) {
        if (check.finds(binds.check())) {
          for (Finding f : accepted(check, coupling.get())) {
            if (f.check() == binds.check() && f.judged() != Judged.ADVICE) {
              boolean open =
                  f.judged() == Judged.FAILS || (!failures && f.judged() == Judged.DECIDE);
              double room = open ? Math.min(f.margin(), -STEP) : Math.max(f.margin(), STEP);
              least = Math.min(least, room);
            }
          }
        }
      }
      return least;
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return -1;
    }
  }

  private Optional<StandingCoupling> standing(double scale) {
    Optional<StandingCoupling> known = seen.get(scale);
    if (known == null) {
      known = loaded(scale);
      seen.put(scale, known);
    }
    return known;
  }

  private Optional<StandingCoupling> loaded(double scale) {
    List<Preload> scaled = new ArrayList<>();
    for (Preload p : design.preloads()) {
      scaled.add(p.withForce(scale * p.force()));
    }
    CouplingDesign member = design.toBuilder().preloads(scaled).build();
    Equilibrium standing = model.withLoadsOf(member).standing();
    return LiftOffCheck.atRest(standing).isEmpty()
        ? Optional.of(new StandingCoupling(standing, e -> limits, false, depth))
        : Optional.empty();
  }

  private List<Finding> accepted(OrderedCheck check, StandingCoupling coupling) {
    return AcceptedDecisions.over(of(check, coupling), accepted, List.of());
  }

  /**
   * Judges a size of the preloads.
   *
   * @param failures whether only a failure counts, so that what is to be decided is passed over
   */
  private Judgement at(double scale, boolean failures) {
    try {
      Optional<StandingCoupling> coupling = standing(scale);
      if (coupling.isEmpty()) {
        return new Judgement(Optional.of(doesNotStand()));
      }
      for (OrderedCheck check : checks) {
        for (Finding f : accepted(check, coupling.get())) {
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
