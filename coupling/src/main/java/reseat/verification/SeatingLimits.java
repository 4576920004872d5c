package reseat.verification;

import java.util.Arrays;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactLines;
import reseat.material.Material;
import reseat.seat.Ball;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.space.Wrench;
import reseat.units.PrintedNumber;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/**
 * Friction at which the last slide home stalls, five contacts engaged.
 *
 * <p>Values from an independent computation (null vector of the engaged contacts, acceleration
 * along it); the values at 45 and 60 degrees agree with those remembered from the literature on
 * friction-based coupling design. Circle of radius 1; load straight down at its centre.
 */
final class SeatingLimits {

  private static final double SMALL = 1e-6;

  private SeatingLimits() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    From vees = all.from("null vector of five contacts, friction", Standing.COMPUTED, 2e-5);
    String three = "three equal vees, contact normals ";
    vees.add("CV-084", three + "30 deg", 0.22999, "", () -> threeVees(30, SMALL))
        .add("CV-085", three + "45 deg", 0.31734, "", () -> threeVees(45, SMALL))
        .add("CV-085", three + "45 deg, ball/circle 0.05", 0.31705, "", () -> threeVees(45, 0.05))
        .add("CV-085", three + "45 deg, ball/circle 0.1", 0.31621, "", () -> threeVees(45, 0.1))
        .add("CV-085", three + "45 deg, ball/circle 0.2", 0.31290, "", () -> threeVees(45, 0.2))
        .add("CV-086", three + "60 deg", 0.36359, "", () -> threeVees(60, SMALL))
        .add("CV-087", three + "63.471 deg", 0.365626, "", () -> threeVees(63.471, SMALL));
    From corner = all.from("null vector of five contacts, friction", Standing.COMPUTED, 4e-4);
    mixed(corner, "CV-088", 45, 0.1246, 0.1581, 0.2086, 0.4142, 0.4142);
    mixed(corner, "CV-089", 54.7356, 0.1617, 0.2027, 0.2640, 0.4142, 0.4142);
    return all.topic("Friction that keeps a coupling from seating itself");
  }

  private static void mixed(From from, String id, double cornerAngle, double... limits) {
    for (int k = 0; k < limits.length; k++) {
      int rank = k;
      from.add(
          id,
          "trihedral at "
              + PrintedNumber.shortest(cornerAngle)
              + " deg, vee 45 deg, flat: rank "
              + (k + 1),
          limits[k],
          "",
          () -> trihedralVeeFlat(cornerAngle)[rank]);
    }
  }

  private static double threeVees(double normalFromVertical, double ball) {
    Support[] supports = new Support[3];
    for (int i = 0; i < 3; i++) {
      double azimuth = Elementary.toRadians(90 + 120 * i);
      Vec3 centre = Vec3.atAzimuth(azimuth);
      supports[i] =
          support("vee " + i, centre, ball, vee(centre, azimuth, ball, normalFromVertical));
    }
    return seating(supports).oneOpen().get(0).limitFriction();
  }

  private static VeeGroove vee(Vec3 centre, double azimuth, double ball, double degrees) {
    return VeeGroove.forBall(
        SeatFrame.level(centre, azimuth),
        ball,
        Elementary.toRadians(degrees),
        GrooveExtent.unlimited());
  }

  /** Limits with one flank of trihedral seat or vee missing, rising. */
  private static double[] trihedralVeeFlat(double cornerAngle) {
    Vec3 corner = Vec3.atAzimuth(Elementary.toRadians(90));
    Vec3 vee = Vec3.atAzimuth(Elementary.toRadians(210));
    Vec3 flat = Vec3.atAzimuth(Elementary.toRadians(330));
    TrihedralSeat trihedral =
        TrihedralSeat.forBall(
            SeatFrame.level(corner, Elementary.toRadians(90)),
            SMALL,
            Elementary.toRadians(cornerAngle),
            Double.POSITIVE_INFINITY,
            0);
    VeeGroove groove =
        VeeGroove.forBall(
            new SeatFrame(vee, corner.minus(vee), Vec3.Z),
            SMALL,
            Elementary.toRadians(45),
            GrooveExtent.unlimited());
    FlatSeat pad = FlatSeat.forBall(SeatFrame.level(flat, 0), SMALL, Double.POSITIVE_INFINITY);
    List<SelfSeating.Path> paths =
        seating(
                support("corner", corner, SMALL, trihedral),
                support("vee", vee, SMALL, groove),
                support("flat", flat, SMALL, pad))
            .oneOpenByContact();
    double[] limits = new double[5];
    for (int i = 0; i < 5; i++) {
      limits[i] = paths.get(i).limitFriction();
    }
    Arrays.sort(limits);
    return limits;
  }

  private static Support support(String name, Vec3 centre, double ball, Seat seat) {
    Material steel = new Material("steel", HertzContacts.STEEL);
    return new Support(
        name,
        new Ball(centre, ball),
        steel,
        seat,
        steel,
        Double.POSITIVE_INFINITY,
        BallMounting.rigid());
  }

  private static SelfSeating seating(Support... supports) {
    CouplingDesign design = CouplingDesign.builder().supports(List.of(supports)).build();
    return new SelfSeating(
        ContactLines.nominal(design), Wrench.ofForce(Vec3.Z.negated(), Vec3.ZERO));
  }
}
