package reseat.verification;

import java.util.ArrayList;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.seat.Ball;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The coupling of the closed forms: three equal radial vees at 45 degrees, balls on a circle of 50
 * mm radius at azimuths 90, 210 and 330 degrees.
 *
 * <p>In that literature u = z x g for a groove along the outward direction g; the flank that pushes
 * along +u is the one on the right looking outward.
 */
final class ThreeVeeCase {

  static final double CIRCLE = 0.05;
  static final double FORTY_FIVE = Elementary.toRadians(45);
  private static final double BALL = 6.35e-3;

  private ThreeVeeCase() {}

  static CouplingDesign design() {
    return design(FORTY_FIVE);
  }

  /** The grooves keep their apex lines, so that another angle moves the balls. */
  static CouplingDesign design(double flankAngle) {
    Material steel = new Material("steel", HertzContacts.STEEL);
    return design(flankAngle, BALL, steel);
  }

  static CouplingDesign design(double ballRadius, ElasticConstants elastic) {
    return design(FORTY_FIVE, ballRadius, new Material("given", elastic));
  }

  private static CouplingDesign design(double flankAngle, double ballRadius, Material material) {
    List<Support> supports = new ArrayList<>();
    for (int degrees = 90; degrees < 450; degrees += 120) {
      double azimuth = Elementary.toRadians(degrees);
      Vec3 centre = Vec3.atAzimuth(azimuth).times(CIRCLE);
      Vec3 apex = centre.minus(Vec3.Z.times(ballRadius / Elementary.cos(FORTY_FIVE)));
      VeeGroove vee =
          new VeeGroove(
              SeatFrame.level(apex, azimuth), flankAngle, flankAngle, GrooveExtent.unlimited());
      supports.add(
          new Support(
              "ball at " + degrees,
              new Ball(centre, ballRadius),
              material,
              vee,
              material,
              Double.POSITIVE_INFINITY,
              BallMounting.rigid()));
    }
    return CouplingDesign.builder().supports(supports).build();
  }

  static Wrench down(double newton) {
    return Wrench.ofForce(new Vec3(0, 0, -newton), Vec3.ZERO);
  }

  /** State under a central preload that gives each contact a force. */
  static Equilibrium withForcePerContact(double newton) {
    return CouplingModel.of(design()).equilibriumUnder(down(6 * newton * Elementary.cos(FORTY_FIVE)));
  }

  /** Force of the flank that pushes along +u or -u at a ball, N. */
  static double force(Wrench load, int ball, boolean alongU) {
    return ContactLines.nominal(design()).forces(load)[2 * ball + (alongU ? 1 : 0)];
  }
}
