package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.contact.BallContact;
import reseat.design.CheckKind;
import reseat.design.Half;
import reseat.design.Support;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.Equilibrium;
import reseat.seat.Ball;
import reseat.seat.SeatClearance;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Pose;
import reseat.space.Vec3;

/**
 * Whether each ball touches its seat where it should: on the flanks, well clear of their edges and
 * of the floor.
 *
 * <p>The contact patch must stay on the flank with one patch radius to spare, so the contact point
 * keeps at least two semi-axes from an edge (common practice, no source), under the worst of all
 * loads. Under the ball there should be {@value #FLOOR_ROOM} m of room for dirt (common practice,
 * no source).
 */
public final class SeatMisfitCheck {

  /** Room wanted under a ball, m. */
  public static final double FLOOR_ROOM = 0.1e-3;

  private SeatMisfitCheck() {}

  /**
   * Judges every seat.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @return the tightest place of every support that has one, and advice on what was not stated
   */
  public static List<Finding> of(Equilibrium standing, List<CaseResponse> cases) {
    List<Finding> found = new ArrayList<>();
    List<String> unstated = new ArrayList<>();
    int first = 0;
    List<Support> supports = standing.model().design().supports();
    for (int b = 0; b < supports.size(); b++) {
      Support s = supports.get(b);
      Place worst = null;
      boolean edgeKnown = false;
      for (SeatClearance c : s.seat().clearances(ballInSeatHalf(standing, first, s))) {
        edgeKnown |= c.feature() == Feature.MOUTH_EDGE || c.feature() == Feature.END;
        Place place = place(s, c, standing, cases, first);
        if (worst == null || place.tighterThan(worst)) {
          worst = place;
        }
      }
      if (worst != null) {
        found.add(
            worst.clearance().feature() == Feature.FLOOR ? floor(worst) : edge(worst, standing));
      }
      if (!edgeKnown) {
        unstated.add(s.name());
      }
      first += s.seat().contacts();
    }
    if (!unstated.isEmpty()) {
      found.add(notStated(unstated));
    }
    return found;
  }

  /**
   * A place where ball or patch comes near to what it must not reach.
   *
   * @param support whose seat
   * @param clearance how near it comes
   * @param contact index of the contact; that of the seat's first one for the floor
   * @param least distance below which it fails, m
   * @param wanted distance wanted, m
   */
  private record Place(
      Support support, SeatClearance clearance, int contact, double least, double wanted) {

    double room() {
      return clearance.distance();
    }

    Judged judged() {
      boolean bottoms = clearance.feature() == Feature.FLOOR && room() == 0;
      return bottoms || room() < least
          ? Judged.FAILS
          : Judged.by(room(), wanted, Sense.AT_LEAST, LimitBasis.COMMON_PRACTICE);
    }

    Finding finding(Subject subject, Statement said) {
      boolean fails = judged() == Judged.FAILS;
      return new Finding(
          CheckKind.SEAT_FIT,
          judged(),
          subject,
          room(),
          fails ? least : wanted,
          Sense.AT_LEAST,
          fails ? LimitBasis.MECHANICS : LimitBasis.COMMON_PRACTICE,
          Measure.LENGTH,
          said,
          Statement.NOTHING);
    }

    boolean tighterThan(Place other) {
      int byJudgement = judged().compareTo(other.judged());
      return byJudgement != 0
          ? byJudgement < 0
          : room() / wanted < other.room() / other.wanted - 1e-9;
    }
  }

  private static Place place(
      Support s, SeatClearance c, Equilibrium standing, List<CaseResponse> cases, int first) {
    if (c.feature() == Feature.FLOOR) {
      return new Place(s, c, first, 0, FLOOR_ROOM);
    }
    int contact = contact(standing, first, s, c.flank());
    double reach = reach(c.feature(), standing, cases, contact);
    return new Place(s, c, contact, reach, 2 * reach);
  }

  /** The ball where it stands at rest, its mounting given way, in the axes of the seat's half. */
  private static Ball ballInSeatHalf(Equilibrium standing, int contact, Support s) {
    Vec3 centre = standing.contacts().get(contact).line().ballCentre();
    Pose seatHalf =
        standing.model().design().ballsOn() == Half.HOLDER
            ? Pose.identity()
            : standing.holderInBase();
    return new Ball(seatHalf.inverse().apply(centre), s.ball().radius());
  }

  private static int contact(Equilibrium standing, int first, Support s, String flank) {
    for (int i = first; i < first + s.seat().contacts(); i++) {
      if (standing.contacts().get(i).line().flank().equals(flank)) {
        return i;
      }
    }
    throw new IllegalArgumentException("support " + s.name() + " has no flank " + flank);
  }

  /** Semi-axis of the patch toward an edge under the largest force of all states, m. */
  private static double reach(
      Feature feature, Equilibrium standing, List<CaseResponse> cases, int contact) {
    Equilibrium.Contact c = standing.contacts().get(contact);
    double force = WorstLoad.of(standing, cases, contact).force();
    BallContact hertz = c.hertz();
    boolean hollow = standing.model().flanks().get(contact).signedRadius() < 0;
    // the patch is long along a pin and across a hollow flank
    boolean longWay = hollow != (feature == Feature.END);
    return longWay ? hertz.semiMajor(force) : hertz.semiMinor(force);
  }

  private static Finding edge(Place p, Equilibrium standing) {
    ContactLines.Line line = standing.contacts().get(p.contact()).line();
    return p.finding(
        Subject.contact(line.name()),
        Statement.of(
            Said.NEAR_EDGE,
            line.name(),
            p.clearance().feature(),
            amount(Measure.LENGTH, p.room()),
            amount(Measure.LENGTH, p.least())));
  }

  private static Finding floor(Place p) {
    String name = p.support().name();
    double room = p.room();
    return p.finding(
        Subject.support(name),
        p.judged() == Judged.FAILS
            ? Statement.of(Said.BOTTOMS, name, amount(Measure.LENGTH, -room))
            : Statement.of(
                Said.FLOOR_ROOM,
                name,
                amount(Measure.LENGTH, room),
                amount(Measure.LENGTH, FLOOR_ROOM)));
  }

  private static Finding notStated(List<String> names) {
    String list = String.join(", ", names);
    return Finding.advice(
        CheckKind.SEAT_FIT,
        Subject.support(list),
        names.size(),
        0,
        Measure.COUNT,
        Statement.of(Said.FLANKS_NOT_STATED, list),
        Statement.of(Said.STATE_FLANKS));
  }
}
