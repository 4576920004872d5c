package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ConstraintQuality;
import reseat.space.Vec3;

/**
 * Which way the grooves of a three-groove coupling run.
 *
 * <p>Rule of the trade (recalled, no source read): each groove runs along the bisector of the
 * triangle's corner at its ball. Off it the coupling may still be good, so what counts is the
 * stiffness lost: the least stiffness over all motions, contacts taken as equally stiff and
 * rotations told at the coupling radius, against that with the grooves turned to the bisectors.
 */
public final class GrooveDirectionCheck {

  private static final String CHECK = "groove direction";

  /** Angle off the bisector that nobody need mind, rad. */
  private static final double NEGLIGIBLE = Elementary.toRadians(1);

  /** Loss of stiffness from which it is worth a warning; common practice, no source. */
  private static final double LOSS = 0.2;

  private GrooveDirectionCheck() {}

  /**
   * Judges the directions.
   *
   * @param design the coupling
   * @param quality its constraint
   * @return one finding; none unless there are exactly three supports and all are grooves
   */
  public static List<Finding> of(CouplingDesign design, ConstraintQuality quality) {
    List<Support> supports = design.supports();
    if (supports.size() != 3) {
      return List.of();
    }
    List<Support> turned = new ArrayList<>();
    double worst = 0;
    int worstAt = 0;
    for (int i = 0; i < 3; i++) {
      Support s = supports.get(i);
      if (!s.seat().isGroove()) {
        return List.of();
      }
      Vec3 bisector = bisector(supports, i).rejectedFrom(s.seat().frame().up());
      if (!(bisector.norm() > 1e-9)) {
        return List.of();
      }
      double cosine = Math.abs(s.seat().frame().axis().dot(bisector.unit()));
      double off = Elementary.acos(Math.min(1, cosine));
      if (off > worst) {
        worst = off;
        worstAt = i;
      }
      turned.add(s.withGrooveAlong(bisector));
    }
    String where = supports.get(worstAt).name();
    if (worst <= NEGLIGIBLE) {
      return List.of(
          finding(
              Severity.OK, "", 0, "the grooves run along the bisectors of the ball triangle.", ""));
    }
    double best = ConstraintQuality.of(design.toBuilder().supports(turned).build()).smallest();
    double loss = Math.max(0, 1 - Elementary.pow(quality.smallest() / best, 2));
    return List.of(
        finding(
            loss > LOSS ? Severity.WARNING : Severity.NOTE,
            where,
            loss,
            "the groove of "
                + where
                + " runs "
                + Measure.ANGLE.show(worst)
                + " off the bisector of the ball triangle; "
                + (loss < 0.005
                    ? "no stiffness is lost by it."
                    : "the softest motion is "
                        + Measure.SHARE.show(loss)
                        + " softer than with all grooves along the bisectors."),
            loss > LOSS ? "Turn the grooves toward the bisectors." : ""));
  }

  private static Vec3 bisector(List<Support> supports, int corner) {
    Vec3 here = supports.get(corner).ball().centre();
    Vec3 next = supports.get((corner + 1) % 3).ball().centre().minus(here);
    Vec3 last = supports.get((corner + 2) % 3).ball().centre().minus(here);
    if (next.norm() == 0 || last.norm() == 0) {
      return Vec3.ZERO;
    }
    return next.unit().plus(last.unit());
  }

  private static Finding finding(
      Severity severity, String where, double loss, String message, String advice) {
    return new Finding(
        CHECK, severity, where, loss, LOSS, Sense.AT_MOST, Measure.SHARE, message, advice);
  }
}
