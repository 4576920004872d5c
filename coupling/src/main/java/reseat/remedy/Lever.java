package reseat.remedy;

/**
 * What a remedy may change. What is asked of the coupling is no lever: targets, load cases, masses,
 * accepted decisions.
 */
public enum Lever {
  /** Force of all preloads. */
  PRELOAD,
  /** Place of the line of pull. */
  LINE_OF_PULL,
  /** Direction of the pull. */
  DIRECTION_OF_PULL,
  /** Diameter of all balls, in stock, the seats cut anew. */
  BALL,
  /** Flank angle of all grooves. */
  FLANK_ANGLE,
  /** Flank angle of the seat that holds its ball at three places or all round. */
  FIRST_SEAT_ANGLE,
  /** Spacing of all pins. */
  PIN_SPACING,
  /** Diameter of all pins, in stock, spaced for the same contact angle. */
  PINS,
  /** Diameter of the circle through the ball centres. */
  CIRCLE,
  /** Place of the first ball on the circle, all supports turned alike. */
  TURN,
  /** Directions of the grooves, to the bisectors. */
  GROOVE_DIRECTION,
  /** Material of all balls. */
  BALL_MATERIAL,
  /** Material of all seats. */
  SEAT_MATERIAL,
  /** Diameter of the neck of the studs. */
  NECK,
  /** Free length of the studs. */
  STICK_OUT,
  /** Scatter of the preloads from mount to mount. */
  PRELOAD_SCATTER,
  /** How far the lines of pull wander. */
  LINE_WANDER,
  /** Force by hand while it seats. */
  SEATING_FORCE,
  /** Scatter of the temperature of the holder against the base. */
  TEMPERATURE,
  /** Adhesive of the bonds. */
  ADHESIVE,
  /** Area of the bonds. */
  BOND_AREA,
  /** Gap of the bonds. */
  BOND_GAP,
  /** What the seats are lubricated with. */
  LUBRICATION,
  /** Length of engagement of the threads. */
  ENGAGEMENT,
  /** Tightening torque of the lock nuts. */
  LOCK_TORQUE,
  /** Width of the seats at their mouth. */
  MOUTH,
  /** Width of the relief at the root of the seats. */
  RELIEF,
  /** Length of the grooves and pins. */
  SEAT_LENGTH,
  /** Room under the balls. */
  SEAT_DEPTH,
  /** Depth of the hard layer of the seats. */
  CASE_DEPTH,
  /** Gaps of what must not touch. */
  CLEARANCE
}
