package reseat.remount;

import java.util.ArrayList;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.DesignBuilder;
import reseat.design.Friction;
import reseat.design.Half;
import reseat.design.Holder;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.design.Support;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Couplings for the tests of tool changes. Invented. */
final class Couplings {

  static final Material STEEL = new Material("test steel", new ElasticConstants(206e9, 0.3));

  /** No scatter of any kind; seated with 15 N, forty steps of the preload apart. */
  static final RemountConditions STEADY =
      new RemountConditions(
          15, 12, Distribution.NONE, Distribution.NONE, Distribution.NONE, 11.5e-6);

  static final Vec3 TIP = new Vec3(0.047, 0, 0.0152);

  private Couplings() {}

  static Support support(String name, Vec3 centre, double ballRadius, Seat seat) {
    return new Support(
        name,
        new Ball(centre, ballRadius),
        STEEL,
        seat,
        STEEL,
        Double.POSITIVE_INFINITY,
        BallMounting.rigid());
  }

  static List<Support> threeVees(
      double circleRadius, double ballRadius, double angle, double first) {
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double azimuth = first + 2 * Math.PI * i / 3;
      Vec3 c = Vec3.atAzimuth(azimuth).times(circleRadius);
      Seat seat =
          VeeGroove.forBall(
              SeatFrame.level(c, azimuth), ballRadius, angle, GrooveExtent.unlimited());
      supports.add(support("ball " + (i + 1), c, ballRadius, seat));
    }
    return supports;
  }

  static Preload down(double force, double scatter, double wander) {
    return new Preload(
        "spring",
        force,
        Vec3.Z.negated(),
        Vec3.ZERO,
        new Distribution(scatter, DistributionShape.UNIFORM),
        new Distribution(wander, DistributionShape.UNIFORM),
        Distribution.NONE,
        "spring");
  }

  static Friction friction(double mu) {
    return new Friction(mu, mu, mu, "invented");
  }

  /** A symmetric three-vee tool post with 45 degree flanks, steady in everything. */
  static DesignBuilder post(double mu, double preload) {
    return CouplingDesign.builder()
        .supports(threeVees(0.034925, 0.00635, Math.toRadians(45), 0))
        .preloads(List.of(down(preload, 0, 0)))
        .toolPoint(TIP)
        .friction(friction(mu))
        .remount(STEADY);
  }

  /** A tool post that scatters in every way, with a cutting load. */
  static DesignBuilder scatteringPost() {
    return post(0.1, 600)
        .preloads(List.of(down(600, 0.02, 0.0005)))
        .holder(new Holder(1.43, new Vec3(0.010, 0, 0.020), Vec3.ZERO))
        .remount(RemountConditions.DEFAULT)
        .cases(List.of(new LoadCase("rough", Wrench.ofForce(new Vec3(-30, -25, -70), TIP))));
  }

  /** Trihedral seat, groove of pins and flat, with the balls on the base. */
  static DesignBuilder mixedSeats() {
    double r = 0.005;
    Vec3 a = new Vec3(-0.02, -0.015, 0);
    Vec3 b = new Vec3(0.03, -0.012, 0.002);
    Vec3 c = new Vec3(0.004, 0.028, -0.001);
    SeatFrame openDown = new SeatFrame(a, Vec3.X, Vec3.Z.negated());
    SeatFrame groove = new SeatFrame(b, b.minus(a), Vec3.Z.negated());
    SeatFrame pad = new SeatFrame(c, Vec3.X, Vec3.Z.negated());
    return CouplingDesign.builder()
        .ballsOn(Half.BASE)
        .supports(
            List.of(
                support(
                    "corner",
                    a,
                    r,
                    TrihedralSeat.forBall(
                        openDown, r, Math.toRadians(54), Double.POSITIVE_INFINITY, 0)),
                support(
                    "pins",
                    b,
                    r,
                    CylinderPair.forBall(
                        groove,
                        r,
                        0.003,
                        0.0115,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY)),
                support("pad", c, r, FlatSeat.forBall(pad, r, Double.POSITIVE_INFINITY))))
        .preloads(
            List.of(
                new Preload(
                    "spring",
                    200,
                    Vec3.Z.negated(),
                    new Vec3(0.004, 0.001, 0),
                    Distribution.NONE,
                    Distribution.NONE,
                    Distribution.NONE,
                    "spring")))
        .toolPoint(new Vec3(0.01, 0.02, 0.05))
        .friction(friction(0.1))
        .remount(STEADY);
  }
}
