package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
import reseat.contact.ContactLimits.Kind;
import reseat.contact.ContactLimits.Limit;
import reseat.design.LoadCase;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadRange;
import reseat.material.Material;

/**
 * Whether a contact is pressed beyond what the weaker of its two bodies bears.
 *
 * <p>The pressure at rest and under each load is set against the lowest limit of either body: first
 * yield, brinelling of hardened steel, cracking or crushing of brittle bodies. A broken yield limit
 * fails; so does a load that need only be survived once it passes the static limit of hardened
 * steel, before that it warns. The limits of brittle bodies are on the safe side, so breaking one
 * warns; at twice the limit it fails.
 */
public final class PressureCheck {

  private static final String CHECK = "contact pressure";

  /** Yield pressure under which a body is called soft, Pa: hardened steel has about three times. */
  private static final double SOFT = 1.2e9;

  /** Part of the preload below which a smaller one is no advice. */
  private static final double LEAST_ADVISED = 0.1;

  private static final Sentence DENT =
      Sentence.of(
          " Beyond the static limit of ISO 76, ",
          Measure.PRESSURE.amount(ContactLimits.STATIC_BRINELLING_PRESSURE),
          ", it leaves a dent to be felt.");

  private PressureCheck() {}

  /**
   * Judges the pressures.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param limits limits of each contact, ball first, seat second
   * @param share part of a limit that the design may use
   * @return the worst contact at rest, the worst contact under the load cases, and a note on
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
      found.add(unratedNote(unrated));
    }
    return found;
  }

  /**
   * The contact that is nearest to its limit in one state.
   *
   * @param loaded the load case; null at rest
   * @param contact index of the contact
   * @param pressure its peak pressure, Pa
   * @param limit the limit that governs it
   * @param severity how that is judged
   */
  private record Pressed(
      CaseResponse loaded, int contact, double pressure, Limit limit, Severity severity) {

    boolean worseThan(Pressed other) {
      int bySeverity = severity.compareTo(other.severity);
      return bySeverity != 0
          ? bySeverity < 0
          : pressure / limit.peakPressure() > other.pressure / other.limit.peakPressure();
    }

    Object when() {
      return loaded == null ? " at rest" : Sentence.of(" under ", loaded.loadCase().name());
    }
  }

  /** The worst contact at rest, or under a case. */
  private static Pressed worst(
      Equilibrium standing, CaseResponse loaded, List<ContactLimits> limits, double share) {
    Equilibrium state = loaded == null ? standing : loaded.state();
    Pressed worst = null;
    double worstRatio = 0;
    for (int i = 0; i < limits.size(); i++) {
      Optional<Limit> governing = limits.get(i).governing();
      Equilibrium.Contact c = state.contacts().get(i);
      if (governing.isPresent() && !c.lifted()) {
        Limit limit = governing.get();
        double pressure = c.peakPressure();
        double ratio = pressure / limit.peakPressure();
        if (ratio > worstRatio * (1 + 1e-9)) {
          worstRatio = ratio;
          Severity severity = severity(pressure, share * limit.peakPressure(), limit, loaded);
          worst = new Pressed(loaded, i, pressure, limit, severity);
        }
      }
    }
    return worst;
  }

  private static Finding finding(Equilibrium standing, Pressed p, double share) {
    Equilibrium.Contact c = standing.contacts().get(p.contact());
    Limit limit = p.limit();
    double allowed = share * limit.peakPressure();
    String name = c.line().name();
    boolean dents =
        p.pressure() > ContactLimits.STATIC_BRINELLING_PRESSURE
            && limit.kind() != Kind.STATIC_BRINELLING;
    Sentence message =
        Sentence.of(
            name,
            p.when(),
            ": peak pressure ",
            Measure.PRESSURE.amount(p.pressure()),
            " is ",
            Measure.SHARE.amount(p.pressure() / limit.peakPressure()),
            " of ",
            Measure.PRESSURE.amount(limit.peakPressure()),
            ", where the ",
            limit.body() == ContactLimits.Body.FIRST ? "ball" : "seat",
            " (",
            limit.material().name(),
            ") ",
            harm(limit.kind()),
            ", from ",
            Measure.FORCE.amount(c.hertz().forceAtPeakPressure(limit.peakPressure())),
            " on this contact",
            share == 1 ? "" : Sentence.of("; wanted is ", Measure.SHARE.amount(share), " of it"),
            ".",
            dents ? DENT : "");
    return new Finding(
        CHECK,
        p.severity(),
        p.loaded() == null ? name : p.loaded().loadCase().name(),
        p.pressure(),
        allowed,
        Sense.AT_MOST,
        Measure.PRESSURE,
        message,
        p.severity() == Severity.OK
            ? Sentence.NONE
            : Sentence.of(new Advice(standing, p, allowed)));
  }

  private static Severity severity(
      double pressure, double allowed, Limit limit, CaseResponse loaded) {
    if (pressure <= allowed) {
      return Severity.OK;
    }
    boolean brittle = limit.kind() == Kind.EDGE_CRACK || limit.kind() == Kind.CRUSHING;
    if (brittle) {
      return pressure > 2 * allowed ? Severity.FAIL : Severity.WARNING;
    }
    boolean survival = loaded != null && loaded.loadCase().demand() == LoadCase.Demand.SURVIVE;
    boolean hard = limit.peakPressure() > SOFT;
    return survival && hard && pressure <= ContactLimits.STATIC_BRINELLING_PRESSURE
        ? Severity.WARNING
        : Severity.FAIL;
  }

  private static String harm(Kind kind) {
    return switch (kind) {
      case FIRST_YIELD -> "begins to yield below the surface";
      case STATIC_BRINELLING -> "takes a lasting dent of 1e-4 of the ball diameter (ISO 76)";
      case EDGE_CRACK -> "may crack at the edge of the patch (on the safe side)";
      case CRUSHING -> "is at half its crushing strength (judgement)";
    };
  }

  /** What to change, found when it is read: the preload that would do takes a solution. */
  private record Advice(Equilibrium standing, Pressed p, double allowed) {

    @Override
    public String toString() {
      PreloadRange range = PreloadRange.of(standing);
      Limit limit = p.limit();
      double force = standing.contacts().get(p.contact()).hertz().forceAtPeakPressure(allowed);
      double most =
          p.loaded() == null
              ? range.mostPreload(p.contact(), force)
              : range.mostPreload(p.contact(), force, p.loaded().loadCase().load());
      String preload =
          most > LEAST_ADVISED
              ? " or keep the preload under " + Measure.FORCE.show(most * range.preload())
              : "";
      if (limit.kind() == Kind.FIRST_YIELD && limit.peakPressure() < SOFT) {
        return "Set hard inserts (58 HRC or harder, or carbide) into the soft part" + preload + ".";
      }
      return "Take larger balls or a closer fit (gothic groove), a stronger material"
          + preload
          + ".";
    }
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

  private static Finding unratedNote(List<String> names) {
    String list = String.join(", ", names);
    return new Finding(
        CHECK,
        Severity.NOTE,
        list,
        names.size(),
        0,
        Sense.AT_MOST,
        Measure.COUNT,
        "no strength is known for " + list + ", so it was not judged.",
        "Give its yield or crushing strength in the design file.");
  }
}
