package reseat.equilibrium;

import java.util.List;
import java.util.function.UnaryOperator;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.material.ElasticConstants;
import reseat.material.Material;
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
import reseat.space.Pose;
import reseat.space.Vec3;

/** The same coupling turned, mirrored, scaled, stiffened or with its halves exchanged. */
final class ChangedCoupling {

  private ChangedCoupling() {}

  static CouplingDesign moved(CouplingDesign design, Pose move) {
    return placed(design, move::apply, move::rotate);
  }

  /** Mirrored in the plane x = 0. */
  static CouplingDesign mirrored(CouplingDesign design) {
    return placed(design, ChangedCoupling::mirrored, ChangedCoupling::mirrored);
  }

  static Vec3 mirrored(Vec3 v) {
    return new Vec3(-v.x(), v.y(), v.z());
  }

  private static CouplingDesign placed(
      CouplingDesign design, UnaryOperator<Vec3> point, UnaryOperator<Vec3> direction) {
    List<Support> supports =
        design.supports().stream()
            .map(
                s -> {
                  SeatFrame f = s.seat().frame();
                  BallMounting m = s.mounting();
                  return s.withBall(new Ball(point.apply(s.ball().centre()), s.ball().radius()))
                      .withSeat(
                          s.seat()
                              .withFrame(
                                  new SeatFrame(
                                      point.apply(f.origin()),
                                      direction.apply(f.axis()),
                                      direction.apply(f.up()))))
                      .withMounting(
                          new BallMounting(
                              direction.apply(m.axis()),
                              m.axialCompliance(),
                              m.lateralCompliance(),
                              m.description()));
                })
            .toList();
    return design.toBuilder().supports(supports).toolPoint(point.apply(design.toolPoint())).build();
  }

  /** The contact that a contact becomes in the mirror: left and right, second and third, swap. */
  static int mirroredContact(CouplingDesign design, int contact) {
    int first = 0;
    for (Support s : design.supports()) {
      int n = s.seat().flanks().size();
      if (contact < first + n) {
        int k = contact - first;
        return first + (n == 2 ? 1 - k : n == 3 ? (3 - k) % 3 : k);
      }
      first += n;
    }
    throw new IllegalArgumentException("no contact " + contact);
  }

  /** The same seats and balls with the other half carrying the balls. */
  static CouplingDesign halvesExchanged(CouplingDesign design) {
    return design.toBuilder()
        .ballsOn(design.ballsOn() == Half.HOLDER ? Half.BASE : Half.HOLDER)
        .build();
  }

  /** Every length multiplied; compliance of a mounting falls as its size grows. */
  static CouplingDesign enlarged(CouplingDesign design, double scale) {
    List<Support> supports =
        design.supports().stream()
            .map(
                s ->
                    s.withBall(new Ball(s.ball().centre().times(scale), s.ball().radius() * scale))
                        .withSeat(enlarged(s.seat(), scale))
                        .withMounting(softer(s.mounting(), 1 / scale)))
            .toList();
    return design.toBuilder().supports(supports).toolPoint(design.toolPoint().times(scale)).build();
  }

  private static BallMounting softer(BallMounting m, double scale) {
    return new BallMounting(
        m.axis(), m.axialCompliance() * scale, m.lateralCompliance() * scale, m.description());
  }

  private static Seat enlarged(Seat seat, double scale) {
    SeatFrame f = seat.frame().at(seat.frame().origin().times(scale));
    return seat.accept(
        new Seat.Visitor<Seat>() {
          @Override
          public Seat veeGroove(VeeGroove v) {
            return new VeeGroove(f, v.leftAngle(), v.rightAngle(), GrooveExtent.unlimited());
          }

          @Override
          public Seat gothicGroove(GothicGroove g) {
            return new GothicGroove(
                f,
                g.leftRadius() * scale,
                g.rightRadius() * scale,
                g.axisOffset() * scale,
                g.axisHeight() * scale,
                GrooveExtent.unlimited());
          }

          @Override
          public Seat cylinderPair(CylinderPair p) {
            return new CylinderPair(
                f,
                p.leftRadius() * scale,
                p.rightRadius() * scale,
                p.spacing() * scale,
                p.length(),
                p.floorDepth());
          }

          @Override
          public Seat trihedralSeat(TrihedralSeat t) {
            return t.withFrame(f);
          }

          @Override
          public Seat coneSeat(ConeSeat c) {
            return c.withFrame(f);
          }

          @Override
          public Seat flatSeat(FlatSeat flat) {
            return flat.withFrame(f);
          }
        });
  }

  /** Every modulus multiplied, mountings included. */
  static CouplingDesign stiffened(CouplingDesign design, double scale) {
    List<Support> supports =
        design.supports().stream()
            .map(
                s ->
                    new Support(
                        s.name(),
                        s.ball(),
                        stiffened(s.ballMaterial(), scale),
                        s.seat(),
                        stiffened(s.seatMaterial(), scale),
                        s.caseDepth(),
                        softer(s.mounting(), 1 / scale)))
            .toList();
    return design.toBuilder().supports(supports).build();
  }

  private static Material stiffened(Material m, double scale) {
    return new Material(
        m.name(), new ElasticConstants(m.elastic().modulus() * scale, m.elastic().poisson()));
  }
}
