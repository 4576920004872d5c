package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.RemountConditions;
import reseat.design.Support;
import reseat.equilibrium.CouplingModel;
import reseat.seat.ConeSeat;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.seating.SeatingPaths;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** How far a simulated tool change on a cone depends on where the thirds of its ring lie. */
class RingSeatRemountTest {

  private static final double R = 0.004;
  private static final double FORTY_FIVE = Math.toRadians(45);

  private static CouplingDesign stand(double turn) {
    Vec3 cone = new Vec3(0.035, 0, 0);
    Vec3 vee = Vec3.atAzimuth(2 * Math.PI / 3).times(0.035);
    Vec3 flat = Vec3.atAzimuth(4 * Math.PI / 3).times(0.035);
    List<Support> supports = new ArrayList<>();
    supports.add(
        Couplings.support(
            "cone",
            cone,
            R,
            ConeSeat.forBall(
                SeatFrame.level(cone, turn), R, FORTY_FIVE, Double.POSITIVE_INFINITY, 0)));
    supports.add(
        Couplings.support(
            "vee",
            vee,
            R,
            VeeGroove.forBall(
                new SeatFrame(vee, cone.minus(vee), Vec3.Z),
                R,
                FORTY_FIVE,
                GrooveExtent.unlimited())));
    supports.add(
        Couplings.support(
            "flat",
            flat,
            R,
            FlatSeat.forBall(SeatFrame.level(flat, 0), R, Double.POSITIVE_INFINITY)));
    return CouplingDesign.builder()
        .supports(supports)
        .preloads(List.of(Couplings.down(60, 0.04, 0.0003)))
        .toolPoint(new Vec3(0, 0, 0.045))
        .friction(Couplings.friction(0.1))
        .remount(RemountConditions.DEFAULT)
        .build();
  }

  @Test
  void thePlaceOfTheThirdsHardlyMattersForTheScatter() throws InterruptedException {
    Vec3 first = null;
    for (double turn : new double[] {0, 0.5, Math.PI / 3}) {
      RemountScatter scatter =
          new RemountSimulation(CouplingModel.of(stand(turn)))
              .run(new RemountPlan(4000, 1, 2, "", false), cause -> true, done -> {});
      assertThat(scatter.failed()).isZero();
      Vec3 s = scatter.toolPoint().deviation();
      first = first == null ? s : first;
      for (int k = 0; k < 3; k++) {
        assertThat(s.component(k)).isCloseTo(first.component(k), within(0.04 * first.component(k)));
      }
    }
  }

  @Test
  void theWorstWayHomeIsThatOfAllPlacesRoundTheRing() {
    CouplingDesign d = stand(0);
    List<SelfSeating.Path> paths = SeatingPaths.byContact(d, d.standingLoad());
    assertThat(paths).hasSize(4);
    assertThat(paths.get(0).open()).containsExactly("cone (ring)");
    for (double turn : new double[] {0.4, 1.0}) {
      List<SelfSeating.Path> other = SeatingPaths.byContact(stand(turn), d.standingLoad());
      for (int i = 0; i < 4; i++) {
        // tried every ten degrees round the ring
        assertThat(other.get(i).limitFriction())
            .isCloseTo(paths.get(i).limitFriction(), within(0.02 * paths.get(i).limitFriction()));
      }
    }
    assertThat(SeatingPaths.lastStages(d, d.standingLoad()).get(0).limitFriction())
        .isEqualTo(paths.stream().mapToDouble(SelfSeating.Path::limitFriction).min().orElseThrow());
  }

  @Test
  void aBallOnOneSideOfItsConeSlidesDownLikeABodyOnAnIncline() {
    // vee, flat and cone with nothing but the ball's own load in the cone: the limit of the single
    // touch is tan(flank) where the other supports carry nothing and so do not rub
    CouplingDesign d = stand(0);
    Wrench onCone = Wrench.ofForce(new Vec3(0, 0, -50), new Vec3(0.035, 0, 0));
    List<SelfSeating.Path> paths = SeatingPaths.byContact(d, onCone);
    assertThat(paths.get(0).limitFriction()).isLessThanOrEqualTo(Math.tan(FORTY_FIVE) + 1e-6);
  }
}
