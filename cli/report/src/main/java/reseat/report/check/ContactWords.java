package reseat.report.check;

import java.util.Locale;
import reseat.contact.ContactLimits;
import reseat.seat.SeatClearance.Feature;

/** What is said of contacts: pressure, hard layers, the theory, rings, edges and floors. */
final class ContactWords {

  private ContactWords() {}

  static String of(Spoken s) {
    return switch (s.statement().key()) {
      case PRESSURE -> pressure(s);
      case RING_CRACK -> DentWords.ringCrack(s);
      case DENTED -> DentWords.dented(s);
      case WORK_IN ->
          "Work it in before setting: seat it about 20 times at "
              + s.amount(0)
              + " times the greatest pull. Every later harder pull digs again.";
      case POLISH ->
          "Polish the seat and look at it with a glass: no scratch may be deeper than "
              + s.amount(0)
              + ".";
      case STRENGTH_UNKNOWN -> "no strength is known for " + s.name(0) + ", so it was not judged.";
      case STATE_STRENGTH ->
          "Give its yield strength, or of a brittle one its hardness and toughness, in the design file.";
      case CASE_DEPTH ->
          "the hard layer of "
              + s.name(0)
              + " is "
              + s.beside(1, 3)
              + " deep; the greatest shear lies at "
              + s.amount(2)
              + ", and three times that, "
              + s.beside(3, 1)
              + ", is required.";
      case PATCH_OVER_RADIUS ->
          s.name(0)
              + ": the patch is "
              + s.amount(1)
              + " of the smallest radius. Contact theory is good to "
              + s.amount(2)
              + "; take the figures as a guide.";
      case CLOSE_CONFORMITY ->
          s.name(0)
              + ": the ball's radius is "
              + s.amount(1)
              + " of the hollow's. Contact theory is good to "
              + s.amount(2)
              + "; take the figures as a guide.";
      case RING ->
          s.name(0)
              + " holds its ball by a ring, which carries all round only if ball and cone are round"
              + " to well under "
              + s.amount(1)
              + ". Then the pressure is "
              + s.amount(2)
              + "; resting on three places of the ring, "
              + s.amount(3)
              + ".";
      case LAP_RING ->
          "Lap ball and cone together, or take a trihedral seat, which has three places of its own.";
      case NEAR_EDGE -> edge(s);
      case BOTTOMS ->
          s.name(0)
              + " bottoms: the ball reaches "
              + s.amount(1)
              + " into the floor before it sits on its flanks.";
      case FLOOR_ROOM ->
          "the ball of "
              + s.name(0)
              + " clears the floor by "
              + s.beside(1, 2)
              + "; "
              + s.beside(2, 1)
              + " is required, as room for dirt.";
      case FLANKS_NOT_STATED ->
          "how far the flanks of "
              + s.name(0)
              + " reach is not stated, so their edges were not checked.";
      default -> "State mouth width and length to have them checked.";
    };
  }

  static String pressure(Spoken s) {
    return s.name(0)
        + (s.absent(1) ? " at rest" : " under " + s.name(1))
        + ": peak pressure "
        + s.beside(2, 4)
        + ", "
        + s.amount(3)
        + " of "
        + s.beside(4, 2)
        + ". From there on, "
        + s.amount(7)
        + " on this contact, "
        + s.name(5)
        + " "
        + harm((ContactLimits.Kind) s.term(6))
        + (s.si(8) == 1 ? "." : "; " + s.amount(8) + " of it may be used.");
  }

  static String harm(ContactLimits.Kind kind) {
    return switch (kind) {
      case FIRST_YIELD, FLOW_BRITTLE -> "starts to flow under the surface";
      case STATIC_BRINELLING -> "keeps a dent of about 1e-4 of the ball diameter (ISO 76)";
      case RING_CRACK -> "may crack in a ring about the patch";
      case EDGE_CRACK -> "may crack at the edge of the patch (on the safe side)";
    };
  }

  private static String edge(Spoken s) {
    String edge = ((Feature) s.term(1)).words().toLowerCase(Locale.ROOT);
    double room = s.si(2);
    double reach = s.si(3);
    return s.name(0)
        + (room < 0
            ? " would touch " + s.figures().length(-room) + " beyond the "
            : " touches " + s.amount(2) + " from the ")
        + edge
        + "; the patch extends "
        + s.amount(3)
        + ", and twice that to the edge, "
        + s.figures().length(2 * reach)
        + ", is required.";
  }
}
