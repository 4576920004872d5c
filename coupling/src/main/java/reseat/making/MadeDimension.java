package reseat.making;

import reseat.units.PrintedNumber;

/**
 * One size of a feature, as the design has it.
 *
 * @param kind which size
 * @param part the flank, pin or machine axis it belongs to; empty if it is the feature's own
 * @param value the size, m or rad
 * @param tolerance how far it may depart to either side, m or rad; infinite if not stated
 */
public record MadeDimension(Kind kind, String part, double value, double tolerance) {

  /** Which size is meant. */
  public enum Kind {
    /** Diameter of a ball, pin or pad, m. */
    DIAMETER("diameter"),
    /** Width of a groove at the face, m. */
    MOUTH_WIDTH("mouth width"),
    /** Diameter of the circle inscribed in the mouth of a trihedral seat, m. */
    MOUTH_CIRCLE("circle inscribed in mouth"),
    /** Diameter of the circle inscribed in the relief of a trihedral seat, m. */
    ROOT_CIRCLE("circle inscribed in root relief"),
    /** Diameter of the mouth of a cone, m. */
    MOUTH_DIAMETER("mouth diameter"),
    /** Diameter of the relief at the root of a cone, m. */
    ROOT_DIAMETER("root diameter"),
    /** Length of a groove or of pins, m. */
    LENGTH("length"),
    /** From the face to the line or point where the flanks would meet, m. */
    DEPTH("depth to sharp root"),
    /** From the face to the floor of the relief, m. */
    FLOOR_DEPTH("depth to floor"),
    /** Width of the relief at the root, m. */
    ROOT_WIDTH("root width"),
    /** From the face up to the centre of the ball, m; negative if it lies below the face. */
    BALL_OVER_FACE("ball centre over face"),
    /** From the axes of a pair of pins up to the centre of the ball, m. */
    BALL_OVER_AXES("ball centre over pin axes"),
    /** From a flat up to the centre of the ball, m. */
    BALL_OVER_FLAT("ball centre over flat"),
    /** Between a flank and the coupling plane, rad. */
    FLANK_ANGLE("flank angle"),
    /** Of a plane flank along its normal, against its nominal place, m. */
    FLANK_POSITION("flank position"),
    /** Radius of a hollow flank, m. */
    FLANK_RADIUS("flank radius"),
    /** Distance of the axis of a hollow flank from the middle of the groove, m. */
    ARCH_OFFSET("axis from middle"),
    /** Depth of the hardened case after finishing, m. */
    CASE_DEPTH("hard to at least"),
    /** Distance between the axes of a pair of pins, m. */
    SPACING("spacing of axes"),
    /** From the axes of a pair of pins down to the floor of their pocket, m. */
    POCKET_DEPTH("pocket floor below axes"),
    /** From the face of the body to the centre of the ball, m. */
    STICK_OUT("stick-out to ball centre"),
    /** Diameter of the neck of a stud, m. */
    NECK_DIAMETER("neck diameter"),
    /** Nominal diameter of a thread, m. */
    THREAD_DIAMETER("thread diameter"),
    /** Length of full thread engaged, m. */
    ENGAGEMENT("thread engaged"),
    /** Coordinate along a machine axis, m. */
    MACHINE_COORDINATE("along machine axis");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * Returns the kind in words.
     *
     * @return for instance {@code mouth width}
     */
    public String words() {
      return words;
    }

    /**
     * Says what the size is measured in.
     *
     * @return true for an angle, false for a length
     */
    public boolean isAngle() {
      return this == FLANK_ANGLE;
    }
  }

  /** Refuses what is no size. */
  public MadeDimension {
    if (!Double.isFinite(value) || !(tolerance >= 0)) {
      throw new IllegalArgumentException(
          kind.words()
              + " must be finite and its tolerance not negative, found "
              + PrintedNumber.shortest(value));
    }
  }

  /**
   * Says whether the design states a tolerance.
   *
   * @return true if it does
   */
  public boolean isToleranced() {
    return Double.isFinite(tolerance);
  }
}
