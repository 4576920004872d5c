package reseat.seating;

import java.util.ArrayList;
import java.util.List;
import reseat.equilibrium.ContactLines;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Whether the slides home with one contact open surely go on up to a friction, for one load after
 * another on the same lines.
 *
 * <p>At a given friction the power left to close a contact is in proportion to the load, by numbers
 * that depend on the lines alone. These are found once for each step of friction at which {@link
 * SelfSeating} looks. Not for use by several threads.
 */
public final class LastSlides {

  private static final int N = 6;

  /** Power that counts as some, as a part of the sum of the sizes of its terms. */
  private static final double CLEAR = 1e-9;

  private final StoppedSlide slide;
  private final HalfSeatedRest rest;
  private final List<Vec3[]> slips = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  /**
   * Power of a unit of each part of a load at the contact that is open, for each of them.
   *
   * @param friction the friction
   * @param perLoad for each contact six numbers; zeros where the holder wedges
   */
  private record Step(double friction, List<double[]> perLoad) {}

  /**
   * Prepares lines.
   *
   * @param lines where the contacts push, holder in its nominal place
   * @throws ArithmeticException if the contacts are not six or do not constrain the holder
   */
  public LastSlides(ContactLines lines) {
    slide = new StoppedSlide(lines, Wrench.zero(Vec3.ZERO));
    rest = new HalfSeatedRest(lines, slide.normalColumns());
    SelfSeating seating = new SelfSeating(lines, Wrench.zero(Vec3.ZERO));
    for (int i = 0; i < N; i++) {
      double[] rates = new double[N];
      rates[i] = 1;
      slips.add(seating.slips(rates));
    }
  }

  /**
   * Says whether a holder set down with one contact open cannot stand still at a friction.
   *
   * @param load load on the holder
   * @param friction the friction
   * @return true if it surely moves on, whichever contact is open
   */
  public boolean surelyMovesOn(Wrench load, double friction) {
    double[] opposite = StoppedSlide.opposite(load);
    for (int i = 0; i < N; i++) {
      double[] rates = new double[N];
      rates[i] = 1;
      if (!rest.cannotStand(opposite, rates, friction)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Says whether no slide stalls at or below a friction.
   *
   * @param load load on the holder while it slides
   * @param friction the friction
   * @return true if none does; false if one does, or if this can only be told by {@link
   *     SelfSeating#oneOpen()}, as one stalls between this friction and the next step
   */
  public boolean surelyPass(Wrench load, double friction) {
    double[] opposite = StoppedSlide.opposite(load);
    double last = 0;
    for (int k = 0; last < friction; k++) {
      Step step = step(k);
      for (int i = 0; i < N; i++) {
        if (!goesOn(step.perLoad().get(i), opposite)) {
          return false;
        }
      }
      if (step.friction() >= SelfSeating.GREATEST) {
        return true;
      }
      last = step.friction();
    }
    return true;
  }

  private static boolean goesOn(double[] perLoad, double[] opposite) {
    double power = 0;
    double size = 0;
    for (int j = 0; j < N; j++) {
      double part = perLoad[j] * opposite[j];
      power += part;
      size += Math.abs(part);
    }
    return power > CLEAR * size;
  }

  private Step step(int k) {
    while (steps.size() <= k) {
      double friction =
          steps.isEmpty() ? 0 : SelfSeating.next(steps.get(steps.size() - 1).friction());
      List<double[]> perLoad = new ArrayList<>();
      for (int i = 0; i < N; i++) {
        slide.setSlips(slips.get(i));
        perLoad.add(slide.perLoad(friction, i));
      }
      steps.add(new Step(friction, List.copyOf(perLoad)));
    }
    return steps.get(k);
  }
}
