package reseat.check;

import static reseat.check.Argument.amount;

import java.util.Optional;
import reseat.ballmount.LockNut;
import reseat.ballmount.ThreadStrength;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.StudThread;

/**
 * Whether the thread of a stud bears load and lock nut: stripping of either part, breaking of the
 * screw, and whether it holds its setting.
 *
 * <p>The axial force counted is the load on the stud and the pull of the lock nut added, which is
 * on the safe side. A factor of {@value #FACTOR} against the weakest is wanted (common practice, no
 * source).
 */
public final class ThreadCheck {

  /** Capacity wanted over the force. */
  public static final double FACTOR = 2;

  private ThreadCheck() {}

  /**
   * Returns the axial force counted.
   *
   * @param thread the thread
   * @param loads what the stud bears
   * @return greatest load along the stud and pull of the nut, N
   */
  public static double axialForce(StudThread thread, StudLoads loads) {
    double load = 0;
    for (StudLoads.Peak p : loads.all()) {
      load = Math.max(load, Math.abs(p.load().pull()));
    }
    Optional<LockNut> nut = thread.lockNut();
    return load + (nut.isPresent() ? nut.get().clampForce() : 0);
  }

  /**
   * Judges a thread.
   *
   * @param where name of the support
   * @param thread the thread
   * @param loads what its stud bears
   * @return the finding
   */
  public static Finding of(String where, StudThread thread, StudLoads loads) {
    double force = axialForce(thread, loads);
    String name = thread.limits().thread().toString();
    Optional<ThreadStrength> strength = thread.strength();
    if (strength.isEmpty()) {
      return Finding.advice(
          CheckKind.STUD_THREAD,
          Subject.support(where),
          force,
          0,
          Measure.FORCE,
          Statement.of(
              Said.THREAD_UNJUDGED, name, where, thread.screw().name(), thread.body().name()),
          Statement.of(Said.STATE_TENSILE));
    }
    if (thread.lockNut().isEmpty() && !thread.limits().thread().selfLocking(thread.friction())) {
      return new Finding(
          CheckKind.STUD_THREAD,
          Judged.FAILS,
          Subject.support(where),
          thread.friction(),
          thread.limits().thread().selfLockingFriction(),
          Sense.AT_LEAST,
          LimitBasis.MECHANICS,
          Measure.FACTOR,
          Statement.of(Said.THREAD_SLIPS, name, where),
          Statement.of(Said.LOCK_THREAD));
    }
    return bears(name, where, force, strength.get());
  }

  private static Finding bears(String name, String where, double force, ThreadStrength s) {
    double capacity = s.capacity();
    boolean breaks = force > capacity;
    double limit = breaks ? force : FACTOR * force;
    LimitBasis basis = breaks ? LimitBasis.STRENGTH : LimitBasis.COMMON_PRACTICE;
    Judged judged = Judged.by(capacity, limit, Sense.AT_LEAST, basis);
    return new Finding(
        CheckKind.STUD_THREAD,
        judged,
        Subject.support(where),
        capacity,
        limit,
        Sense.AT_LEAST,
        basis,
        Measure.FORCE,
        Statement.of(
            Said.THREAD_BEARS,
            name,
            where,
            amount(Measure.FORCE, capacity),
            s.weakest(),
            amount(Measure.FORCE, force),
            amount(Measure.FACTOR, FACTOR)),
        judged == Judged.HOLDS ? Statement.NOTHING : advice(s, FACTOR * force));
  }

  /** No engagement helps a screw that would break first. */
  private static Statement advice(ThreadStrength s, double wanted) {
    return s.tensileLoad() < wanted
        ? Statement.of(Said.TIGHTEN_LESS)
        : Statement.of(
            Said.ENGAGE_MORE,
            amount(Measure.LENGTH, s.engagementToBear(wanted)),
            amount(Measure.LENGTH, s.engagementSoScrewBreaks()));
  }
}
