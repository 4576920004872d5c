package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import reseat.material.ElasticConstants;
import reseat.space.Matrix6;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

class BallStudTest {

  private static final ElasticConstants STEEL = new ElasticConstants(206e9, 0.3);
  private static final ElasticConstants ALUMINIUM = new ElasticConstants(69e9, 0.33);

  @Test
  void aSteppedStudEqualsTheSumOverManyThinSlices() {
    // Second road: virtual work over 20 000 slices, midpoint rule.
    BallStud stud = new BallStud(5e-3, 14e-3, 1.5e-3, 9e-3, 4e-3, STEEL, RootFixing.RIGID);
    BallStud noStep = new BallStud(5e-3, 10e-3, 1.5e-3, 5e-3, 0, STEEL, RootFixing.RIGID);
    int slices = 20_000;
    double lateral = 0;
    double tilt = 0;
    double coupling = 0;
    double axial = 0;
    for (int i = 0; i < slices; i++) {
      double s = 1.5e-3 + (i + 0.5) * 12.5e-3 / slices;
      double d = s < 10e-3 ? 5e-3 : 9e-3;
      double area = Math.PI / 4 * d * d;
      double bending = 12.5e-3 / slices / (206e9 * area * d * d / 16);
      lateral += s * s * bending + 12.5e-3 / slices / (0.9 * STEEL.shearModulus() * area);
      coupling += s * bending;
      tilt += bending;
      axial += 12.5e-3 / slices / (206e9 * area);
    }
    RootFixing step =
        RootFixing.ofHalfSpace(5e-3, STEEL).shared(1 - 5.0 / 9, 1 - Math.pow(5.0 / 9, 3));
    StudCompliance c = stud.compliance();
    assertThat(c.tilt()).isCloseTo(tilt + step.tilt(), within(1e-6 * tilt));
    assertThat(c.coupling()).isCloseTo(coupling + 10e-3 * step.tilt(), within(1e-6 * coupling));
    assertThat(c.lateral())
        .isCloseTo(lateral + 1e-4 * step.tilt() + step.lateral(), within(1e-6 * lateral));
    assertThat(c.axial()).isCloseTo(axial + step.axial(), within(1e-6 * axial));
    assertThat(noStep.compliance().lateral()).isLessThan(c.lateral());
  }

  @Test
  void aShoulderAsThickAsTheNeckChangesNothing() {
    BallStud plain = BallStud.plain(6e-3, 12e-3, STEEL, RootFixing.RIGID);
    BallStud stepped = new BallStud(6e-3, 12e-3, 0, 6e-3, 5e-3, STEEL, RootFixing.RIGID);
    assertThat(stepped.compliance().lateral())
        .isCloseTo(plain.compliance().lateral(), within(1e-12 * plain.compliance().lateral()));
    assertThat(stepped.compliance().torsion())
        .isCloseTo(plain.compliance().torsion(), within(1e-12 * plain.compliance().torsion()));
  }

  @Test
  void theFootAddsGiveAndSofterBodiesAddMore() {
    double rigid = lateral(RootFixing.RIGID);
    double steel = lateral(RootFixing.ofHalfSpace(6e-3, STEEL));
    double aluminium = lateral(RootFixing.ofHalfSpace(6e-3, ALUMINIUM));
    double thread = lateral(RootFixing.ofThread(ScrewThread.parse("M6x0.5"), STEEL));
    assertThat(steel).isGreaterThan(1.1 * rigid);
    assertThat(aluminium).isGreaterThan(steel);
    assertThat(thread).isGreaterThan(steel);
  }

  @Test
  void complianceGrowsWithStickOutAndFallsWithDiameter() {
    SplittableRandom random = new SplittableRandom(66);
    for (int i = 0; i < 100; i++) {
      double d = random.nextDouble(3e-3, 12e-3);
      double l = random.nextDouble(3e-3, 30e-3);
      RootFixing root = RootFixing.ofHalfSpace(d, STEEL);
      StudCompliance c = BallStud.plain(d, l, STEEL, root).compliance();
      StudCompliance longer = BallStud.plain(d, 1.1 * l, STEEL, root).compliance();
      StudCompliance scaled =
          BallStud.plain(2 * d, 2 * l, STEEL, RootFixing.ofHalfSpace(2 * d, STEEL)).compliance();
      assertThat(longer.lateral()).as("seed 66, case %d", i).isGreaterThan(c.lateral());
      assertThat(scaled.lateral()).isCloseTo(c.lateral() / 2, within(1e-9 * c.lateral()));
      assertThat(scaled.tilt()).isCloseTo(c.tilt() / 8, within(1e-9 * c.tilt()));
      assertThat(scaled.axial()).isCloseTo(c.axial() / 2, within(1e-9 * c.axial()));
    }
  }

  @Test
  void theMatrixTurnsWithTheStudAndAnswersAsTheFiveNumbers() {
    SplittableRandom random = new SplittableRandom(67);
    StudCompliance c =
        BallStud.plain(6e-3, 12e-3, STEEL, RootFixing.ofHalfSpace(6e-3, STEEL)).compliance();
    for (int i = 0; i < 50; i++) {
      Vec3 axis = direction(random);
      Vec3 across = axis.anyPerpendicular();
      Vec3 centre = new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble());
      Matrix6 matrix = c.toMatrix(axis, centre);
      Twist pressed = matrix.times(Wrench.ofForce(axis, centre));
      Twist pushed = matrix.times(Wrench.ofForce(across, centre));
      assertThat(pressed.translation().distanceTo(axis.times(c.axial())))
          .as("seed 67, case %d", i)
          .isLessThan(1e-12 * c.axial());
      assertThat(pushed.translation().distanceTo(across.times(c.lateral())))
          .isLessThan(1e-12 * c.lateral());
      assertThat(pushed.rotation().distanceTo(axis.cross(across).times(c.coupling())))
          .isLessThan(1e-12 * c.coupling());
      for (int r = 0; r < 6; r++) {
        for (int q = 0; q < r; q++) {
          assertThat(matrix.get(r, q)).isCloseTo(matrix.get(q, r), within(1e-18));
        }
      }
    }
  }

  @Test
  void aForceBelowTheBallCentreMovesTheFootOfTheLeverLess() {
    // Reciprocity by another road: a force applied h below the ball centre is force plus moment;
    // with a rigid tip of length h the ball centre of the shorter stud must move as that point.
    StudCompliance stud = BallStud.plain(6e-3, 10e-3, STEEL, RootFixing.RIGID).compliance();
    BallStud longer = new BallStud(6e-3, 12e-3, 2e-3, 6e-3, 0, STEEL, RootFixing.RIGID);
    Matrix6 matrix = longer.compliance().toMatrix(Vec3.Z, new Vec3(0, 0, 12e-3));
    Vec3 below = new Vec3(0, 0, 10e-3);
    Twist moved = matrix.times(Wrench.ofForce(Vec3.X, below));
    assertThat(moved.displacementOf(below).x()).isCloseTo(stud.lateral(), within(1e-18));
  }

  @Test
  void stressIsThatOfTheNeckFoot() {
    BallStud stud = new BallStud(5e-3, 14e-3, 0, 9e-3, 4e-3, STEEL, RootFixing.RIGID);
    double area = Math.PI / 4 * 25e-6;
    double bending = 32 * 50 * 10e-3 / (Math.PI * 125e-9);
    assertThat(stud.neckStress(-200, 50)).isCloseTo(200 / area + bending, within(1e-3));
  }

  @Test
  void piecesThatDoNotFitAreRefused() {
    assertThatThrownBy(() -> new BallStud(6e-3, 5e-3, 2e-3, 9e-3, 4e-3, STEEL, RootFixing.RIGID))
        .hasMessageContaining("do not fit");
    assertThatThrownBy(() -> new BallStud(6e-3, 9e-3, 0, 5e-3, 4e-3, STEEL, RootFixing.RIGID))
        .hasMessageContaining("must not be thinner");
    assertThatThrownBy(() -> new StudCompliance(1e-8, 1e-8, 1e-3, 1e-3, 1e-3))
        .hasMessageContaining("more than lateral and tilt");
  }

  private static double lateral(RootFixing root) {
    return BallStud.plain(6e-3, 12e-3, STEEL, root).compliance().lateral();
  }

  private static Vec3 direction(SplittableRandom random) {
    return new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(0.1, 1))
        .unit();
  }
}
