package reseat.interchange;

import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/**
 * A flank told in the axes of its seat's frame: along, to the left, up.
 *
 * <p>A plane passes through the frame's origin (before it stands proud) with the normal {@code
 * (pushAlong sin, pushLeft sin, cos)} of its angle. A cylinder's axis runs along the groove through
 * {@code (0, left, up)}.
 *
 * @param plane whether the flank is a plane
 * @param angle angle of the plane to the coupling plane, rad; zero for a cylinder
 * @param pushAlong horizontal direction in which the plane pushes, along; zero for a cylinder
 * @param pushLeft the same, to the left; for a cylinder the side of its axis, -1 or 1
 * @param left place of the cylinder's axis to the left, m; zero for a plane
 * @param up height of the cylinder's axis, m; zero for a plane
 * @param radius radius of the cylinder, m; zero for a plane
 * @param hollow whether the ball lies inside the cylinder
 */
record FlankShape(
    boolean plane,
    double angle,
    double pushAlong,
    double pushLeft,
    double left,
    double up,
    double radius,
    boolean hollow) {

  /** Tells all flanks of a seat. */
  static FlankShape[] of(Seat seat) {
    return seat.accept(READER);
  }

  private static FlankShape planeAt(double angle, double pushAlong, double pushLeft) {
    return new FlankShape(true, angle, pushAlong, pushLeft, 0, 0, 0, false);
  }

  private static FlankShape[] thirds(double first, double second, double third) {
    double half = -0.5;
    double root = Math.sqrt(0.75);
    return new FlankShape[] {
      planeAt(first, 1, 0), planeAt(second, half, root), planeAt(third, half, -root)
    };
  }

  private static final Seat.Visitor<FlankShape[]> READER =
      new Seat.Visitor<>() {
        @Override
        public FlankShape[] veeGroove(VeeGroove seat) {
          return new FlankShape[] {
            planeAt(seat.leftAngle(), 0, -1), planeAt(seat.rightAngle(), 0, 1)
          };
        }

        @Override
        public FlankShape[] gothicGroove(GothicGroove seat) {
          double y = seat.axisOffset();
          double z = seat.axisHeight();
          return new FlankShape[] {
            new FlankShape(false, 0, 0, -1, -y, z, seat.leftRadius(), true),
            new FlankShape(false, 0, 0, 1, y, z, seat.rightRadius(), true)
          };
        }

        @Override
        public FlankShape[] cylinderPair(CylinderPair seat) {
          double y = seat.spacing() / 2;
          return new FlankShape[] {
            new FlankShape(false, 0, 0, 1, y, 0, seat.leftRadius(), false),
            new FlankShape(false, 0, 0, -1, -y, 0, seat.rightRadius(), false)
          };
        }

        @Override
        public FlankShape[] trihedralSeat(TrihedralSeat seat) {
          return thirds(seat.firstAngle(), seat.secondAngle(), seat.thirdAngle());
        }

        @Override
        public FlankShape[] coneSeat(ConeSeat seat) {
          return thirds(seat.angle(), seat.angle(), seat.angle());
        }

        @Override
        public FlankShape[] flatSeat(FlatSeat seat) {
          return new FlankShape[] {planeAt(0, 1, 0)};
        }
      };
}
