package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.Equilibrium;
import reseat.space.Vec3;

/**
 * How a design goes along with its preload and its balls: laws of scaling, and the design itself.
 */
class DesignCurveTest {

  private static final CouplingDesign POST = read(Starter.TOOL_POST);
  private static final SeatedCheck CHECK = (SeatedCheck) CheckStudy.run(POST);
  private static final DesignCurve OVER_PRELOAD = DesignCurve.overPreload(POST, 17, 50);
  private static final DesignCurve OVER_BALLS = DesignCurve.overStockBalls(POST, 50);

  private static CouplingDesign read(Starter starter) {
    return DesignFile.read(starter.text()).design().orElseThrow();
  }

  @Test
  void pressureGoesWithTheCubeRootOfThePreloadWhereWeightHardlyCounts() {
    List<DesignCurve.Point> points = OVER_PRELOAD.points();
    assertThat(points).hasSize(17);
    assertThat(points.get(0).value()).isCloseTo(120, within(1e-9));
    assertThat(points.get(16).value()).isCloseTo(2400, within(1e-6));
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).value() / points.get(i - 1).value())
          .isCloseTo(Math.pow(20, 1 / 16.0), within(1e-9));
      assertThat(points.get(i).stiffness().z()).isGreaterThan(points.get(i - 1).stiffness().z());
    }
    // Hertz point contact: p goes with F^(1/3); 14 N of weight shift it by a percent or so
    double ratio = points.get(16).peakPressure() / points.get(8).peakPressure();
    assertThat(ratio).isCloseTo(Math.cbrt(Math.sqrt(20)), within(0.02));
    // the present preload lies between points; there the curve meets the check
    Equilibrium now = CHECK.standing();
    double pressure =
        now.contacts().stream().mapToDouble(Equilibrium.Contact::peakPressure).max().orElseThrow();
    DesignCurve.Point below = last(points, 600);
    DesignCurve.Point above = points.get(points.indexOf(below) + 1);
    assertThat(pressure).isBetween(below.peakPressure(), above.peakPressure());
    assertThat(now.displacementOf(POST.toolPoint()).norm()).isBetween(below.sink(), above.sink());
  }

  private static DesignCurve.Point last(List<DesignCurve.Point> points, double below) {
    return points.stream().filter(p -> p.value() < below).reduce((a, b) -> b).orElseThrow();
  }

  @Test
  void thePresentBallAmongTheStockBallsIsTheDesignItself() {
    List<DesignCurve.Point> points = OVER_BALLS.points();
    DesignCurve.Point half =
        points.stream().filter(p -> Math.abs(p.value() - 0.0127) < 1e-9).findFirst().orElseThrow();
    Equilibrium now = CHECK.standing();
    assertThat(half.sink())
        .isCloseTo(now.displacementOf(POST.toolPoint()).norm(), within(1e-9 * half.sink()));
    assertThat(half.stiffness().x())
        .isCloseTo(CHECK.frictionless().toolPoint().alongAxes().x(), within(1.0));
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).value()).isGreaterThan(points.get(i - 1).value());
      // ball on plane: p goes with R^(-2/3)
      assertThat(points.get(i).peakPressure() / points.get(i - 1).peakPressure())
          .isCloseTo(
              Math.pow(points.get(i - 1).value() / points.get(i).value(), 2 / 3.0), within(0.01));
    }
    assertThat(points.get(0).value()).isGreaterThan(0.0127 / 3);
    assertThat(points.get(points.size() - 1).value()).isLessThan(3 * 0.0127);
    assertThat(half.scatter().orElseThrow().norm()).isPositive();
    assertThat(half.pressureShare()).isBetween(0.05, 1.0);
  }

  @Test
  void everyKindOfSeatIsCutAnewForAnotherBallAtTheSameAngles() {
    for (Starter starter : List.of(Starter.PALLET, Starter.SENSOR_MOUNT, Starter.CONE_VEE_FLAT)) {
      CouplingDesign design = read(starter);
      double radius = 0.9 * design.supports().get(0).ball().radius();
      CouplingDesign other = ResizedBalls.of(design, radius).orElseThrow();
      for (int i = 0; i < design.supports().size(); i++) {
        Support before = design.supports().get(i);
        Support after = other.supports().get(i);
        assertThat(after.ball().radius()).isEqualTo(radius);
        assertThat(after.ball().centre()).isEqualTo(before.ball().centre());
        assertThat(after.seat().getClass()).isEqualTo(before.seat().getClass());
      }
      // contact lines run along the same normals through the same ball centres
      List<ContactLines.Line> one = ContactLines.nominal(design).lines();
      List<ContactLines.Line> two = ContactLines.nominal(other).lines();
      for (int i = 0; i < one.size(); i++) {
        assertThat(two.get(i).normal().minus(one.get(i).normal()).norm()).isLessThan(1e-9);
      }
    }
    // a ball that its groove cannot hold is no point of a curve
    assertThat(ResizedBalls.of(POST, -1)).isEmpty();
  }

  @Test
  void aCurveLeavesOutWhatDoesNotStand() {
    // 30 N along x and only 14 N of weight: at a fifth of the pull the post is not held
    Preload side =
        new Preload(
            "side",
            30,
            Vec3.X,
            Vec3.Z.times(0.02),
            POST.preloads().get(0).forceSpread(),
            POST.preloads().get(0).lineSpread(),
            POST.preloads().get(0).tiltSpread(),
            "");
    CouplingDesign loose = POST.toBuilder().preloads(List.of(side)).build();
    List<DesignCurve.Point> points = DesignCurve.overPreload(loose, 5, 1).points();
    assertThat(points).hasSizeLessThan(5);
    // one mounting has no scatter to tell
    assertThat(points).allMatch(p -> p.scatter().isEmpty());
  }
}
