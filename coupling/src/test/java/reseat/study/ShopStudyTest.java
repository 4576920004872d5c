package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.ShopFloor;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.making.HeightSetting;
import reseat.seat.Ball;
import reseat.space.Vec3;

/** The papers' study: what raising a ball and a particle do, against couplings made so. */
class ShopStudyTest {

  private static CouplingDesign toolPost() {
    return DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
  }

  private static ShopStudy study(CouplingDesign design) {
    return ran(design, false);
  }

  private static ShopStudy ran(CouplingDesign design, boolean inchSizes) {
    try {
      return ShopStudy.run((SeatedCheck) CheckStudy.run(design), inchSizes);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static Vec3 toolPoint(CouplingDesign design) {
    return CouplingModel.of(design).standing().holderInBase().apply(design.toolPoint());
  }

  /** The same coupling with one ball moved along its stud. */
  private static CouplingDesign raised(CouplingDesign design, int which, double rise) {
    List<Support> supports = new ArrayList<>(design.supports());
    Support s = supports.get(which);
    Ball ball = s.ball();
    Vec3 out = s.mounting().axis().times(rise);
    supports.set(which, s.withBall(new Ball(ball.centre().plus(out), ball.radius())));
    return design.toBuilder().supports(supports).build();
  }

  @Test
  void aRaisedBallMovesTheToolPointAsTheSettingSays() {
    CouplingDesign design = toolPost();
    List<HeightSetting> settings = study(design).settings();
    assertThat(settings).hasSize(3);
    double rise = 2e-6;
    for (int b = 0; b < 3; b++) {
      Vec3 moved = toolPoint(raised(design, b, rise)).minus(toolPoint(raised(design, b, -rise)));
      Vec3 told = settings.get(b).toolPointPerRise();
      for (int k = 0; k < 3; k++) {
        assertThat(moved.dot(design.axes().axis(k).direction()) / (2 * rise))
            .as(settings.get(b).support() + " " + design.axes().axis(k).name())
            // to first order without load; the load changes it by parts in a thousand
            .isCloseTo(told.component(k), within(2e-3));
      }
    }
  }

  @Test
  void aParticleUnderABallMovesNoMoreThanTheWorstFlankAndASmallerTurnTravelsLess() {
    CouplingDesign design = toolPost();
    ShopStudy study = study(design);
    // a larger ball is a particle under both flanks: no more than twice the worst of them
    List<Support> supports = new ArrayList<>(design.supports());
    Support s = supports.get(0);
    supports.set(0, s.withBall(new Ball(s.ball().centre(), s.ball().radius() + 1e-6)));
    Vec3 moved = toolPoint(design.toBuilder().supports(supports).build()).minus(toolPoint(design));
    for (int k = 0; k < 3; k++) {
      double along = Math.abs(moved.dot(design.axes().axis(k).direction()));
      assertThat(along).isLessThan(2.01e-6 * study.perParticle().component(k));
    }
    HeightSetting h = study.settings().get(0);
    assertThat(h.turnFor(h.travelPerDegree()).degrees()).isCloseTo(1, within(1e-12));
    assertThat(h.turnFor(h.travelPerDegree()).clockwise()).as("right-hand, outward").isTrue();
    assertThat(h.turnFor(-h.travelPerDegree()).clockwise()).isFalse();
    assertThat(h.turnFor(6 * h.travelPerDegree()).clockMinutes()).isCloseTo(1, within(1e-12));
  }

  @Test
  void nothingOfTheShopChangesTheCheck() {
    CouplingDesign design = toolPost();
    CouplingDesign bare = design.toBuilder().shop(ShopFloor.UNKNOWN).build();
    // all but what the shop itself asks for: gaps that stay open
    assertThat(study(bare).check().findings())
        .containsExactlyElementsOf(
            study(design).check().findings().stream()
                .filter(f -> f.check() != CheckKind.CLEARANCE)
                .toList());
    assertThat(study(bare).readings()).hasSize(3);
    assertThat(study(design).readings()).hasSize(6);
    // right-angled groove under the design's own ball: it stands as high as it is designed to
    assertThat(study(bare).readings().get(0).overBallCentre())
        .isCloseTo(design.supports().get(0).ball().radius(), within(1e-15));
  }

  @Test
  void aPairForTheAngleIsProposedWhereTheShopOwnsNone() {
    CouplingDesign bare = toolPost().toBuilder().shop(ShopFloor.UNKNOWN).build();
    ShopStudy metric = study(bare);
    ShopStudy inch = ran(bare, true);
    assertThat(metric.angles()).hasSize(3);
    assertThat(metric.angles().get(0).small() / 0.5e-3)
        .isCloseTo(Math.rint(metric.angles().get(0).small() / 0.5e-3), within(1e-9));
    double sixteenths = inch.angles().get(0).large() / (25.4e-3 / 32);
    assertThat(sixteenths).isCloseTo(Math.rint(sixteenths), within(1e-9));
  }
}
