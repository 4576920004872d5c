package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingThird;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;

/**
 * What a ring of contact asks for: ball and cone so round that it carries all round.
 *
 * <p>A ring has more places than the three that hold a ball. If ball or cone departs from round by
 * more than the two sink into each other, the ball rests on two or three places that nobody chose;
 * then the pressure is that of points.
 */
public final class RingContactCheck {

  private static final String CHECK = "ring of contact";

  private RingContactCheck() {}

  /**
   * Tells it for every cone.
   *
   * @param standing the coupling at rest
   * @return one warning per cone
   */
  public static List<Finding> of(Equilibrium standing) {
    List<Finding> found = new ArrayList<>();
    int first = 0;
    for (Support s : standing.model().design().supports()) {
      if (s.seat().isRing()) {
        found.add(finding(s, standing.contacts().subList(first, first + 3)));
      }
      first += s.seat().contacts();
    }
    return found;
  }

  private static Finding finding(Support s, List<Equilibrium.Contact> thirds) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    double mean = 0;
    for (Equilibrium.Contact c : thirds) {
      least = Math.min(least, c.leastForce());
      greatest = Math.max(greatest, c.greatestForce());
      mean += c.force() / 3;
    }
    RingThird ring = (RingThird) thirds.get(0).hertz();
    double sink = ring.approach(Math.max(0, least));
    EllipticContact point =
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(s.ball().radius()), thirds.get(0).hertz().elasticity());
    return new Finding(
        CHECK,
        Severity.WARNING,
        s.name(),
        sink,
        0,
        Sense.AT_LEAST,
        Measure.LENGTH,
        s.name()
            + " holds its ball by a ring, more than the three places that would do. It carries all"
            + " round only if ball and cone are round to well under "
            + Measure.LENGTH.show(sink)
            + ", the least that they sink together; then the pressure is "
            + Measure.PRESSURE.show(ring.peakPressure(greatest))
            + ". Resting on three places of it, it would be "
            + Measure.PRESSURE.show(point.peakPressure(Math.max(0, mean)))
            + " there.",
        "Lap ball and cone together, or take a trihedral seat, which has three places of its own.");
  }
}
