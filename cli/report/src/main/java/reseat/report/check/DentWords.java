package reseat.report.check;

import reseat.contact.ContactLimits;
import reseat.contact.Dent;

/** What is said of contacts past first yield, and of ring cracks. */
public final class DentWords {

  private DentWords() {}

  /**
   * Names the state of a contact's surfaces.
   *
   * @param surface the state
   * @return a few words
   */
  public static String surface(ContactLimits.Surface surface) {
    return switch (surface) {
      case ELASTIC -> "elastic";
      case SETTLES -> "settles";
      case DENTS -> "dents";
      case DENTS_FULLY -> "dents fully";
      case MAY_CRACK -> "may crack";
      case CRACKS -> "cracks";
    };
  }

  /** What a ring crack needs. */
  static String ringCrack(Spoken s) {
    boolean beyond = s.si(3) > 1;
    return ContactWords.pressure(s)
        + (beyond
            ? " A crack may run from a scratch deeper than "
                + s.amount(11)
                + " (judged for "
                + s.amount(10)
                + ", friction "
                + s.amount(12)
                + ")."
            : " Judged for scratches of " + s.amount(10) + " and friction " + s.amount(12) + ".");
  }

  /** What a load leaves behind. */
  static String dented(Spoken s) {
    Dent.State state = (Dent.State) s.term(10);
    String where =
        s.name(0) + (s.absent(1) ? "" : " under " + s.name(1)) + " (" + s.amount(11) + "): ";
    return where
        + switch (state) {
          case ELASTIC -> "stays elastic, no mark.";
          case SETTLES ->
              "settles by about "
                  + rough(s, s.si(13))
                  + " at the first mount, then springs back every time; nothing to see.";
          case DENTS ->
              "dents the "
                  + s.name(5)
                  + ", about "
                  + rough(s, s.si(12))
                  + " across and "
                  + rough(s, s.si(13))
                  + " deep, at the first pull. The tool point then stands "
                  + rough(s, s.si(15))
                  + " off and stays there.";
          case DENTS_FULLY ->
              "sinks into the "
                  + s.name(5)
                  + " like a Brinell ball, about "
                  + rough(s, s.si(12))
                  + " across and "
                  + rough(s, s.si(13))
                  + " deep, with a raised lip of up to "
                  + rough(s, s.si(14))
                  + ". No precision seat.";
        }
        + (state.compareTo(Dent.State.DENTS) >= 0
            ? " After work-in the contact has " + s.amount(16) + " at that force."
            : "")
        + " It "
        + (s.term(6) == ContactLimits.Kind.STATIC_BRINELLING
            ? "is beyond the static limit of ball bearings (ISO 76) from " + s.amount(7) + " on"
            : "flows from " + s.amount(7) + " on")
        + ": "
        + s.amount(2)
        + " by the elastic theory, "
        + s.amount(3)
        + " of "
        + s.amount(4)
        + (s.si(17) > 0 ? ". Dent of an ellipse: an estimate." : ".");
  }

  /** A length to one figure: more is not known of a dent. */
  private static String rough(Spoken s, double length) {
    return s.figures().rough(length);
  }
}
