package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;
import reseat.space.Pose;
import reseat.space.Vec3;

/** What every kind of seat must satisfy; a kind's own test says how to make one for a ball. */
abstract class SeatContract {

  static final double BALL = 0.00635;
  private static final long SEED = 20260115;

  /** Makes a seat, with every extent stated, for a ball of radius BALL at the frame's origin. */
  abstract Seat seatAt(SeatFrame atBallCentre);

  /** How many contacts the kind has. */
  abstract int contacts();

  private static SeatFrame randomFrame(RandomStream draw) {
    Vec3 up = RandomDirection.of(draw);
    return new SeatFrame(RandomDirection.of(draw).times(0.05), up.anyPerpendicular(), up);
  }

  private interface Claim {
    void of(Seat seat, Vec3 centre, RandomStream draw);
  }

  private void onTwentySeats(int stream, Claim claim) {
    RandomStream draw = RandomStream.of(SEED, stream);
    for (int i = 0; i < 20; i++) {
      SeatFrame frame = randomFrame(draw);
      claim.of(seatAt(frame), frame.origin(), draw);
    }
  }

  @Test
  void theBallItWasMadeForTouchesEveryFlank() {
    onTwentySeats(
        1,
        (seat, centre, draw) -> {
          assertThat(seat.flanks()).hasSize(contacts());
          assertThat(seat.contacts()).isEqualTo(contacts());
          for (Flank flank : seat.flanks()) {
            assertThat(flank.gap(centre, BALL)).isCloseTo(0, within(1e-16));
          }
        });
  }

  @Test
  void normalsAreUnitVectorsOutOfTheSeatIntoTheBall() {
    onTwentySeats(
        2,
        (seat, centre, draw) -> {
          for (Flank flank : seat.flanks()) {
            Vec3 normal = flank.normal(centre);
            assertThat(normal.norm()).isCloseTo(1, within(1e-14));
            assertThat(normal.dot(seat.frame().up())).as("pushes out of the seat").isPositive();
            Vec3 touch = flank.contactPoint(centre, BALL);
            assertThat(centre.minus(touch).dot(normal)).isCloseTo(BALL, within(1e-16));
            assertThat(flank.gap(touch, 0)).as("on the surface").isCloseTo(0, within(1e-16));
          }
        });
  }

  @Test
  void theNormalIsTheGradientOfTheGap() {
    double h = 1e-5;
    onTwentySeats(
        3,
        (seat, centre, draw) -> {
          Vec3 off = centre.plus(RandomDirection.of(draw).times(2e-4));
          for (Flank flank : seat.flanks()) {
            for (int k = 0; k < 3; k++) {
              Vec3 step = List.of(Vec3.X, Vec3.Y, Vec3.Z).get(k).times(h);
              double slope =
                  (flank.gap(off.plus(step), BALL) - flank.gap(off.minus(step), BALL)) / (2 * h);
              // central differences of a distance: relative error (h/distance)^2
              assertThat(slope).isCloseTo(flank.normal(off).component(k), within(3e-4));
            }
          }
        });
  }

  @Test
  void theGapStaysOpenByTheSameAlongTheGeneratorAndShrinksWithTheBall() {
    onTwentySeats(
        4,
        (seat, centre, draw) -> {
          for (Flank flank : seat.flanks()) {
            Vec3 along = centre.plus(flank.generator().times(1e-3));
            assertThat(flank.gap(along, BALL)).isCloseTo(0, within(1e-16));
            assertThat(flank.gap(centre, BALL + 1e-5)).isCloseTo(-1e-5, within(1e-16));
          }
        });
  }

  @Test
  void theLongAxisOfThePatchLiesInTheSurface() {
    onTwentySeats(
        5,
        (seat, centre, draw) -> {
          for (Flank flank : seat.flanks()) {
            assertThat(flank.longAxis(centre).norm()).isCloseTo(1, within(1e-14));
            assertThat(flank.longAxis(centre).dot(flank.normal(centre)))
                .isCloseTo(0, within(1e-14));
          }
        });
  }

  @Test
  void movingTheSeatMovesEverything() {
    onTwentySeats(
        6,
        (seat, centre, draw) -> {
          Pose move = Pose.of(RandomDirection.of(draw).times(draw.uniform(0, 3)), RandomDirection.of(draw));
          SeatFrame f = seat.frame();
          Seat moved =
              seat.withFrame(
                  new SeatFrame(
                      move.apply(f.origin()), move.rotate(f.axis()), move.rotate(f.up())));
          Vec3 off = centre.plus(RandomDirection.of(draw).times(1e-4));
          for (int i = 0; i < contacts(); i++) {
            Flank before = seat.flanks().get(i);
            Flank after = moved.flanks().get(i);
            assertThat(after.name()).isEqualTo(before.name());
            assertThat(after.gap(move.apply(off), BALL))
                .isCloseTo(before.gap(off, BALL), within(1e-15));
            assertThat(after.normal(move.apply(off)).distanceTo(move.rotate(before.normal(off))))
                .isLessThan(1e-12);
          }
          List<SeatClearance> before = seat.clearances(new Ball(off, BALL));
          List<SeatClearance> after = moved.clearances(new Ball(move.apply(off), BALL));
          assertThat(after).hasSameSizeAs(before);
          for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).feature()).isEqualTo(before.get(i).feature());
            assertThat(after.get(i).flank()).isEqualTo(before.get(i).flank());
            assertThat(after.get(i).distance()).isCloseTo(before.get(i).distance(), within(1e-14));
          }
        });
  }

  @Test
  void theBallItWasMadeForIsClearOfEverythingItMustNotTouch() {
    onTwentySeats(
        7,
        (seat, centre, draw) ->
            assertThat(seat.clearances(new Ball(centre, BALL)))
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.distance()).isPositive()));
  }

  @Test
  void aVisitorIsCalledForTheKindOnly() {
    String kind =
        seatAt(SeatFrame.level(Vec3.ZERO, 0))
            .accept(
                new Seat.Visitor<String>() {
                  @Override
                  public String veeGroove(VeeGroove seat) {
                    return "VeeGroove";
                  }

                  @Override
                  public String gothicGroove(GothicGroove seat) {
                    return "GothicGroove";
                  }

                  @Override
                  public String cylinderPair(CylinderPair seat) {
                    return "CylinderPair";
                  }

                  @Override
                  public String trihedralSeat(TrihedralSeat seat) {
                    return "TrihedralSeat";
                  }

                  @Override
                  public String coneSeat(ConeSeat seat) {
                    return "ConeSeat";
                  }

                  @Override
                  public String flatSeat(FlatSeat seat) {
                    return "FlatSeat";
                  }
                });
    assertThat(kind).isEqualTo(seatAt(SeatFrame.level(Vec3.ZERO, 0)).getClass().getSimpleName());
  }

  /** Finds one clearance of the ball at rest. */
  static double clearance(Seat seat, Ball ball, SeatClearance.Feature feature, String flank) {
    return seat.clearances(ball).stream()
        .filter(c -> c.feature() == feature && c.flank().equals(flank))
        .mapToDouble(SeatClearance::distance)
        .findFirst()
        .orElseThrow();
  }
}
