package reseat.interchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import reseat.elementary.Elementary;

/**
 * What halving one tolerance, the others as they are, does along one machine axis.
 *
 * @param contributor which tolerance
 * @param before standard deviation of the tool point now, m
 * @param after standard deviation once this limit is halved, m
 */
public record TighteningGain(Contributor contributor, double before, double after) {

  /**
   * Returns the relative gain.
   *
   * @return part of the standard deviation that goes away, 0 to 0.5
   */
  public double gain() {
    return before > 0 ? 1 - after / before : 0;
  }

  /**
   * Ranks the tolerances by what halving each would do.
   *
   * @param stack tolerances as they are now
   * @param owners whose errors count; errors of the occasion count but cannot be halved
   * @param axis machine axis, 0, 1 or 2
   * @return greatest gain first; in the model's order where gains are alike
   */
  public static List<TighteningGain> ranking(LinearStack stack, Set<Owner> owners, int axis) {
    double before = stack.sum(owners).deviation().component(axis);
    List<TighteningGain> gains = new ArrayList<>();
    for (Sensitivity.Effect e : stack.sensitivity().effects()) {
      Owner owner = e.contributor().owner();
      if (owners.contains(owner) && owner != Owner.OCCASION) {
        double part = e.standardShift().component(axis);
        double left = Math.max(0, before * before - 0.75 * part * part);
        gains.add(new TighteningGain(e.contributor(), before, Math.sqrt(left)));
      }
    }
    // rounded, so that gains alike by symmetry stay in the order of their contributors
    double scale = before > 0 ? 1e9 / before : 0;
    gains.sort(
        Comparator.comparingDouble((TighteningGain g) -> Elementary.rint(scale * g.after())));
    return List.copyOf(gains);
  }
}
