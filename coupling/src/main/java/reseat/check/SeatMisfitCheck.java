package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.contact.BallContact;
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

  private static final String CHECK = "seat fit";

  private SeatMisfitCheck() {}

  /**
   * Judges every seat.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @return the tightest place of every support that has one, and a note on what was not stated
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

    Severity severity() {
      return room() < least ? Severity.FAIL : room() < wanted ? Severity.WARNING : Severity.OK;
    }

    boolean tighterThan(Place other) {
      int bySeverity = severity().compareTo(other.severity());
      return bySeverity != 0
          ? bySeverity < 0
          : room() / wanted < other.room() / other.wanted - 1e-9;
    }
  }

  private static Place place(
      Support s, SeatClearance c, Equilibrium standing, List<CaseResponse> cases, int first) {
    if (c.feature() == Feature.FLOOR) {
      return new Place(s, c, first, Double.MIN_NORMAL, FLOOR_ROOM);
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
    SeatClearance c = p.clearance();
    double reach = p.least();
    ContactLines.Line line = standing.contacts().get(p.contact()).line();
    String name = line.name();
    double room = p.room();
    Severity severity = p.severity();
    Sentence state =
        room < 0
            ? Sentence.of(name, " would touch ", Measure.LENGTH.amount(-room), " beyond the ")
            : Sentence.of(name, " touches ", Measure.LENGTH.amount(room), " from the ");
    Sentence rule =
        Sentence.of(
            c.feature().words(),
            "; its patch reaches ",
            Measure.LENGTH.amount(reach),
            " and wants as much again: ",
            Measure.LENGTH.amount(2 * reach),
            ".");
    double cosine = line.normal().dot(opening(standing, p.support()));
    return new Finding(
        CHECK,
        severity,
        name,
        room,
        2 * reach,
        Sense.AT_LEAST,
        Measure.LENGTH,
        Sentence.of(state, rule),
        severity == Severity.OK
            ? Sentence.NONE
            : edgeAdvice(c.feature(), 2 * reach - room, cosine));
  }

  private static Vec3 opening(Equilibrium standing, Support s) {
    Vec3 up = s.seat().frame().up();
    return standing.model().design().ballsOn() == Half.HOLDER
        ? up
        : standing.holderInBase().rotate(up);
  }

  private static Sentence edgeAdvice(Feature feature, double missing, double cosine) {
    return switch (feature) {
      case MOUTH_EDGE ->
          Sentence.of(
              "Widen the mouth by ",
              Measure.LENGTH.amount(2 * missing * cosine),
              " or more, or take a smaller ball.");
      case ROOT_EDGE ->
          Sentence.of(
              "Narrow the relief by ",
              Measure.LENGTH.amount(2 * missing * cosine),
              " or more, or take a larger ball.");
      case END, FLOOR ->
          Sentence.of(
              "Move the end ",
              Measure.LENGTH.amount(missing),
              " or more away, or the ball toward the middle.");
    };
  }

  private static Finding floor(Place p) {
    Support s = p.support();
    double room = p.room();
    Severity severity = p.severity();
    boolean bottoms = severity == Severity.FAIL;
    return new Finding(
        CHECK,
        severity,
        s.name(),
        room,
        FLOOR_ROOM,
        Sense.AT_LEAST,
        Measure.LENGTH,
        bottoms
            ? Sentence.of(
                s.name(),
                " bottoms: the ball reaches ",
                Measure.LENGTH.amount(-room),
                " into the floor before it sits on its flanks.")
            : Sentence.of(
                "the ball of ",
                s.name(),
                " clears the floor by ",
                Measure.LENGTH.amount(room),
                " (dirt wants ",
                Measure.LENGTH.amount(FLOOR_ROOM),
                ")."),
        severity == Severity.OK
            ? Sentence.NONE
            : Sentence.of(
                "Deepen the seat by ",
                Measure.LENGTH.amount(FLOOR_ROOM - room),
                " or more, or take a larger ball."));
  }

  private static Finding notStated(List<String> names) {
    return new Finding(
        CHECK,
        Severity.NOTE,
        String.join(", ", names),
        names.size(),
        0,
        Sense.AT_MOST,
        Measure.COUNT,
        "how far the flanks of "
            + String.join(", ", names)
            + " reach is not stated, so their edges were not checked.",
        "State mouth width and length to have them checked.");
  }
}
