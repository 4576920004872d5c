package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.DesignBuilder;
import reseat.design.Support;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.seat.Ball;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** Couplings that many tests share. */
public final class TestCouplings {

  /** Steel with E 206 GPa and Poisson's ratio 0.30, the steel of the published cases. */
  public static final Material STEEL = new Material("test steel", new ElasticConstants(206e9, 0.3));

  private TestCouplings() {}

  /** Three equal radial vee grooves, balls at the given azimuths in degrees. */
  public static DesignBuilder threeVees(
      double circleRadius, double ballRadius, double angle, double... azimuthsDeg) {
    List<Support> supports = new ArrayList<>();
    for (double a : azimuthsDeg) {
      double azimuth = Math.toRadians(a);
      Vec3 centre = Vec3.atAzimuth(azimuth).times(circleRadius);
      Seat seat =
          VeeGroove.forBall(
              SeatFrame.level(centre, azimuth), ballRadius, angle, GrooveExtent.unlimited());
      supports.add(support("ball at " + a, new Ball(centre, ballRadius), seat));
    }
    return CouplingDesign.builder().supports(supports);
  }

  public static Support support(String name, Ball ball, Seat seat) {
    return new Support(
        name, ball, STEEL, seat, STEEL, Double.POSITIVE_INFINITY, BallMounting.rigid());
  }
}
