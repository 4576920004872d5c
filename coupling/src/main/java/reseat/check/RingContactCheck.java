package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.contact.BallContact;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.design.CheckKind;
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

  private RingContactCheck() {}

  /**
   * Tells it for every cone.
   *
   * @param standing the coupling at rest
   * @return one piece of advice per cone
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
    BallContact ring = thirds.get(0).hertz();
    double sink = ring.approach(Math.max(0, least));
    EllipticContact point =
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(s.ball().radius()), thirds.get(0).hertz().elasticity());
    return Finding.advice(
        CheckKind.RING_OF_CONTACT,
        Subject.support(s.name()),
        sink,
        0,
        Measure.LENGTH,
        Statement.of(
            Said.RING,
            s.name(),
            amount(Measure.LENGTH, sink),
            amount(Measure.PRESSURE, ring.peakPressure(greatest)),
            amount(Measure.PRESSURE, point.peakPressure(Math.max(0, mean)))),
        Statement.of(Said.LAP_RING));
  }
}
