package reseat.ballmount;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * Two threads for the same duty, side by side: how finely each adjusts, what it carries, how much
 * it moves when locked, what torque it takes.
 *
 * @param duty the duty both are asked to do
 * @param first the one
 * @param second the other
 */
public record ThreadComparison(ThreadDuty duty, ScrewThread first, ScrewThread second) {

  /** Refuses what is missing. */
  public ThreadComparison {
    Objects.requireNonNull(duty, "duty of a thread comparison must be given, found null");
    Objects.requireNonNull(first, "first of a thread comparison must be given, found null");
    Objects.requireNonNull(second, "second of a thread comparison must be given, found null");
  }

  /** The quantities compared, with the sense in which one thread is the better. */
  public enum Quantity {
    /** Axial travel for one degree, m; smaller adjusts finer. */
    TRAVEL_PER_DEGREE(false),
    /** Axial travel for the smallest turn by hand, m; smaller adjusts finer. */
    SMALLEST_STEP(false),
    /** Smallest of tensile and stripping loads, N; larger is stronger. */
    CAPACITY(true),
    /** Stripping load of the screw thread, N. */
    SCREW_STRIPPING_LOAD(true),
    /** Stripping load of the nut thread, N. */
    NUT_STRIPPING_LOAD(true),
    /** Tensile load of the shank, N. */
    TENSILE_LOAD(true),
    /** Flank pressure under the load, Pa; smaller wears and seizes less. */
    FLANK_PRESSURE(false),
    /** Engagement from which the screw breaks before a thread strips, m; shorter is easier. */
    ENGAGEMENT_NEEDED(false),
    /** Largest axial lost motion, m; smaller shifts less when locked. */
    LOST_MOTION(false),
    /** Torque to raise the load with thread and lock nut face, N m; smaller is easier to hold. */
    LOCK_TORQUE(false),
    /** Friction below which the load turns the screw; smaller holds better. */
    SELF_LOCKING_FRICTION(false),
    /** Height of the flank that still bears at the worst limits, m; larger survives dirt better. */
    FLANK_OVERLAP(true);

    private final boolean moreIsBetter;

    Quantity(boolean moreIsBetter) {
      this.moreIsBetter = moreIsBetter;
    }

    /**
     * The sense of the quantity.
     *
     * @return true if the larger value is the better one
     */
    public boolean moreIsBetter() {
      return moreIsBetter;
    }
  }

  /**
   * Values of the first thread.
   *
   * @return SI values by quantity, in the order of {@link Quantity}
   */
  public Map<Quantity, Double> firstValues() {
    return values(first);
  }

  /**
   * Values of the second thread.
   *
   * @return SI values by quantity, in the order of {@link Quantity}
   */
  public Map<Quantity, Double> secondValues() {
    return values(second);
  }

  /**
   * How much better the first thread is: above one it wins, below one the second does.
   *
   * @param quantity the quantity
   * @return ratio of the better sense, first over second
   */
  public double advantageOfFirst(Quantity quantity) {
    double ratio = firstValues().get(quantity) / secondValues().get(quantity);
    return quantity.moreIsBetter() ? ratio : 1 / ratio;
  }

  private Map<Quantity, Double> values(ScrewThread thread) {
    ThreadTolerance limits = ThreadTolerance.of(thread, duty.fit());
    ThreadStrength strength =
        ThreadStrength.of(limits, duty.engagement(), duty.screwUltimate(), duty.nutUltimate());
    ThreadTorque torque =
        new ThreadTorque(thread, duty.friction(), duty.friction(), duty.lockNutDiameter());
    Map<Quantity, Double> found = new EnumMap<>(Quantity.class);
    found.put(Quantity.TRAVEL_PER_DEGREE, thread.travelPerDegree());
    found.put(Quantity.SMALLEST_STEP, thread.travelPerRadian() * duty.handResolution());
    found.put(Quantity.CAPACITY, strength.capacity());
    found.put(Quantity.SCREW_STRIPPING_LOAD, strength.screwStrippingLoad());
    found.put(Quantity.NUT_STRIPPING_LOAD, strength.nutStrippingLoad());
    found.put(Quantity.TENSILE_LOAD, strength.tensileLoad());
    found.put(Quantity.FLANK_PRESSURE, strength.flankPressure(duty.axialForce()));
    found.put(Quantity.ENGAGEMENT_NEEDED, strength.engagementSoScrewBreaks());
    found.put(Quantity.LOST_MOTION, limits.axialPlayMax());
    found.put(Quantity.LOCK_TORQUE, torque.tightening(duty.axialForce()));
    found.put(Quantity.SELF_LOCKING_FRICTION, thread.selfLockingFriction());
    found.put(Quantity.FLANK_OVERLAP, limits.flankOverlapMin());
    return Collections.unmodifiableMap(found);
  }
}
