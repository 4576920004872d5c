package reseat.making;

import java.util.Collections;
import java.util.List;
import reseat.design.ToleranceKind;
import reseat.elementary.Elementary;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/**
 * How high a round gauge rests in a seat without load, and how that height answers to the shape of
 * the seat; exact derivatives.
 *
 * <p>The gauge is a ball or, in a groove, a pin laid along it: both touch in the same cross
 * section. Heights count along the direction the seat opens to, from the seat's reference point
 * (the origin of its frame). With flanks at angles a and b to the coupling plane and a gauge of
 * radius R the centre stands at
 *
 * <pre>
 *   vee         R (sin a + sin b) / sin(a + b)        = R / cos a for equal flanks
 *   trihedral   z of the point p with n_k . p = R     = R / cos a for equal flanks
 *   cone        R / cos a
 *   pins        sqrt((R + r)² - (s/2)²)               pins of radius r, axes s apart
 *   gothic      h - sqrt((r - R)² - c²)               flanks of radius r, axes c aside and h up
 *   flat        R
 * </pre>
 *
 * <p>These follow from the distance of the centre to each flank being R; no source is needed.
 *
 * @param centre height of the gauge's centre, m
 * @param perRadius change with the radius of the gauge
 * @param perFlankAngle change with each flank's angle about the reference point, m/rad; zero where
 *     flanks are not plane
 * @param perFlankPosition change with each flank standing proud; zero where flanks are not plane
 * @param perFlankRadius change with each flank's radius, its axis staying; zero where plane
 * @param perSpacing change with the distance between pins; zero where there are none
 * @param perArchOffset change with the offset of hollow flanks; zero where there are none
 */
public record RestingHeight(
    double centre,
    double perRadius,
    List<Double> perFlankAngle,
    List<Double> perFlankPosition,
    List<Double> perFlankRadius,
    double perSpacing,
    double perArchOffset) {

  /** Copies the lists. */
  public RestingHeight {
    perFlankAngle = List.copyOf(perFlankAngle);
    perFlankPosition = List.copyOf(perFlankPosition);
    perFlankRadius = List.copyOf(perFlankRadius);
  }

  /**
   * Finds the height.
   *
   * @param seat the seat
   * @param radius radius of the gauge, m
   * @return the height
   * @throws IllegalArgumentException if the gauge falls between pins or does not go into the arch
   */
  public static RestingHeight of(Seat seat, double radius) {
    return seat.accept(new Kinds(radius));
  }

  /**
   * Returns how the height changes with one dimension of the seat.
   *
   * @param kind which dimension
   * @param flank index of the flank; ignored where the seat has the dimension once
   * @return change of the height over the deviation, m/m or m/rad, sign as {@link ToleranceKind}
   *     says; zero for what does not move the gauge up or down to first order. Slopes count as
   *     such: they lift it only where flanks are unlike, for which no drawing here provides
   */
  public double per(ToleranceKind kind, int flank) {
    return switch (kind) {
      case SEAT_DEPTH -> -1;
      case FLANK_ANGLE -> perFlankAngle.get(flank);
      case FLANK_POSITION -> perFlankPosition.get(flank);
      case FLANK_RADIUS -> perFlankRadius.get(flank);
      case PIN_DIAMETER -> perFlankRadius.get(flank) / 2;
      case PIN_SPACING -> perSpacing;
      case ARCH_OFFSET -> perArchOffset;
      case BALL_DIAMETER,
          BALL_FORM,
          BALL_ACROSS,
          BALL_ALONG,
          BALL_HEIGHT,
          SEAT_ACROSS,
          SEAT_ALONG,
          SEAT_DIRECTION,
          SEAT_PITCH,
          SEAT_ROLL,
          TOOL_POINT,
          TEMPERATURE ->
          0;
    };
  }

  private record Kinds(double radius) implements Seat.Visitor<RestingHeight> {

    @Override
    public RestingHeight veeGroove(VeeGroove s) {
      double sinLeft = Elementary.sin(s.leftAngle());
      double sinRight = Elementary.sin(s.rightAngle());
      double sum = Elementary.sin(s.leftAngle() + s.rightAngle());
      double cosine = Elementary.cos(s.leftAngle() + s.rightAngle());
      double perRadius = (sinLeft + sinRight) / sum;
      return plane(
          radius * perRadius,
          List.of(
              radius * (Elementary.cos(s.leftAngle()) - perRadius * cosine) / sum,
              radius * (Elementary.cos(s.rightAngle()) - perRadius * cosine) / sum),
          List.of(sinRight / sum, sinLeft / sum));
    }

    @Override
    public RestingHeight trihedralSeat(TrihedralSeat s) {
      return three(s.firstAngle(), s.secondAngle(), s.thirdAngle());
    }

    /** A cone as its three thirds, each with a third of its effect. */
    @Override
    public RestingHeight coneSeat(ConeSeat s) {
      return three(s.angle(), s.angle(), s.angle());
    }

    private RestingHeight three(double... angle) {
      Vec3[] normal = new Vec3[3];
      Vec3[] steeper = new Vec3[3];
      for (int k = 0; k < 3; k++) {
        Vec3 push = Vec3.atAzimuth(k * 2 * Math.PI / 3);
        normal[k] =
            push.times(Elementary.sin(angle[k])).plus(Vec3.Z.times(Elementary.cos(angle[k])));
        steeper[k] =
            push.times(Elementary.cos(angle[k])).minus(Vec3.Z.times(Elementary.sin(angle[k])));
      }
      double volume = normal[0].dot(normal[1].cross(normal[2]));
      Vec3 centre = Vec3.ZERO;
      Double[] perProud = new Double[3];
      for (int k = 0; k < 3; k++) {
        Vec3 lifts = normal[(k + 1) % 3].cross(normal[(k + 2) % 3]).times(1 / volume);
        centre = centre.plus(lifts.times(radius));
        perProud[k] = lifts.z();
      }
      Double[] perAngle = new Double[3];
      for (int k = 0; k < 3; k++) {
        perAngle[k] = -steeper[k].dot(centre) * perProud[k];
      }
      return plane(centre.z(), List.of(perAngle), List.of(perProud));
    }

    @Override
    public RestingHeight flatSeat(FlatSeat s) {
      return plane(radius, List.of(0.0), List.of(1.0));
    }

    private RestingHeight plane(double height, List<Double> perAngle, List<Double> perProud) {
      List<Double> none = Collections.nCopies(perAngle.size(), 0.0);
      return new RestingHeight(height, height / radius, perAngle, perProud, none, 0, 0);
    }

    @Override
    public RestingHeight cylinderPair(CylinderPair s) {
      BetweenAxes b =
          BetweenAxes.of(s.spacing() / 2, radius + s.leftRadius(), radius + s.rightRadius());
      List<Double> none = List.of(0.0, 0.0);
      return new RestingHeight(
          b.height(),
          b.perFirst() + b.perSecond(),
          none,
          none,
          List.of(b.perFirst(), b.perSecond()),
          b.perHalfSpacing() / 2,
          0);
    }

    @Override
    public RestingHeight gothicGroove(GothicGroove s) {
      BetweenAxes b =
          BetweenAxes.of(s.axisOffset(), s.leftRadius() - radius, s.rightRadius() - radius);
      List<Double> none = List.of(0.0, 0.0);
      return new RestingHeight(
          s.axisHeight() - b.height(),
          b.perFirst() + b.perSecond(),
          none,
          none,
          List.of(-b.perFirst(), -b.perSecond()),
          0,
          -b.perHalfSpacing());
    }
  }

  /**
   * Height over the middle between two parallel axes of the point that has given distances to both,
   * with its derivatives.
   */
  private record BetweenAxes(
      double height, double perFirst, double perSecond, double perHalfSpacing) {

    static BetweenAxes of(double halfSpacing, double first, double second) {
      double aside = (second * second - first * first) / (4 * halfSpacing);
      double toFirst = halfSpacing - aside;
      double square = first * first - toFirst * toFirst;
      if (!(first > 0) || !(square > 0)) {
        throw new IllegalArgumentException(
            "the gauge finds no place between the flanks: it falls through or does not go in");
      }
      double height = Math.sqrt(square);
      double toSecond = halfSpacing + aside;
      return new BetweenAxes(
          height,
          first * toSecond / (2 * halfSpacing * height),
          second * toFirst / (2 * halfSpacing * height),
          -toFirst * toSecond / (halfSpacing * height));
    }
  }
}
