package reseat.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.WorkedExamples;
import reseat.material.MaterialCatalog;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Designs that nothing can be built to are refused with the quantity and its value. */
class RefusedDesignTest {

  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static void refused(ThrowingCallable made, String... words) {
    assertThatThrownBy(made)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(words);
  }

  private static Preload preload(double force, double scatter) {
    return new Preload(
        "bolt",
        force,
        Vec3.Z,
        Vec3.ZERO,
        new Distribution(scatter, DistributionShape.UNIFORM),
        Distribution.NONE,
        Distribution.NONE,
        "");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -600, Double.NaN, Double.POSITIVE_INFINITY})
  void aPreloadPullsWithSomeForce(double force) {
    refused(() -> preload(force, 0.1), "preload must be positive, found " + force + " N");
  }

  @Test
  void aPreloadThatScattersByAllOfItselfIsNone() {
    assertThatCode(() -> preload(600, 0.999)).doesNotThrowAnyException();
    refused(() -> preload(600, 1), "preload scatter must be under 100 %", "100.0 %");
  }

  @Test
  void aDeviceMakesTheForceThatIsStatedToTwoPercent() {
    Preload bolt =
        DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow().preloads().get(0);
    double made = bolt.modelled().orElseThrow().nominalForce();
    assertThatCode(() -> with(bolt, made / 1.0199)).doesNotThrowAnyException();
    assertThatCode(() -> with(bolt, made / 0.9801)).doesNotThrowAnyException();
    refused(() -> with(bolt, made / 1.0201), "made by a device set to", "agree to 2 %");
    refused(() -> with(bolt, made / 0.9799), "made by a device set to", "agree to 2 %");
  }

  private static Preload with(Preload p, double force) {
    return new Preload(
        p.name(),
        force,
        p.direction(),
        p.at(),
        p.forceSpread(),
        p.lineSpread(),
        p.tiltSpread(),
        p.device(),
        p.modelled());
  }

  private static RemountConditions conditions(
      double seating, int steps, double friction, double expansion) {
    Distribution none = Distribution.NONE;
    return new RemountConditions(
        seating,
        steps,
        new Distribution(friction, DistributionShape.NORMAL),
        none,
        none,
        expansion);
  }

  @Test
  void conditionsOfMountingHaveTheirBounds() {
    assertThatCode(() -> conditions(1e-6, 1, 0.99, 0)).doesNotThrowAnyException();
    assertThatCode(() -> conditions(1, 100_000, 0, -1e-6)).doesNotThrowAnyException();
    refused(() -> conditions(0, 12, 0.2, 0), "seating force must be positive, found 0.0 N");
    refused(() -> conditions(INFINITE, 12, 0.2, 0), "seating force");
    refused(() -> conditions(10, -1, 0.2, 0), "between 1 and 100000 steps, found -1");
    refused(() -> conditions(10, 100_001, 0.2, 0), "found 100001");
    refused(() -> conditions(10, 12, 1, 0), "friction scatter must be under 100 %", "100.0 %");
    refused(() -> conditions(10, 12, 0.2, INFINITE), "thermal expansion must be a number");
  }

  @Test
  void aHolderMayBeWeightlessButNotLess() {
    assertThatCode(() -> new Holder(0, Vec3.ZERO, Vec3.ZERO)).doesNotThrowAnyException();
    refused(
        () -> new Holder(-0.1, Vec3.ZERO, Vec3.ZERO),
        "holder mass is -0.100000 kg",
        "zero or positive");
    refused(
        () -> new Holder(INFINITE, Vec3.ZERO, Vec3.ZERO), "holder mass is Infinity kg", "finite");
    for (Vec3 minus : List.of(Vec3.X.negated(), Vec3.Y.negated(), Vec3.Z.negated())) {
      refused(
          () -> new Holder(1, Vec3.ZERO, minus), "radius of gyration about ", "zero or positive");
    }
    assertThat(new Holder(1, Vec3.ZERO, new Vec3(1, 1, 1)).hasInertia()).isTrue();
    for (Vec3 flat : List.of(new Vec3(0, 1, 1), new Vec3(1, 0, 1), new Vec3(1, 1, 0))) {
      assertThat(new Holder(1, Vec3.ZERO, flat).hasInertia()).isFalse();
    }
  }

  @Test
  void targetsAreAboveZeroAndFoundByTheirAxis() {
    Targets.AxisLimits none = Targets.AxisLimits.NONE;
    assertThatCode(() -> new Targets(none, 1, 2)).doesNotThrowAnyException();
    refused(() -> new Targets(none, 0.99, 1), "lift-off factor", "at least 1, found 0.99");
    refused(() -> new Targets(none, INFINITE, 1), "lift-off factor");
    refused(() -> new Targets(none, 2, 0), "between 0 and 2, found 0.0");
    refused(() -> new Targets(none, 2, 2.01), "between 0 and 2, found 2.01");
    refused(() -> new Targets.AxisLimits(0, 1, 1), "wanted repeatability must be positive");
    refused(() -> new Targets.AxisLimits(1, 0, 1), "wanted repeatability must be positive");
    refused(() -> new Targets.AxisLimits(1, 1, Double.NaN), "wanted repeatability");
    Targets.AxisLimits limits = new Targets.AxisLimits(1, 2, 3);
    for (int axis = 0; axis < 3; axis++) {
      assertThat(limits.limit(axis)).isEqualTo(axis + 1);
    }
  }

  @Test
  void machineAxesAreThreeNamesAtRightAngles() {
    MachineAxis x = new MachineAxis("X", Vec3.X.times(3));
    MachineAxis y = new MachineAxis("Y", Vec3.Y);
    MachineAxis z = new MachineAxis("Z", Vec3.Z);
    assertThat(x.direction()).isEqualTo(Vec3.X);
    refused(() -> new MachineAxis(" ", Vec3.X), "a machine axis needs a name");
    refused(() -> new MachineAxes(x, x, z), "two machine axes are both called X");
    MachineAxis lean = new MachineAxis("L", new Vec3(0, 1, 0.01));
    refused(() -> new MachineAxes(x, y, lean), "machine axes Y and L are not at right angles");
    MachineAxes axes = new MachineAxes(y, z, x);
    assertThat(axes.axis(0)).isEqualTo(y);
    assertThat(axes.axis(1)).isEqualTo(z);
    assertThat(axes.axis(2)).isEqualTo(x);
    refused(() -> axes.axis(3), "axis 0, 1 or 2, found 3");
    assertThat(axes.of(new Vec3(1, 2, 3))).isEqualTo(new Vec3(2, 3, 1));
  }

  @Test
  void rolesInTurningAreThreeDifferentAxes() {
    assertThatCode(() -> new TurningRoles(2, 0, 1)).doesNotThrowAnyException();
    int[][] wrong = {
      {0, 0, 1},
      {0, 1, 1},
      {1, 0, 1},
      {3, 0, 1},
      {0, 3, 1},
      {0, 1, 3},
      {-1, 0, 1},
      {0, -1, 1},
      {0, 1, -1}
    };
    for (int[] w : wrong) {
      refused(() -> new TurningRoles(w[0], w[1], w[2]), "three different machine axes");
    }
  }

  @Test
  void everythingThatIsToldApartHasAName() {
    Support s = WorkedExamples.toolPost(0, 120, 240).supports().get(0);
    refused(
        () ->
            new Support(
                " ",
                s.ball(),
                s.ballMaterial(),
                s.seat(),
                s.seatMaterial(),
                s.caseDepth(),
                s.mounting()),
        "a support needs a name");
    refused(
        () ->
            new Support(
                "a", s.ball(), s.ballMaterial(), s.seat(), s.seatMaterial(), 0, s.mounting()),
        "case depth must be positive, found 0.0 m");
    refused(() -> new LoadCase("", Wrench.ofForce(Vec3.X, Vec3.ZERO)), "a load case needs a name");
    refused(
        () -> new KeepClear("", Vec3.ZERO, OptionalDouble.empty(), Optional.empty()),
        "what is to be kept clear needs a name");
    refused(
        () -> new KeepClear("bolt", Vec3.ZERO, OptionalDouble.of(-1e-3), Optional.empty()),
        "gap of bolt");
    assertThat(
            new KeepClear("bolt", Vec3.ZERO, OptionalDouble.of(0), Optional.of(Vec3.X.times(2)))
                .across())
        .contains(Vec3.X);
    refused(
        () -> CouplingDesign.builder().supports(List.of()).build(), "needs supports, found none");
  }

  @Test
  void aStudIsOfTheMaterialItIsSaidToBeOf() {
    StudMount stud =
        DesignFile.read(Starter.TOOL_POST.text())
            .design()
            .orElseThrow()
            .supports()
            .get(0)
            .mounting()
            .stud()
            .orElseThrow();
    refused(
        () ->
            new StudMount(
                stud.stud(),
                MaterialCatalog.standard().find("6061-T6").orElseThrow(),
                stud.bond(),
                stud.thread()),
        "stud of 6061-T6 has the elastic constants of another material");
  }
}
