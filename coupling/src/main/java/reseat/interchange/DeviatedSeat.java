package reseat.interchange;

import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Pose;
import reseat.space.Vec3;

/**
 * Makes a seat with given deviations.
 *
 * <p>A plane flank that stands proud moves the apex so that this flank alone shifts along its
 * normal. A proud spot of the ball on a cylinder is taken as a larger pin or a smaller hollow.
 */
final class DeviatedSeat implements Seat.Visitor<Seat> {

  private final SeatFrame frame;
  private final double[] angle;
  private final double[] position;
  private final double[] radius;
  private final double[] form;
  private final double spacing;
  private final double arch;
  private final double growth;

  /**
   * Takes the deviations.
   *
   * @param frame axes of the seat as made, before growth
   * @param angle change of each flank's angle, rad
   * @param position how far each flank stands proud, m
   * @param radius change of each flank's radius, m
   * @param form how far the ball stands proud at each flank, m
   * @param spacing change of the spacing of pins, m
   * @param arch change of the offset of hollow flanks' axes, m
   * @param growth factor by which all lengths grow about the origin
   */
  DeviatedSeat(
      SeatFrame frame,
      double[] angle,
      double[] position,
      double[] radius,
      double[] form,
      double spacing,
      double arch,
      double growth) {
    this.frame = frame;
    this.angle = angle;
    this.position = position;
    this.radius = radius;
    this.form = form;
    this.spacing = spacing;
    this.arch = arch;
    this.growth = growth;
  }

  static SeatFrame turned(SeatFrame f, Vec3 origin, Vec3 turn) {
    Pose p = Pose.of(turn, Vec3.ZERO);
    return new SeatFrame(origin, p.rotate(f.axis()), p.rotate(f.up()));
  }

  private SeatFrame grown(Vec3 shift) {
    return frame.at(frame.origin().plus(shift).times(growth));
  }

  private GrooveExtent grown(GrooveExtent e) {
    return new GrooveExtent(
        e.mouthWidth() * growth,
        e.length() * growth,
        e.rootWidth() * growth,
        e.rootDepth() * growth);
  }

  private double proud(int flank) {
    return position[flank] + form[flank];
  }

  /** The shift v with n1.v = e1, n2.v = e2, n3.v = e3. */
  private static Vec3 shift(Vec3 n1, double e1, Vec3 n2, double e2, Vec3 n3, double e3) {
    Vec3 sum = n2.cross(n3).times(e1).plus(n3.cross(n1).times(e2)).plus(n1.cross(n2).times(e3));
    return sum.times(1 / n1.dot(n2.cross(n3)));
  }

  @Override
  public Seat veeGroove(VeeGroove seat) {
    VeeGroove turned =
        new VeeGroove(
            frame, seat.leftAngle() + angle[0], seat.rightAngle() + angle[1], seat.extent());
    Vec3 left = turned.flanks().get(0).normal(Vec3.ZERO);
    Vec3 right = turned.flanks().get(1).normal(Vec3.ZERO);
    Vec3 apex = shift(left, proud(0), right, proud(1), frame.axis(), 0);
    return new VeeGroove(
        grown(apex), turned.leftAngle(), turned.rightAngle(), grown(seat.extent()));
  }

  @Override
  public Seat gothicGroove(GothicGroove seat) {
    return new GothicGroove(
        grown(Vec3.ZERO),
        (seat.leftRadius() + radius[0] - form[0]) * growth,
        (seat.rightRadius() + radius[1] - form[1]) * growth,
        (seat.axisOffset() + arch) * growth,
        seat.axisHeight() * growth,
        grown(seat.extent()));
  }

  @Override
  public Seat cylinderPair(CylinderPair seat) {
    return new CylinderPair(
        grown(Vec3.ZERO),
        (seat.leftRadius() + radius[0] + form[0]) * growth,
        (seat.rightRadius() + radius[1] + form[1]) * growth,
        (seat.spacing() + spacing) * growth,
        seat.length() * growth,
        seat.floorDepth() * growth);
  }

  @Override
  public Seat trihedralSeat(TrihedralSeat seat) {
    TrihedralSeat turned =
        new TrihedralSeat(
            frame,
            seat.firstAngle() + angle[0],
            seat.secondAngle() + angle[1],
            seat.thirdAngle() + angle[2],
            seat.mouthDiameter(),
            seat.rootDiameter());
    return new TrihedralSeat(
        grown(ofThree(turned)),
        turned.firstAngle(),
        turned.secondAngle(),
        turned.thirdAngle(),
        seat.mouthDiameter() * growth,
        seat.rootDiameter() * growth);
  }

  /** A cone stays one: its angle changes by the mean of what its thirds tell, all alike. */
  @Override
  public Seat coneSeat(ConeSeat seat) {
    double steeper = (angle[0] + angle[1] + angle[2]) / 3;
    ConeSeat turned =
        new ConeSeat(frame, seat.angle() + steeper, seat.mouthDiameter(), seat.rootDiameter());
    return new ConeSeat(
        grown(ofThree(turned)),
        turned.angle(),
        seat.mouthDiameter() * growth,
        seat.rootDiameter() * growth);
  }

  /** Shift of the apex with which each of three flanks alone stands proud as it does. */
  private Vec3 ofThree(Seat seat) {
    Vec3[] n = new Vec3[3];
    for (int i = 0; i < 3; i++) {
      n[i] = seat.flanks().get(i).normal(Vec3.ZERO);
    }
    return shift(n[0], proud(0), n[1], proud(1), n[2], proud(2));
  }

  @Override
  public Seat flatSeat(FlatSeat seat) {
    return new FlatSeat(grown(frame.up().times(proud(0))), seat.padDiameter() * growth);
  }
}
