package reseat.design;

import java.util.ArrayList;
import java.util.List;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.Flank;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/**
 * What can be made wrong: one kind of dimension, with the sign of its deviation.
 *
 * <p>Along, across and up are the directions of the seat's frame ({@code axis}, {@code left},
 * {@code up}), for balls as for seats; a seat turns about its own reference point, the origin of
 * that frame. A positive deviation acts as the words beside each kind say.
 */
public enum ToleranceKind {
  /** Diameter of a ball; positive is larger. */
  BALL_DIAMETER("ball diameter", Measure.LENGTH, Carrier.BALLS, Scope.SUPPORT),
  /** Departure of a ball from roundness at one contact; positive where the ball is proud. */
  BALL_FORM("ball form", Measure.LENGTH, Carrier.BALLS, Scope.FLANK),
  /** Position of a ball across its groove; positive is to the left. */
  BALL_ACROSS("ball position across", Measure.LENGTH, Carrier.BALLS, Scope.SUPPORT),
  /** Position of a ball along its groove; positive along the axis. */
  BALL_ALONG("ball position along", Measure.LENGTH, Carrier.BALLS, Scope.SUPPORT),
  /** Height of a ball; positive away from the seat. */
  BALL_HEIGHT("ball height", Measure.LENGTH, Carrier.BALLS, Scope.SUPPORT),
  /** Position of a seat across itself; positive is to the left. */
  SEAT_ACROSS("seat position across", Measure.LENGTH, Carrier.SEATS, Scope.SUPPORT),
  /** Position of a seat along itself; positive along the axis. */
  SEAT_ALONG("seat position along", Measure.LENGTH, Carrier.SEATS, Scope.SUPPORT),
  /** Depth of a seat, for a flat its height downward; positive is deeper. */
  SEAT_DEPTH("seat depth", Measure.LENGTH, Carrier.SEATS, Scope.SUPPORT),
  /** Direction of a seat; positive turns its axis to the left. */
  SEAT_DIRECTION("seat direction", Measure.ANGLE, Carrier.SEATS, Scope.SUPPORT),
  /** Slope of a seat along itself; positive lowers the far end of the axis. */
  SEAT_PITCH("seat slope along", Measure.ANGLE, Carrier.SEATS, Scope.SUPPORT),
  /** Slope of a seat across itself; positive raises the left side. */
  SEAT_ROLL("seat slope across", Measure.ANGLE, Carrier.SEATS, Scope.SUPPORT),
  /** Angle of one plane flank, or of a cone, about the apex; positive is steeper. */
  FLANK_ANGLE("flank angle", Measure.ANGLE, Carrier.SEATS, Scope.FLANK),
  /** Position of one plane flank along its normal; positive is proud, toward the ball. */
  FLANK_POSITION("flank position", Measure.LENGTH, Carrier.SEATS, Scope.FLANK),
  /** Diameter of one pin of a pair; positive is larger. */
  PIN_DIAMETER("pin diameter", Measure.LENGTH, Carrier.SEATS, Scope.FLANK),
  /** Distance between the axes of a pair of pins; positive is wider. */
  PIN_SPACING("pin spacing", Measure.LENGTH, Carrier.SEATS, Scope.SUPPORT),
  /** Radius of one hollow flank, its axis staying in place; positive is larger. */
  FLANK_RADIUS("flank radius", Measure.LENGTH, Carrier.SEATS, Scope.FLANK),
  /** Distance of the axes of hollow flanks from the middle; positive is farther. */
  ARCH_OFFSET("arch offset", Measure.LENGTH, Carrier.SEATS, Scope.SUPPORT),
  /** Place of the tool point in its holder along one machine axis. */
  TOOL_POINT("tool point", Measure.LENGTH, Carrier.TOOL, Scope.MACHINE_AXIS),
  /** Temperature of the holder less that of the base; positive is a warmer holder. */
  TEMPERATURE("holder temperature", Measure.TEMPERATURE, Carrier.OCCASION, Scope.WHOLE);

  /** What a deviation is measured in. */
  public enum Measure {
    /** Length, m. */
    LENGTH,
    /** Angle, rad. */
    ANGLE,
    /** Temperature difference, K. */
    TEMPERATURE
  }

  /** What carries a deviation. */
  public enum Carrier {
    /** The half that carries the balls. */
    BALLS,
    /** The half that carries the seats. */
    SEATS,
    /** The tool in its holder. */
    TOOL,
    /** Neither half, but the time at which the holder is used. */
    OCCASION
  }

  /** What has one such dimension each. */
  public enum Scope {
    /** Every support. */
    SUPPORT,
    /** Every flank of a seat. */
    FLANK,
    /** Every machine axis. */
    MACHINE_AXIS,
    /** The coupling as a whole. */
    WHOLE
  }

  private final String words;
  private final Measure measure;
  private final Carrier carrier;
  private final Scope scope;

  ToleranceKind(String words, Measure measure, Carrier carrier, Scope scope) {
    this.words = words;
    this.measure = measure;
    this.carrier = carrier;
    this.scope = scope;
  }

  /**
   * Returns the kind in words.
   *
   * @return for instance {@code ball diameter}
   */
  public String words() {
    return words;
  }

  /**
   * Returns what a deviation is measured in.
   *
   * @return the measure
   */
  public Measure measure() {
    return measure;
  }

  /**
   * Returns what carries a deviation.
   *
   * @return the carrier
   */
  public Carrier carrier() {
    return carrier;
  }

  /**
   * Returns what has one such dimension each.
   *
   * @return the scope
   */
  public Scope scope() {
    return scope;
  }

  /**
   * Returns the flanks of a seat that have this dimension.
   *
   * @param seat the seat
   * @return names of flanks, empty if the seat has no such flank; for a kind that every support has
   *     once, a single empty name if this kind of seat has it
   */
  public List<String> partsOf(Seat seat) {
    if (scope == Scope.MACHINE_AXIS || scope == Scope.WHOLE || !seat.accept(new Applies(this))) {
      return List.of();
    }
    if (scope == Scope.SUPPORT) {
      return List.of("");
    }
    List<String> names = new ArrayList<>();
    for (Flank flank : seat.flanks()) {
      names.add(flank.name());
    }
    return names;
  }

  private record Applies(ToleranceKind kind) implements Seat.Visitor<Boolean> {

    private boolean anySeat() {
      return switch (kind) {
        case FLANK_ANGLE, FLANK_POSITION, PIN_DIAMETER, PIN_SPACING, FLANK_RADIUS, ARCH_OFFSET ->
            false;
        default -> true;
      };
    }

    private boolean planeFlanks() {
      return kind == FLANK_ANGLE || kind == FLANK_POSITION;
    }

    @Override
    public Boolean veeGroove(VeeGroove seat) {
      return anySeat() || planeFlanks();
    }

    @Override
    public Boolean gothicGroove(GothicGroove seat) {
      return anySeat() || kind == FLANK_RADIUS || kind == ARCH_OFFSET;
    }

    @Override
    public Boolean cylinderPair(CylinderPair seat) {
      return anySeat() || kind == PIN_DIAMETER || kind == PIN_SPACING;
    }

    @Override
    public Boolean trihedralSeat(TrihedralSeat seat) {
      return anySeat() || planeFlanks();
    }

    @Override
    public Boolean coneSeat(ConeSeat seat) {
      return anySeat() || planeFlanks();
    }

    @Override
    public Boolean flatSeat(FlatSeat seat) {
      return anySeat() || kind == FLANK_POSITION;
    }
  }
}
