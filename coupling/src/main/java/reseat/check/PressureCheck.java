package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
import reseat.contact.ContactLimits.Kind;
import reseat.contact.ContactLimits.Limit;
import reseat.design.CheckKind;
import reseat.design.LoadCase;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.material.Material;

/**
 * Whether a contact is pressed beyond what the weaker of its two bodies bears.
 *
 * <p>The pressure at rest and under each load is set against the lowest limit of either body: first
 * yield, brinelling of hardened steel, cracking or crushing of brittle bodies. A broken yield limit
 * fails; under a load that need only be survived, hard bodies fail only beyond the static limit of
 * hardened steel, and before that a person decides. The limits of brittle bodies are on the safe
 * side: breaking one is up for decision, and at twice the limit it fails.
 */
public final class PressureCheck {

  /** Yield pressure under which a body is called soft, Pa: hardened steel has about three times. */
  private static final double SOFT = 1.2e9;

  private PressureCheck() {}

  /**
   * Judges the pressures.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param limits limits of each contact, ball first, seat second
   * @param share part of a limit that the design may use
   * @return the worst contact at rest, the worst contact under the load cases, and advice on
   *     materials without known strength
   */
  public static List<Finding> of(
      Equilibrium standing, List<CaseResponse> cases, List<ContactLimits> limits, double share) {
    List<Finding> found = new ArrayList<>();
    Pressed rest = worst(standing, null, limits, share);
    if (rest != null) {
      found.add(finding(standing, rest, share));
    }
    Pressed loaded = null;
    for (CaseResponse r : cases) {
      Pressed pressed = worst(standing, r, limits, share);
      if (pressed != null && (loaded == null || pressed.worseThan(loaded))) {
        loaded = pressed;
      }
    }
    if (loaded != null) {
      found.add(finding(standing, loaded, share));
    }
    List<String> unrated = unrated(limits);
    if (!unrated.isEmpty()) {
      found.add(unrated(String.join(", ", unrated), unrated.size()));
    }
    return found;
  }

  /**
   * How far a contact may be pressed, and who says so.
   *
   * @param allowed pressure that nobody need decide about, Pa
   * @param most pressure beyond which it fails, Pa
   * @param basis basis of the first where the two differ
   */
  private record Bounds(double allowed, double most, LimitBasis basis) {

    Judged judged(double pressure) {
      return pressure <= allowed ? Judged.HOLDS : pressure > most ? Judged.FAILS : Judged.DECIDE;
    }
  }

  private static Bounds bounds(Limit limit, double share, CaseResponse loaded) {
    double allowed = share * limit.peakPressure();
    return switch (limit.kind()) {
      case EDGE_CRACK, CRUSHING -> new Bounds(allowed, 2 * allowed, LimitBasis.BRITTLE_BOUND);
      case FIRST_YIELD -> ductile(limit, allowed, loaded, LimitBasis.FIRST_YIELD);
      case STATIC_BRINELLING -> ductile(limit, allowed, loaded, LimitBasis.ISO_76);
    };
  }

  private static Bounds ductile(
      Limit limit, double allowed, CaseResponse loaded, LimitBasis judgement) {
    boolean survival = loaded != null && loaded.loadCase().demand() == LoadCase.Demand.SURVIVE;
    double most = Math.max(allowed, ContactLimits.STATIC_BRINELLING_PRESSURE);
    return survival && limit.peakPressure() > SOFT
        ? new Bounds(allowed, most, judgement)
        : new Bounds(allowed, allowed, LimitBasis.STRENGTH);
  }

  /**
   * The contact that is nearest to its limit in one state.
   *
   * @param loaded the load case; null at rest
   * @param contact index of the contact
   * @param pressure its peak pressure, Pa
   * @param limit the limit that governs it
   * @param bounds how far it may be pressed
   */
  private record Pressed(
      CaseResponse loaded, int contact, double pressure, Limit limit, Bounds bounds) {

    Judged judged() {
      return bounds.judged(pressure);
    }

    boolean worseThan(Pressed other) {
      int byJudgement = judged().compareTo(other.judged());
      return byJudgement != 0
          ? byJudgement < 0
          // of contacts alike by symmetry the first stays
          : pressure / limit.peakPressure()
              > other.pressure / other.limit.peakPressure() * (1 + 1e-9);
    }

    double broken() {
      return judged() == Judged.FAILS ? bounds.most() : bounds.allowed();
    }

    LimitBasis basis() {
      return judged() == Judged.FAILS ? LimitBasis.STRENGTH : bounds.basis();
    }
  }

  /** The worst contact at rest, or under a case. */
  private static Pressed worst(
      Equilibrium standing, CaseResponse loaded, List<ContactLimits> limits, double share) {
    Equilibrium state = loaded == null ? standing : loaded.state();
    Pressed worst = null;
    for (int i = 0; i < limits.size(); i++) {
      Optional<Limit> governing = limits.get(i).governing();
      Equilibrium.Contact c = state.contacts().get(i);
      if (governing.isPresent() && !c.lifted()) {
        Limit limit = governing.get();
        Pressed here =
            new Pressed(loaded, i, c.peakPressure(), limit, bounds(limit, share, loaded));
        if (worst == null || here.worseThan(worst)) {
          worst = here;
        }
      }
    }
    return worst;
  }

  private static Finding finding(Equilibrium standing, Pressed p, double share) {
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
        said(standing.contacts().get(p.contact()), p, share),
        Statement.NOTHING);
  }

  private static Statement said(Equilibrium.Contact c, Pressed p, double share) {
    Limit limit = p.limit();
    Statement pressure =
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
            limit.body());
    double dents = ContactLimits.STATIC_BRINELLING_PRESSURE;
    if (p.pressure() <= dents || limit.kind() == Kind.STATIC_BRINELLING) {
      return pressure;
    }
    List<Argument> arguments = new ArrayList<>(pressure.arguments());
    arguments.add(amount(Measure.PRESSURE, dents));
    return new Statement(Said.PRESSURE_BEYOND_STATIC, arguments);
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
