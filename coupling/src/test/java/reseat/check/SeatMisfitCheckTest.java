package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.TestCouplings;
import reseat.equilibrium.WorkedExamples;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

class SeatMisfitCheckTest {

  /** The tool post without load cases, its grooves with another mouth. */
  private static CouplingDesign withMouth(double width, double length) {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240).toBuilder().cases(List.of()).build();
    return post.toBuilder()
        .supports(
            post.supports().stream()
                .map(
                    s -> {
                      VeeGroove v = (VeeGroove) s.seat();
                      return s.withSeat(
                          new VeeGroove(
                              v.frame(),
                              v.leftAngle(),
                              v.rightAngle(),
                              new GrooveExtent(width, length, 0, 0)));
                    })
                .toList())
        .build();
  }

  private static List<Finding> findings(CouplingDesign design) {
    Looked looked = Looked.at(design);
    return SeatMisfitCheck.of(looked.standing(), looked.cases());
  }

  @Test
  void aWideMouthIsWellClearOfThePatch() {
    // contact 8.98 mm apart in a mouth of 10.49 mm: 1.07 mm to the edge, patch radius 0.18 mm
    List<Finding> found = findings(withMouth(0.01049, 0.02));
    assertThat(found).hasSize(3).allMatch(f -> f.judged() == Judged.HOLDS);
    assertThat(found.get(0).value()).isCloseTo(1.07e-3, within(0.01e-3));
    assertThat(found.get(0).limit()).isCloseTo(2 * 0.1834e-3, within(1e-6));
  }

  @Test
  void aPatchOverTheEdgeFailsAndOneNearItIsUpForDecision() {
    Finding over = findings(withMouth(0.0092, 0.02)).get(0);
    assertThat(over.judged()).isEqualTo(Judged.FAILS);
    assertThat(over.limit()).isCloseTo(0.1834e-3, within(1e-6));
    Finding near = findings(withMouth(0.0094, 0.02)).get(0);
    assertThat(near.judged()).isEqualTo(Judged.DECIDE);
    assertThat(Looked.term(near.said(), 1)).isEqualTo(SeatClearance.Feature.MOUTH_EDGE);
    assertThat(Looked.amount(near.said(), 3)).isCloseTo(0.1834e-3, within(1e-6));
  }

  @Test
  void aBallTooLargeForItsGrooveTouchesBeyondTheEdge() {
    Finding f = findings(withMouth(0.0080, 0.02)).get(0);
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(Looked.amount(f.said(), 2)).isNegative();
  }

  @Test
  void aShortGrooveEndsUnderThePatch() {
    Finding f = findings(withMouth(0.02, 0.0005)).get(0);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(Looked.term(f.said(), 1)).isEqualTo(SeatClearance.Feature.END);
  }

  /** Balls of 16 mm on pins of 8 mm, 18.6 mm apart, over a floor; undersides 0.42 mm below axes. */
  private static Finding onPins(double floorDepth) {
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double azimuth = Math.toRadians(120 * i);
      Vec3 centre = Vec3.atAzimuth(azimuth).times(0.05);
      Seat pins =
          CylinderPair.forBall(
              SeatFrame.level(centre, azimuth), 0.008, 0.004, 0.0186, 0.1, floorDepth);
      supports.add(TestCouplings.support("ball " + i, new Ball(centre, 0.008), pins));
    }
    CouplingDesign design =
        CouplingDesign.builder()
            .supports(supports)
            .preloads(List.of(WorkedExamples.pull("bolt", 600, Vec3.ZERO)))
            .build();
    return findings(design).get(0);
  }

  @Test
  void aBallOnTheFloorBetweenItsPinsBottoms() {
    double underside = 0.008 - Math.sqrt(0.012 * 0.012 - 0.0093 * 0.0093);
    assertThat(onPins(0.0003).judged()).isEqualTo(Judged.FAILS);
    assertThat(onPins(0.0003).said().key()).isEqualTo(Said.BOTTOMS);
    assertThat(onPins(0.0003).limit()).isZero();
    Finding tight = onPins(0.0005);
    assertThat(tight.judged()).isEqualTo(Judged.DECIDE);
    // the preload sinks the ball by some micrometres
    assertThat(tight.value()).isCloseTo(0.0005 - underside, within(15e-6));
    assertThat(onPins(0.001).judged()).isEqualTo(Judged.HOLDS);
  }

  @Test
  void whatIsNotStatedIsSaidNotToBeChecked() {
    CouplingDesign bare =
        TestCouplings.threeVees(0.05, 0.00635, Math.toRadians(45), 0, 120, 240)
            .preloads(List.of(WorkedExamples.pull("bolt", 600, Vec3.ZERO)))
            .build();
    List<Finding> found = findings(bare);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).judged()).isEqualTo(Judged.ADVICE);
    assertThat(found.get(0).said().key()).isEqualTo(Said.FLANKS_NOT_STATED);
  }
}
