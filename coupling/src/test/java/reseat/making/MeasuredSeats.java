package reseat.making;

import java.util.Map;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.interchange.ToleranceModel;
import reseat.material.MaterialCatalog;
import reseat.numerics.DistributionShape;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** One seat of each kind, alike flanks and unlike ones, somewhere in space. */
final class MeasuredSeats {

  static final double BALL = 6.35e-3;

  private static final SeatFrame FRAME =
      SeatFrame.level(new Vec3(31e-3, -12e-3, 1.7e-3), Math.toRadians(27));

  private static final GrooveExtent EXTENT = new GrooveExtent(10.5e-3, 19e-3, 1.5e-3, 0.5e-3);

  /** Apart from the others, since the angle of its ring is one. */
  static final ConeSeat CONE = ConeSeat.forBall(FRAME, BALL, Math.toRadians(50), 13e-3, 1e-3);

  static final Map<String, Seat> ALL =
      Map.of(
          "vee", VeeGroove.forBall(FRAME, BALL, Math.toRadians(45), EXTENT),
          "unlike vee", new VeeGroove(FRAME, 0.7, 0.9, EXTENT),
          "gothic", GothicGroove.forBall(FRAME, BALL, 8e-3, Math.toRadians(40), EXTENT),
          "unlike gothic", new GothicGroove(FRAME, 8e-3, 8.2e-3, 1e-3, 1.2e-3, EXTENT),
          "pins", CylinderPair.forBall(FRAME, BALL, 5e-3, 16e-3, 30e-3, 5e-3),
          "unlike pins", new CylinderPair(FRAME, 5e-3, 4.7e-3, 15e-3, 30e-3, 5e-3),
          "trihedral", TrihedralSeat.forBall(FRAME, BALL, Math.toRadians(54.7), 14e-3, 1e-3),
          "unlike trihedral", new TrihedralSeat(FRAME, 0.7, 0.8, 0.95, 14e-3, 1e-3),
          "flat", FlatSeat.forBall(FRAME, BALL, 8e-3));

  private MeasuredSeats() {}

  static Seat named(String name) {
    return name.equals("cone") ? CONE : ALL.get(name);
  }

  static Support support(Seat seat) {
    return support("one", seat);
  }

  static Support support(String name, Seat seat) {
    var material = MaterialCatalog.standard().find("52100").orElseThrow();
    return new Support(
        name,
        new Ball(seat.frame().point(0, 0, RestingHeight.of(seat, BALL).centre()), BALL),
        material,
        seat,
        material,
        Double.POSITIVE_INFINITY,
        BallMounting.rigid());
  }

  /** A design of that one seat and its ball. */
  static CouplingDesign design(Seat seat, Tolerance... tolerances) {
    return CouplingDesign.builder()
        .support(support(seat))
        .tolerances(Tolerances.of(tolerances))
        .build();
  }

  /** The seat with one dimension off. */
  static Seat off(Seat seat, ToleranceKind kind, String part, double deviation) {
    Tolerance one =
        new Tolerance(
            kind,
            "one",
            part,
            false,
            Tolerance.ofEach(kind, 1e-5, DistributionShape.UNIFORM).spread());
    return ToleranceModel.of(design(seat, one)).made(deviation).supports().get(0).seat();
  }
}
