package reseat.check;

import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.StudThread;
import reseat.mount.LockNut;
import reseat.mount.ThreadStrength;

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

  private static final String CHECK = "stud thread";

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
    Sentence name = Sentence.of("thread ", thread.limits().thread(), " of ", where);
    Optional<ThreadStrength> strength = thread.strength();
    if (strength.isEmpty()) {
      return new Finding(
          CHECK,
          Severity.NOTE,
          where,
          force,
          0,
          Sense.AT_MOST,
          Measure.FORCE,
          Sentence.of(
              name,
              ": stripping was not checked, for the tensile strength of ",
              thread.screw().name(),
              " or ",
              thread.body().name(),
              " is not known."),
          Sentence.of("State both tensile strengths to have it judged."));
    }
    if (thread.lockNut().isEmpty() && !thread.limits().thread().selfLocking(thread.friction())) {
      return new Finding(
          CHECK,
          Severity.FAIL,
          where,
          thread.friction(),
          thread.limits().thread().selfLockingFriction(),
          Sense.AT_LEAST,
          Measure.FACTOR,
          Sentence.of(name, " does not hold itself at this friction and has no lock nut."),
          Sentence.of("Lock it, or take a finer pitch."));
    }
    ThreadStrength s = strength.get();
    double capacity = s.capacity();
    Severity severity =
        force > capacity
            ? Severity.FAIL
            : force * FACTOR > capacity ? Severity.WARNING : Severity.OK;
    return new Finding(
        CHECK,
        severity,
        where,
        capacity,
        FACTOR * force,
        Sense.AT_LEAST,
        Measure.FORCE,
        Sentence.of(
            name,
            " bears ",
            Measure.FORCE.amount(capacity),
            ", where ",
            words(s.weakest()),
            "; load and lock nut pull with ",
            Measure.FORCE.amount(force),
            ", and ",
            Measure.FACTOR.amount(FACTOR),
            " times that is wanted."),
        severity == Severity.OK ? Sentence.NONE : advice(s));
  }

  /**
   * Says what gives way.
   *
   * @param weakest what does
   * @return a clause without subject before it, for instance {@code the screw breaks}
   */
  public static String words(ThreadStrength.Weakest weakest) {
    return switch (weakest) {
      case SCREW_BREAKS -> "the screw breaks";
      case SCREW_STRIPS -> "the threads of the screw strip";
      case NUT_STRIPS -> "the threads of the tapped part strip";
    };
  }

  private static Sentence advice(ThreadStrength s) {
    return s.weakest() == ThreadStrength.Weakest.SCREW_BREAKS
        ? Sentence.of("Tighten the lock nut less, or take a larger or stronger screw.")
        : Sentence.of(
            "Engage ",
            Measure.LENGTH.amount(s.engagementSoScrewBreaks()),
            " of thread, so that the screw breaks before a thread strips, or tighten the lock nut"
                + " less.");
  }
}
