package reseat.equilibrium;

import reseat.space.RandomDirection;
import java.util.ArrayList;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.RandomStream;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.Flank;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * A coupling of random seats in random places, and a load that presses all six contacts.
 *
 * <p>Either three grooves (vee, gothic or pin pair, mixed) or trihedral seat, groove and flat;
 * balls on either half; every seat tilted and turned off its good direction; every ball of its own
 * size and material. The load is found from six contact forces between 30 and 200 N, so it is sure
 * to press. Layouts with a condition number of 50 or more are drawn again.
 */
public record RandomCoupling(CouplingDesign design, Wrench load) {

  static final double WORST_CONDITION = 50;

  public static RandomCoupling draw(RandomStream draw) {
    return draw(draw, draw.uniform() < 0.4);
  }

  static RandomCoupling draw(RandomStream draw, boolean softMountings) {
    for (int attempt = 0; attempt < 100; attempt++) {
      CouplingDesign design = layout(draw, softMountings);
      if (ConstraintQuality.of(design).condition() < WORST_CONDITION) {
        return new RandomCoupling(design, pressing(design, draw));
      }
    }
    throw new AssertionError("no well-posed layout among a hundred");
  }

  private static CouplingDesign layout(RandomStream draw, boolean softMountings) {
    Half half = draw.uniform() < 0.5 ? Half.HOLDER : Half.BASE;
    boolean trihedral = draw.uniform() < 0.4;
    double circle = draw.uniform(0.02, 0.08);
    Vec3 middle = RandomDirection.of(draw).times(0.02);
    double first = draw.uniform(0, 2 * Math.PI);
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double azimuth = first + i * 2 * Math.PI / 3 + draw.uniform(-0.35, 0.35);
      Vec3 centre =
          middle
              .plus(Vec3.atAzimuth(azimuth).times(circle * draw.uniform(0.8, 1.2)))
              .plus(Vec3.Z.times(draw.uniform(-0.01, 0.01)));
      double radius = draw.uniform(0.003, 0.010);
      Vec3 opening =
          (half == Half.HOLDER ? Vec3.Z : Vec3.Z.negated())
              .plus(RandomDirection.of(draw).times(0.3))
              .unit();
      Vec3 axis = Vec3.atAzimuth(azimuth + draw.uniform(-0.4, 0.4));
      SeatFrame frame = new SeatFrame(centre, axis, opening);
      Seat seat =
          !trihedral || i == 1
              ? groove(draw, frame, radius)
              : i == 0
                  ? TrihedralSeat.forBall(
                      frame, radius, draw.uniform(0.7, 1.0), Double.POSITIVE_INFINITY, 0)
                  : FlatSeat.forBall(frame, radius, Double.POSITIVE_INFINITY);
      supports.add(
          new Support(
              "support " + (i + 1),
              new Ball(centre, radius),
              material(draw),
              seat,
              material(draw),
              Double.POSITIVE_INFINITY,
              softMountings ? mounting(draw) : BallMounting.rigid()));
    }
    return CouplingDesign.builder()
        .ballsOn(half)
        .supports(supports)
        .toolPoint(RandomDirection.of(draw).times(0.08))
        .build();
  }

  private static Seat groove(RandomStream draw, SeatFrame frame, double radius) {
    double angle = draw.uniform(0.6, 1.0);
    return switch (draw.below(3)) {
      case 0 -> VeeGroove.forBall(frame, radius, angle, GrooveExtent.unlimited());
      case 1 ->
          GothicGroove.forBall(
              frame, radius, radius * draw.uniform(1.05, 2), angle, GrooveExtent.unlimited());
      default -> {
        double pin = draw.uniform(0.3, 1) * radius;
        double spacing = Math.max(2 * pin, 2 * (radius + pin) * Math.sin(angle));
        yield CylinderPair.forBall(
            frame, radius, pin, spacing, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
      }
    };
  }

  private static Material material(RandomStream draw) {
    return new Material(
        "random", new ElasticConstants(draw.uniform(60e9, 600e9), draw.uniform(0.15, 0.35)));
  }

  private static BallMounting mounting(RandomStream draw) {
    return new BallMounting(
        Vec3.Z.plus(RandomDirection.of(draw).times(0.3)),
        draw.uniform(0, 1e-8),
        draw.uniform(0, 4e-8),
        "random");
  }

  private static Wrench pressing(CouplingDesign design, RandomStream draw) {
    Wrench sum = Wrench.zero(Vec3.ZERO);
    for (ContactLines.Line line : ContactLines.nominal(design).lines()) {
      sum = sum.plus(Wrench.ofForce(line.push().times(-draw.uniform(30, 200)), line.ballCentre()));
    }
    return sum;
  }

  /**
   * Largest N/(k L) over the contacts: by what part the turning of the lines of action alters the
   * stiffness, which the stiffness matrix leaves out. L is the length about which a line turns: the
   * distance between the centres of ball and cylinder, or the size of the coupling.
   */
  static double geometricShare(Equilibrium state) {
    CouplingDesign design = state.model().design();
    double share = 0;
    int i = 0;
    for (Support s : design.supports()) {
      for (Flank f : s.seat().flanks()) {
        double lever = design.couplingRadius();
        if (Double.isFinite(f.signedRadius())) {
          lever = Math.min(lever, Math.abs(f.signedRadius() + s.ball().radius()));
        }
        Equilibrium.Contact c = state.contacts().get(i);
        share = Math.max(share, c.force() / (c.normalStiffness() * lever));
        i++;
      }
    }
    return share;
  }
}
