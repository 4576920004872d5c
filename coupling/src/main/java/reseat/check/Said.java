package reseat.check;

/**
 * Everything that findings say. Behind each constant stand the arguments of its {@link Statement}:
 * {@code n} a name, {@code t} a term, {@code s} a statement, else the measure of an amount.
 */
public enum Said {
  /** Nothing to say. */
  NOTHING,

  // --- contact pressure ---
  /**
   * Peak pressure against its limit: n contact, n load case (empty at rest), pressure found, share
   * of the limit, pressure limit, n material, t kind of limit, force at that limit, share that may
   * be used, t body (first: ball, second: seat).
   */
  PRESSURE,
  /**
   * Peak pressure against a ring crack: the arguments of {@link #PRESSURE}, then length of the
   * flaws it was judged for, length of a flaw from which a crack would run at this pressure, factor
   * of friction.
   */
  RING_CRACK,
  /**
   * A pressure beyond first flow: the arguments of {@link #PRESSURE}, then t state of the dent,
   * force on the contact, length of its diameter, length of its depth, length of its lip, length
   * that the tool point loses by all dents, stiffness after work-in at that force, count (1: an
   * ellipse, an estimate).
   */
  DENTED,
  /** Seat it many times before setting: factor of the greatest force. */
  WORK_IN,
  /** Polish, and look for scratches: length of the deepest. */
  POLISH,
  /** No strength known: n materials. */
  STRENGTH_UNKNOWN,
  /** State yield strength, or hardness and toughness. */
  STATE_STRENGTH,

  // --- case depth ---
  /** Depth of the layer: n support, length depth, length of greatest shear, length wanted. */
  CASE_DEPTH,

  // --- constraint ---
  /** More contacts than motions: count. */
  OVER_CONSTRAINED,
  /** Motions stay free: count contacts, count held, count free, s the weakest motion. */
  MOTION_FREE,
  /** All motions are held, one barely: s the weakest motion, factor found, factor limit. */
  BARELY_HELD,
  /** All motions are held, several barely: s one of the weakest, factor found, factor limit. */
  BARELY_HELD_SEVERAL,
  /** All motions are held: factor found, factor limit. */
  ALL_HELD,
  /** A free or weak motion: n its words. */
  MOTION,

  // --- error motion ---
  /** Motion under a load: n case, n axis, length sticking, length sliding, length target. */
  ERROR_MOTION,

  // --- groove direction ---
  /** Grooves run along the bisectors. */
  GROOVES_ON_BISECTORS,
  /** A groove runs off its bisector: n support, angle off, angle of the bisector, share lost. */
  GROOVE_OFF_BISECTOR,
  /** Turn the grooves toward the bisectors: n list of supports with their angles. */
  TURN_TO_BISECTORS,

  // --- contact theory ---
  /** Patch over radius: n contact, share found, share limit. */
  PATCH_OVER_RADIUS,
  /** Ball too close in a hollow: n contact, share found, share limit. */
  CLOSE_CONFORMITY,

  // --- lift-off ---
  /** A contact does not press at rest: n contact, force of pull (0: carries nothing). */
  NOT_PRESSED,
  /** A case lifts a contact off: n case, n contact, share of the load, factor required. */
  LIFTS_OFF,
  /** A case keeps its factor: n case, n contact, factor found, factor required. */
  LIFT_OFF_FACTOR,
  /** Little force left: n case, share left, share usual. */
  LITTLE_FORCE_LEFT,

  // --- load inside triangle ---
  /** Resultant inside: n case (empty at rest), length to the edge, n edge. */
  LOAD_INSIDE,
  /** Resultant outside: n case (empty at rest), length beyond the edge, n edge. */
  LOAD_OUTSIDE,
  /** Widen the triangle, move or raise the preload. */
  WIDEN_TRIANGLE,

  // --- preload line ---
  /** How far a line may move: n preload, length allowed, n contact that opens, length wandered. */
  PRELOAD_LINE,

  // --- preload scatter ---
  /** Scatter moves the tool: share scatter, length moved, n axis, length target (0: none). */
  PRELOAD_SCATTER,
  /** State targets. */
  STATE_TARGETS,

  // --- preload device ---
  /**
   * What to set: n preload, force, s setting, s band, share from mount to mount, n basis of that,
   * share from device to device, ratio per kelvin (factor).
   */
  DEVICE_SETTING,
  /** A setting of a device: t quantity that is set, its amount in the SI unit. */
  SETTING,
  /**
   * Allowed and aimed for: force least, force most, s setting at least ({@link #NOTHING}: cannot be
   * set so low), s setting at most.
   */
  BAND_AIM,
  /** Allowed, too narrow for the scatter: force least, force most. */
  BAND_TOO_NARROW,
  /** Allowed, but out of reach of the device: force least, force most. */
  BAND_OUT_OF_REACH,
  /** As much as the device gives. */
  ALL_IT_GIVES,
  /** Measure the force or take a closer device: share wanted. */
  MEASURE_FORCE,
  /** A caution on a device: n preload, t caution, stored energy in J (factor; 0: not told). */
  DEVICE_CAUTION,

  // --- ring of contact ---
  /** A ring: n support, length that it sinks, pressure all round, pressure on three places. */
  RING,
  /** Lap ball and cone, or take a trihedral seat. */
  LAP_RING,

  // --- seat fit ---
  /** Contact near an edge: n contact, t feature, length from the edge (negative beyond), reach. */
  NEAR_EDGE,
  /** The ball bottoms: n support, length. */
  BOTTOMS,
  /** Room under the ball: n support, length found, length wanted. */
  FLOOR_ROOM,
  /** Flanks not stated: n supports. */
  FLANKS_NOT_STATED,
  /** State mouth and length. */
  STATE_FLANKS,

  // --- self-seating ---
  /**
   * Friction up to which the holder seats: factor moving, factor at rest (infinite: not looked at),
   * n contact that closes last, factor expected low, factor expected high.
   */
  SEATS_BELOW,
  /** As {@link #SEATS_BELOW}, without any limit within what was looked at. */
  SEATS_ALWAYS,

  // --- stiffness ---
  /** Mountings give most: share, share usual, n axis. */
  MOUNTINGS_GIVE,
  /** Shorten studs. */
  SHORTEN_STUDS,
  /**
   * Softest axis: n axis, stiffness, n spring that gives most, t kind of that spring (support: its
   * ball mounting; contact), share.
   */
  SOFTEST_AXIS,

  // --- ball stud ---
  /**
   * Stress of a stud: n support, stiffness sideways, stiffness along, pressure found, n load
   * (empty: the load that stays), share of yield, pressure yield, n material.
   */
  STUD_STRESS,
  /** As {@link #STUD_STRESS}, yield not known: the first five, and n material. */
  STUD_STRESS_UNJUDGED,
  /** State the yield strength. */
  STATE_YIELD,
  /** Thicken or shorten the neck. */
  THICKEN_NECK,

  // --- stud thread ---
  /** Thread not judged: n thread, n support, n screw material, n body material. */
  THREAD_UNJUDGED,
  /** State tensile strengths. */
  STATE_TENSILE,
  /** Thread does not hold itself: n thread, n support. */
  THREAD_SLIPS,
  /** Lock it or take a finer pitch. */
  LOCK_THREAD,
  /** Thread bears: n thread, n support, force capacity, t weakest, force, factor wanted. */
  THREAD_BEARS,
  /** Tighten less or take a stronger screw. */
  TIGHTEN_LESS,
  /** Engage more: length for the factor wanted, length so that the screw breaks first. */
  ENGAGE_MORE,

  // --- height setting ---
  /** Nut does not take up play: n support, force of the nut, force that presses. */
  NUT_TOO_LOOSE,
  /** Tighten the nut more. */
  TIGHTEN_NUT,
  /** Nut moves the ball: n support, length least, length most, length left, length wanted (0). */
  NUT_SHIFT,
  /** Set, lock, read, correct. */
  SET_LOCK_READ,
  /** Finest turn: n support, length, length wanted. */
  HAND_STEP,
  /** Finer pitch. */
  FINER_PITCH,

  // --- bond ---
  /**
   * Use of a bond: n support, share used, n load (empty: the load that stays), n adhesive, force.
   */
  BOND_USE,
  /** Larger area or metal to metal. */
  BOND_MORE,
  /** Caution on a bond: n support, t caution, length of gap or share, limit in the same measure. */
  BOND_CAUTION,

  // --- pivot seat and film pad ---
  /**
   * Pressure in a pivot: n seat, n load, force, force sideways (0: none), pressure, share, limit.
   */
  PIVOT_PRESSURE,
  /**
   * Pressure in a pivot not judged: n seat, n load, force, force sideways, pressure, n ball, n seat
   * material.
   */
  PIVOT_UNJUDGED,
  /** A load draws the ball out: n load, n seat. */
  DRAWN_OUT,
  /** A load takes the ball from its seat: n load, n seat, force sideways, force that opens. */
  LEAVES_PIVOT,
  /** Press harder. */
  PRESS_HARDER,
  /** State a yield strength. */
  STATE_PIVOT_YIELD,
  /** Larger ball, harder seat, less force. */
  EASE_PIVOT,
  /** More than three points: n seat. */
  PIVOT_OVER_DETERMINED,
  /** Take a trihedral seat. */
  TAKE_TRIHEDRAL,
  /** Held by friction only: n seat. */
  PIVOT_BY_FRICTION,
  /** Guide sideways. */
  GUIDE_SIDEWAYS,
  /**
   * Tilt held: angle held, length off, angle allowed (0: none stated), factor held over allowed (0
   * then).
   */
  PAD_TILT,
  /** Cures of a pad: t remedy, one or more. */
  PAD_CURES,
  /** Film taken at the edge: share. */
  PAD_EDGE,
  /** Do not run the pad. */
  DO_NOT_RUN,
  /** Pivot against film: factor, stiffness pivot, stiffness film, stiffness together, share. */
  PAD_STIFFNESS,

  // --- clearance ---
  /** Gap of what must not touch: n part, length of gap, length required. */
  GAP,

  // --- repeatability and seating in use ---
  /**
   * Half-width at the target's coverage: n axis, length half-width, length target, n coverage, t
   * road (closed form or simulated), count of simulated changes (0: none).
   */
  REPEATABILITY,
  /** As {@link #REPEATABILITY}, too near to tell: the same arguments. */
  AT_THE_TARGET,
  /** Tool changes that hang up: share, count of changes, count of those that hang up. */
  HANG_UP,
  /** A force by hand that closes it, tried: force now, force needed (0: none within reach). */
  SEATS_WITH,
  /** Tool changes surely seat: closed form. */
  SURELY_SEATS,
  /** Tool changes were not simulated although seating is in doubt. */
  SEATING_NOT_LOOKED_AT,
  /** Holders that do not fit their post: count of those, count of all. */
  HOLDERS_MISFIT,
  /** Holders about their mean: n axis, length half-width, length wanted, n coverage as written. */
  HOLDERS_APART,
  /** Cause that gives most of the scatter: n axis, t cause, share. */
  MOSTLY_FROM,

  // --- doubts about the input ---
  /** A value is unusual: n key, n what is doubted, usual and probably meant. */
  UNUSUAL_VALUE,
  /** Mend the value, or accept it in the file: n how. */
  MEND_OR_ACCEPT,
  /** A result rests on what is not stated: n key, n value, n source, share. */
  RESTS_ON,
  /** State it in the file: n key. */
  STATE_IT,
  /** An acceptance applies to nothing: n check, n place. */
  ACCEPTANCE_UNUSED,
  /** An acceptance lapsed: amounts found and accepted. */
  ACCEPTANCE_LAPSED,

  // --- designs tried in numbers ---
  /** Refused by the reader of files or by the solver: n message. */
  REFUSED,
  /** Circle about the balls larger than wanted: length found, length wanted. */
  TOO_LARGE,
  /** Tool point softer than wanted along its softest axis: stiffness found, stiffness wanted. */
  TOO_SOFT,
  /** The seats of the file do not make this layout. */
  LAYOUT_NOT_MADE;

  /**
   * Says whether this, as advice, is a matter of handling, of what is to be stated, or a plain
   * fact, or was tried: such advice needs no further trial. Any other change of a design is told
   * only where the whole check was run on it.
   *
   * @return true if it may stand as it is
   */
  public boolean isHandling() {
    return switch (this) {
      case STATE_STRENGTH,
          WORK_IN,
          POLISH,
          STATE_TARGETS,
          STATE_FLANKS,
          STATE_YIELD,
          STATE_TENSILE,
          STATE_PIVOT_YIELD,
          SET_LOCK_READ,
          LOCK_THREAD,
          MEASURE_FORCE,
          MOSTLY_FROM,
          MEND_OR_ACCEPT,
          SEATS_WITH,
          ACCEPTANCE_LAPSED,
          DO_NOT_RUN ->
          true;
      default -> false;
    };
  }
}
