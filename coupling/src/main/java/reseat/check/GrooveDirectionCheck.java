package reseat.check;
import reseat.units.FilledText;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
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

  /** Angle off the bisector that nobody need mind, rad. */
  private static final double NEGLIGIBLE = Elementary.toRadians(1);

  /** Loss of stiffness from which it is worth turning them; common practice, no source. */
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
    List<String> astray = new ArrayList<>();
    double worst = 0;
    double bisectorOfWorst = 0;
    String where = "";
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
      double angle = angle(bisector);
      if (off > NEGLIGIBLE) {
        astray.add(s.name() + FilledText.of(" %.2f deg", Elementary.toDegrees(angle)));
      }
      if (off > worst) {
        worst = off;
        bisectorOfWorst = angle;
        where = s.name();
      }
      turned.add(s.withGrooveAlong(bisector));
    }
    if (astray.isEmpty()) {
      return List.of(onBisectors());
    }
    double best = ConstraintQuality.of(design.toBuilder().supports(turned).build()).smallest();
    double loss = Math.max(0, 1 - Elementary.pow(quality.smallest() / best, 2));
    return List.of(
        Finding.advice(
            CheckKind.GROOVE_DIRECTION,
            Subject.support(where),
            loss,
            LOSS,
            Measure.SHARE,
            Statement.of(
                Said.GROOVE_OFF_BISECTOR,
                where,
                amount(Measure.ANGLE, worst),
                amount(Measure.ANGLE, bisectorOfWorst),
                amount(Measure.SHARE, loss)),
            loss > LOSS
                ? Statement.of(Said.TURN_TO_BISECTORS, String.join(", ", astray))
                : Statement.NOTHING));
  }

  /** Angle of a groove's line from x toward y, 0 to below pi: the line has no sense. */
  private static double angle(Vec3 along) {
    double angle = Elementary.atan2(along.y(), along.x());
    if (angle < -1e-9) {
      angle += Math.PI;
    }
    return angle >= Math.PI - 1e-9 ? 0 : Math.max(0, angle);
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

  private static Finding onBisectors() {
    return new Finding(
        CheckKind.GROOVE_DIRECTION,
        Judged.HOLDS,
        Subject.COUPLING,
        0,
        LOSS,
        Sense.AT_MOST,
        LimitBasis.COMMON_PRACTICE,
        Measure.SHARE,
        Statement.of(Said.GROOVES_ON_BISECTORS),
        Statement.NOTHING);
  }
}
