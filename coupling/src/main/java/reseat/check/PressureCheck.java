package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
import reseat.contact.ContactLimits.Kind;
import reseat.contact.ContactLimits.Limit;
import reseat.contact.Dent;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.material.Material;
import reseat.space.Vec3;

/**
 * What the pressure of a contact leaves behind in the weaker of its two bodies.
 *
 * <p>The pressure at rest and under each load is set against every limit of both bodies. A set is a
 * figure and no crime: beyond first yield, and beyond the static limit of hardened steel, a person
 * decides. It fails where a crack runs, where a wish of the file is missed, or where the contact
 * sinks in like a Brinell ball and a working load digs again at each change or the set is more than
 * the file wants of the tool point. A crack may run beyond its lower bound, which is up for
 * decision, and runs in a polished surface too at {@link reseat.contact.RingCrack#POLISHED} times
 * that force, where it fails.
 */
public final class PressureCheck {

  /** How far from its place a ball may land, m, for the proof force; judgement. */
  private static final double LANDING = 30e-6;

  /** Least proof force over the greatest working one; judgement. */
  private static final double LEAST_PROOF = 1.2;

  private PressureCheck() {}

  /**
   * Judges the pressures.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param limits limits of each contact, ball first, seat second
   * @param share part of a limit of flow that the design may use; above 1 a set is meant
   * @return the worst contact at rest, the worst contact under the load cases, and advice on
   *     materials without known strength
   */
  public static List<Finding> of(
      Equilibrium standing, List<CaseResponse> cases, List<ContactLimits> limits, double share) {
    List<Finding> found = new ArrayList<>();
    Pressed rest = worst(standing, null, limits, share);
    if (rest != null) {
      found.add(finding(standing, rest, limits, share));
    }
    Pressed loaded = null;
    for (CaseResponse r : cases) {
      Pressed pressed = worst(standing, r, limits, share);
      if (pressed != null && (loaded == null || pressed.worseThan(loaded))) {
        loaded = pressed;
      }
    }
    if (loaded != null) {
      found.add(finding(standing, loaded, limits, share));
    }
    List<String> unrated = unrated(limits);
    if (!unrated.isEmpty()) {
      found.add(unrated(String.join(", ", unrated), unrated.size()));
    }
    return found;
  }

  /**
   * One contact in one state against one of its limits.
   *
   * @param loaded the load case; null at rest
   * @param contact index of the contact
   * @param pressure its peak pressure, Pa
   * @param limit the limit
   * @param allowed pressure that nobody need decide about, Pa
   * @param judged how it is judged
   * @param basis by whose judgement
   */
  private record Pressed(
      CaseResponse loaded,
      int contact,
      double pressure,
      Limit limit,
      double allowed,
      Judged judged,
      LimitBasis basis) {

    boolean worseThan(Pressed other) {
      int byJudgement = judged.compareTo(other.judged);
      if (byJudgement != 0) {
        return byJudgement < 0;
      }
      int byKind = Integer.compare(rank(), other.rank());
      return byKind != 0
          ? byKind > 0
          // of contacts alike by symmetry the first stays
          : pressure / limit.peakPressure()
              > other.pressure / other.limit.peakPressure() * (1 + 1e-9);
    }

    /** Of what is beyond its limit a crack is told before a dent; of what holds the nearest. */
    private int rank() {
      return judged == Judged.HOLDS || limit.kind().isFlow()
          ? 0
          : limit.kind() == Kind.STATIC_BRINELLING ? 1 : 2;
    }

    double broken() {
      return pressure > limit.breaks() ? limit.breaks() : allowed;
    }
  }

  /** The worst contact at rest, or under a case. */
  private static Pressed worst(
      Equilibrium standing, CaseResponse loaded, List<ContactLimits> limits, double share) {
    Equilibrium state = loaded == null ? standing : loaded.state();
    Pressed worst = null;
    for (int i = 0; i < limits.size(); i++) {
      Equilibrium.Contact c = state.contacts().get(i);
      if (c.lifted()) {
        continue;
      }
      for (Limit limit : limits.get(i).limits()) {
        Pressed here = pressed(standing, loaded, i, limits, limit, share);
        if (worst == null || here.worseThan(worst)) {
          worst = here;
        }
      }
    }
    return worst;
  }

  private static Pressed pressed(
      Equilibrium standing,
      CaseResponse loaded,
      int contact,
      List<ContactLimits> limits,
      Limit limit,
      double share) {
    Equilibrium state = loaded == null ? standing : loaded.state();
    double pressure = state.contacts().get(contact).peakPressure();
    double allowed = (limit.kind().isFlow() ? share : Math.min(1, share)) * limit.peakPressure();
    Judged judged = Judged.HOLDS;
    LimitBasis basis = basis(limit.kind());
    if (pressure > limit.breaks()) {
      judged = Judged.FAILS;
      basis = LimitBasis.STRENGTH;
    } else if (pressure > allowed && share < 1 && !survives(loaded)) {
      judged = Judged.FAILS;
      basis = LimitBasis.STATED;
    } else if (pressure > allowed) {
      judged = Judged.DECIDE;
      if (limit.kind().isFlow() && ruined(standing, loaded, contact, limits)) {
        judged = Judged.FAILS;
        basis = LimitBasis.STRENGTH;
      }
    }
    return new Pressed(loaded, contact, pressure, limit, allowed, judged, basis);
  }

  private static LimitBasis basis(Kind kind) {
    return switch (kind) {
      case FIRST_YIELD, FLOW_BRITTLE -> LimitBasis.FIRST_YIELD;
      case STATIC_BRINELLING -> LimitBasis.ISO_76;
      case RING_CRACK, EDGE_CRACK -> LimitBasis.BRITTLE_BOUND;
    };
  }

  private static boolean survives(CaseResponse loaded) {
    return loaded != null && loaded.loadCase().demand() == LoadCase.Demand.SURVIVE;
  }

  /** Whether a contact sinks in like a Brinell ball, and that is more than the file stands. */
  private static boolean ruined(
      Equilibrium standing, CaseResponse loaded, int contact, List<ContactLimits> limits) {
    Equilibrium state = loaded == null ? standing : loaded.state();
    double force = state.contacts().get(contact).greatestForce();
    Optional<Dent> dent = limits.get(contact).dent(force);
    if (dent.isEmpty() || dent.get().state() != Dent.State.DENTS_FULLY) {
      return false;
    }
    boolean digsAgain =
        loaded != null
            && !survives(loaded)
            && force > standing.contacts().get(contact).greatestForce();
    return digsAgain || beyondTarget(standing, settled(state, limits));
  }

  private static boolean beyondTarget(Equilibrium standing, Vec3 lost) {
    CouplingDesign design = standing.model().design();
    Vec3 along = design.axes().of(lost);
    for (int axis = 0; axis < 3; axis++) {
      double wanted = design.targets().repeatability().limit(axis);
      if (Math.abs(along.component(axis)) > wanted) {
        return true;
      }
    }
    return false;
  }

  /** How far the tool point stands from where it would, all contacts dented by a state, m. */
  private static Vec3 settled(Equilibrium state, List<ContactLimits> limits) {
    double[] depths = new double[limits.size()];
    for (int i = 0; i < depths.length; i++) {
      depths[i] =
          limits.get(i).dent(state.contacts().get(i).greatestForce()).map(Dent::depth).orElse(0.0);
    }
    return state
        .lines()
        .settled(depths)
        .displacementOf(state.placeOf(state.model().design().toolPoint()));
  }

  private static Finding finding(
      Equilibrium standing, Pressed p, List<ContactLimits> limits, double share) {
    String name = standing.contacts().get(p.contact()).line().name();
    return new Finding(
        CheckKind.CONTACT_PRESSURE,
        p.judged(),
        p.loaded() == null ? Subject.contact(name) : Subject.loadCase(p.loaded().loadCase().name()),
        p.pressure(),
        p.broken(),
        Sense.AT_MOST,
        p.basis(),
        Measure.PRESSURE,
        said(standing, p, limits, share),
        advice(standing, p, limits.get(p.contact())));
  }

  private static Statement said(
      Equilibrium standing, Pressed p, List<ContactLimits> limits, double share) {
    Limit limit = p.limit();
    Equilibrium state = p.loaded() == null ? standing : p.loaded().state();
    Equilibrium.Contact c = state.contacts().get(p.contact());
    List<Argument> about =
        new ArrayList<>(
            Statement.of(
                    Said.PRESSURE,
                    c.line().name(),
                    p.loaded() == null ? "" : p.loaded().loadCase().name(),
                    amount(Measure.PRESSURE, p.pressure()),
                    amount(Measure.SHARE, p.pressure() / limit.peakPressure()),
                    amount(Measure.PRESSURE, limit.peakPressure()),
                    limit.material().name(),
                    limit.kind(),
                    amount(Measure.FORCE, c.hertz().forceAtPeakPressure(limit.peakPressure())),
                    amount(Measure.SHARE, share),
                    limit.body())
                .arguments());
    if (limit.kind() == Kind.RING_CRACK) {
      ContactLimits of = limits.get(p.contact());
      about.add(amount(Measure.LENGTH, limit.flaw()));
      about.add(amount(Measure.LENGTH, of.runningFlaw(limit, p.pressure())));
      about.add(amount(Measure.FACTOR, of.friction()));
      return new Statement(Said.RING_CRACK, about);
    }
    Optional<Dent> dent = limits.get(p.contact()).dent(c.greatestForce());
    if (dent.isEmpty() || limit.kind() == Kind.EDGE_CRACK) {
      return new Statement(Said.PRESSURE, about);
    }
    Dent d = dent.get();
    Vec3 lost = settled(state, limits);
    about.addAll(
        Statement.of(
                Said.DENTED,
                d.state(),
                amount(Measure.FORCE, d.greatestForce()),
                amount(Measure.LENGTH, d.diameter()),
                amount(Measure.LENGTH, d.depth()),
                amount(Measure.LENGTH, d.lip()),
                amount(Measure.LENGTH, lost.norm()),
                amount(Measure.STIFFNESS, d.stiffness(d.greatestForce())),
                amount(Measure.COUNT, d.established() ? 0 : 1))
            .arguments());
    return new Statement(Said.DENTED, about);
  }

  /** What to do about a set that is left; what else would help is tried. */
  private static Statement advice(Equilibrium standing, Pressed p, ContactLimits limits) {
    if (p.limit().kind() == Kind.RING_CRACK && p.judged() == Judged.DECIDE) {
      return Statement.of(
          Said.POLISH, amount(Measure.LENGTH, limits.runningFlaw(p.limit(), p.pressure())));
    }
    Equilibrium state = p.loaded() == null ? standing : p.loaded().state();
    Optional<Dent> dent = limits.dent(state.contacts().get(p.contact()).greatestForce());
    if (p.judged() == Judged.DECIDE
        && dent.isPresent()
        && dent.get().state().compareTo(Dent.State.DENTS) >= 0) {
      return Statement.of(
          Said.WORK_IN,
          amount(
              Measure.FACTOR,
              Math.max(LEAST_PROOF, dent.get().proofForce(LANDING) / dent.get().greatestForce())));
    }
    return Statement.NOTHING;
  }

  private static List<String> unrated(List<ContactLimits> limits) {
    List<String> names = new ArrayList<>();
    for (ContactLimits l : limits) {
      for (Material m : l.unrated()) {
        if (!names.contains(m.name())) {
          names.add(m.name());
        }
      }
    }
    return names;
  }

  private static Finding unrated(String names, int count) {
    return Finding.advice(
        CheckKind.CONTACT_PRESSURE,
        new Subject(Subject.Kind.MATERIAL, names),
        count,
        0,
        Measure.COUNT,
        Statement.of(Said.STRENGTH_UNKNOWN, names),
        Statement.of(Said.STATE_STRENGTH));
  }
}
