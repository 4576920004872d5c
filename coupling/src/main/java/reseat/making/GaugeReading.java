package reseat.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/**
 * What is read over a round gauge in a seat, how far it may be off, and what an error of making
 * does to it.
 *
 * <p>The height over the datum of the seat needs that seat alone; the height over the centre of the
 * design's ball compares seats with each other, and needs a datum of the whole half. Both count
 * along the direction the seat opens to, to the top of the gauge. Bands are the sum of all
 * tolerances at their worst together: a reading outside shows that a tolerance is broken, a reading
 * inside does not show that each is kept.
 *
 * @param support name of the support
 * @param gauge diameter of the gauge, m
 * @param datum what the first height counts from; with {@link Datum#NONE} there is none
 * @param overDatum height of the gauge's top over the datum, m
 * @param datumBand worst departure of that height by the tolerances, m; empty without a tolerance
 *     that acts on it
 * @param overBallCentre height of the gauge's top over the centre of the design's ball, m
 * @param ballBand worst departure of that height by the tolerances, m; empty likewise
 * @param perGauge change of the height with the diameter of the gauge
 * @param perDepth change of the height over the datum with the depth of the seat, angles as drawn
 * @param perMouth change of it with the width of the mouth, angles as drawn; empty without a mouth
 * @param perAngleAtDepth change of it with the angle of all flanks together, depth as drawn, m/rad
 * @param perAngleAtMouth the same with the mouth as drawn, m/rad; empty without a mouth
 * @param perPinSpacing change with the distance between pins; zero where there are none
 * @param perPinDiameter change with the diameter of both pins; zero where there are none
 * @param misfits features that the gauge or its contacts reach over, so that it must not be used
 */
public record GaugeReading(
    String support,
    double gauge,
    Datum datum,
    double overDatum,
    OptionalDouble datumBand,
    double overBallCentre,
    OptionalDouble ballBand,
    double perGauge,
    double perDepth,
    OptionalDouble perMouth,
    double perAngleAtDepth,
    OptionalDouble perAngleAtMouth,
    double perPinSpacing,
    double perPinDiameter,
    List<SeatClearance.Feature> misfits) {

  /** What a height counts from. */
  public enum Datum {
    /** The face that the seat is cut into. */
    FACE("face"),
    /** The tops of the two pins. */
    PIN_TOPS("tops of the pins"),
    /** The flat itself. */
    PAD("flat"),
    /** Nothing at the seat is stated to measure from. */
    NONE("none");

    private final String words;

    Datum(String words) {
      this.words = words;
    }

    /**
     * Returns the datum in words.
     *
     * @return for instance {@code face}
     */
    public String words() {
      return words;
    }
  }

  /** Copies the list. */
  public GaugeReading {
    misfits = List.copyOf(misfits);
  }

  /**
   * Finds the reading.
   *
   * @param support ball and seat as designed
   * @param tolerances tolerances of the coupling
   * @param diameter diameter of the gauge, m; positive
   * @return the reading; empty if the gauge falls through or does not go in
   */
  public static Optional<GaugeReading> of(Support support, Tolerances tolerances, double diameter) {
    Seat seat = support.seat();
    RestingHeight rest;
    try {
      rest = RestingHeight.of(seat, diameter / 2);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    Optional<MouthFace> face = MouthFace.of(seat);
    Datum datum = face.isPresent() ? Datum.FACE : seat.accept(new WithoutFace());
    double pinTop = datum == Datum.PIN_TOPS ? pinTop(seat) : 0;
    double top = rest.centre() + diameter / 2;
    double overDatum = top - face.map(MouthFace::height).orElse(pinTop);
    double ballHeight = seat.frame().upward(support.ball().centre());
    double angle = sum(rest.perFlankAngle());
    boolean common = datum == Datum.FACE || datum == Datum.NONE;
    return Optional.of(
        new GaugeReading(
            support.name(),
            diameter,
            datum,
            overDatum,
            band(support, tolerances, rest, datum),
            top - ballHeight,
            band(support, tolerances, rest, Datum.NONE),
            (rest.perRadius() + 1) / 2,
            common ? -1 : 0,
            face.map(f -> OptionalDouble.of(-f.perMouth())).orElse(OptionalDouble.empty()),
            angle,
            face.map(f -> OptionalDouble.of(angle - sum(f.perFlankAngle())))
                .orElse(OptionalDouble.empty()),
            rest.perSpacing(),
            datum == Datum.PIN_TOPS ? sum(rest.perFlankRadius()) / 2 - 0.5 : 0,
            misfits(support, rest, diameter)));
  }

  /**
   * Says whether the gauge rests on the flanks alone.
   *
   * @return true if it reaches over no edge and no floor
   */
  public boolean fits() {
    return misfits.isEmpty();
  }

  private static double sum(List<Double> values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum;
  }

  private static double pinTop(Seat seat) {
    CylinderPair pins = (CylinderPair) seat;
    return (pins.leftRadius() + pins.rightRadius()) / 2;
  }

  private static OptionalDouble band(
      Support support, Tolerances tolerances, RestingHeight rest, Datum datum) {
    double sum = 0;
    boolean any = false;
    for (ToleranceKind kind : ToleranceKind.values()) {
      if (kind.carrier() != ToleranceKind.Carrier.SEATS) {
        continue;
      }
      List<String> parts = kind.partsOf(support.seat());
      double together = 0;
      for (int i = 0; i < parts.size(); i++) {
        double per = Math.abs(over(datum, rest, kind, i));
        together += per;
        Optional<Tolerance> own = tolerances.governing(kind, support.name(), parts.get(i), false);
        sum += per * own.map(t -> t.spread().limit()).orElse(0.0);
        any |= own.isPresent() && per > 0;
      }
      Optional<Tolerance> lot =
          parts.isEmpty()
              ? Optional.empty()
              : tolerances.governing(kind, support.name(), parts.get(0), true);
      sum += together * lot.map(t -> t.spread().limit()).orElse(0.0);
      any |= lot.isPresent() && together > 0;
    }
    return any ? OptionalDouble.of(sum) : OptionalDouble.empty();
  }

  /** Change of the height over a datum: the tops of pins move with their pins. */
  private static double over(Datum datum, RestingHeight rest, ToleranceKind kind, int flank) {
    double per = rest.per(kind, flank);
    if (datum == Datum.PAD || (datum == Datum.PIN_TOPS && kind == ToleranceKind.SEAT_DEPTH)) {
      return 0;
    }
    return datum == Datum.PIN_TOPS && kind == ToleranceKind.PIN_DIAMETER ? per - 0.25 : per;
  }

  private static List<SeatClearance.Feature> misfits(
      Support support, RestingHeight rest, double diameter) {
    Seat seat = support.seat();
    double along = seat.frame().along(support.ball().centre());
    Ball gauge = new Ball(seat.frame().point(along, 0, rest.centre()), diameter / 2);
    List<SeatClearance.Feature> found = new ArrayList<>();
    for (SeatClearance c : seat.clearances(gauge)) {
      if (!(c.distance() > 0) && !found.contains(c.feature())) {
        found.add(c.feature());
      }
    }
    return found;
  }

  private record WithoutFace() implements Seat.Visitor<Datum> {

    @Override
    public Datum veeGroove(VeeGroove s) {
      return Datum.NONE;
    }

    @Override
    public Datum gothicGroove(GothicGroove s) {
      return Datum.NONE;
    }

    @Override
    public Datum cylinderPair(CylinderPair s) {
      return Datum.PIN_TOPS;
    }

    @Override
    public Datum trihedralSeat(TrihedralSeat s) {
      return Datum.NONE;
    }

    @Override
    public Datum coneSeat(ConeSeat s) {
      return Datum.NONE;
    }

    @Override
    public Datum flatSeat(FlatSeat s) {
      return Datum.PAD;
    }
  }
}
