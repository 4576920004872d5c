package reseat.seat;

import java.util.Objects;

/**
 * How far a contact point, or the ball, is from a feature of the seat that it must not reach.
 *
 * @param feature which feature
 * @param flank name of the flank, or empty when the ball as a whole is meant
 * @param distance distance to the feature, m; negative when it has been passed
 */
public record SeatClearance(Feature feature, String flank, double distance) {

  /** Refuses what is missing. */
  public SeatClearance {
    Objects.requireNonNull(feature, "feature of a seat clearance must be given, found null");
    Objects.requireNonNull(flank, "flank of a seat clearance must be given, found null");
  }

  /** What the contact or the ball must keep clear of. */
  public enum Feature {
    /** The edge where the flank meets the face: contact point to edge, along the flank. */
    MOUTH_EDGE("mouth edge"),
    /** The edge of the relief at the root: contact point to edge, along the flank. */
    ROOT_EDGE("root relief"),
    /** The end of the groove, pin or pad: contact point to end, along the surface. */
    END("end"),
    /** The floor of the seat: underside of the ball to the floor. */
    FLOOR("floor");

    private final String words;

    Feature(String words) {
      this.words = words;
    }

    /**
     * Returns the feature in words.
     *
     * @return for instance {@code mouth edge}
     */
    public String words() {
      return words;
    }
  }
}
