package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import reseat.ballmount.AdjustingScrews.Clockwise;
import reseat.ballmount.AdjustingScrews.Step;
import reseat.ballmount.AdjustingScrews.Turn;
import reseat.space.Vec3;

class AdjustingScrewsTest {

  private static final ScrewThread THREAD = ScrewThread.parse("3/8-40");
  private static final List<Double> LEVEL = List.of(0.0, 0.0, 0.0);

  private static List<Vec3> triangle(double radius, double turned) {
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      points.add(Vec3.atAzimuth(turned + i * 2 * Math.PI / 3).times(radius));
    }
    return points;
  }

  @Test
  void anIndicatorOverTheScrewAsksForExactlyItsReading() {
    List<Vec3> places = triangle(0.035, 0);
    AdjustingScrews screws = new AdjustingScrews(THREAD, Clockwise.RAISES, places, places);
    List<Step> steps = screws.steps(List.of(-8.819444e-6, 0.0, 17.63889e-6), LEVEL);
    assertThat(steps.get(0).turn()).isEqualTo(Turn.CLOCKWISE);
    assertThat(steps.get(0).degrees()).isCloseTo(5, within(1e-6));
    assertThat(steps.get(0).clockMinutes()).isCloseTo(5.0 / 6, within(1e-6));
    assertThat(steps.get(1).turn()).isEqualTo(Turn.NONE);
    assertThat(steps.get(1).degrees()).isZero();
    assertThat(steps.get(2).turn()).isEqualTo(Turn.COUNTERCLOCKWISE);
    assertThat(steps.get(2).degrees()).isCloseTo(10, within(1e-6));
    assertThat(steps.get(0).readingsAfter().get(0)).isCloseTo(0, within(1e-18));
    assertThat(steps.get(0).readingsAfter().get(2)).isCloseTo(17.63889e-6, within(1e-15));
  }

  @Test
  void afterTheLastScrewEveryIndicatorReadsWhatWasWanted() {
    SplittableRandom random = new SplittableRandom(63);
    for (int i = 0; i < 200; i++) {
      AdjustingScrews screws =
          new AdjustingScrews(
              THREAD,
              random.nextBoolean() ? Clockwise.RAISES : Clockwise.LOWERS,
              shaken(triangle(0.035, random.nextDouble(6)), random),
              shaken(triangle(0.06, random.nextDouble(6)), random));
      List<Double> readings = threeOf(random, 30e-6);
      List<Double> wanted = threeOf(random, 5e-6);
      List<Double> after = screws.steps(readings, wanted).get(2).readingsAfter();
      for (int k = 0; k < 3; k++) {
        assertThat(after.get(k))
            .as("seed 63, case %d, station %d", i, k)
            .isCloseTo(wanted.get(k), within(1e-15));
      }
    }
  }

  @Test
  void equalReadingsNeedEqualTurns() {
    AdjustingScrews screws =
        new AdjustingScrews(THREAD, Clockwise.RAISES, triangle(0.035, 0.4), triangle(0.08, 1.3));
    List<Step> steps = screws.steps(List.of(20e-6, 20e-6, 20e-6), LEVEL);
    assertThat(steps).allSatisfy(s -> assertThat(s.rise()).isCloseTo(-20e-6, within(1e-15)));
    assertThat(steps).allSatisfy(s -> assertThat(s.turn()).isEqualTo(Turn.COUNTERCLOCKWISE));
  }

  @Test
  void raisingOnlyTheFrontBallTiltsThePlateAboutTheOtherTwo() {
    // Plane geometry by hand: front ball at 34.925 mm, the others at -17.4625 mm; 25 um there is
    // 25/52.3875 = 477 urad, and a tip 47 mm out rises by 25 (47 + 17.4625)/52.3875 = 30.8 um.
    List<Vec3> balls = triangle(0.034925, 0);
    List<Vec3> stations = List.of(new Vec3(0.047, 0, 0), balls.get(1), balls.get(2));
    AdjustingScrews screws = new AdjustingScrews(THREAD, Clockwise.RAISES, balls, stations);
    List<Step> steps = screws.steps(List.of(-30.7623e-6, 0.0, 0.0), LEVEL);
    assertThat(steps.get(0).rise() * 1e6).isCloseTo(25.0, within(1e-3));
    assertThat(steps.get(1).rise()).isCloseTo(0, within(1e-15));
  }

  @Test
  void leftHandScrewsAndHangingPlatesTurnTheOtherWay() {
    List<Vec3> places = triangle(0.035, 0);
    List<Double> low = List.of(-10e-6, -10e-6, -10e-6);
    ScrewThread left = ScrewThread.parse("3/8-40-LH");
    assertThat(first(THREAD, Clockwise.LOWERS, places, low)).isEqualTo(Turn.COUNTERCLOCKWISE);
    assertThat(first(left, Clockwise.RAISES, places, low)).isEqualTo(Turn.COUNTERCLOCKWISE);
    assertThat(first(left, Clockwise.LOWERS, places, low)).isEqualTo(Turn.CLOCKWISE);
  }

  @Test
  void aTurnFinerThanAHandCanSetIsMarked() {
    List<Vec3> places = triangle(0.035, 0);
    AdjustingScrews screws = new AdjustingScrews(THREAD, Clockwise.RAISES, places, places);
    List<Step> steps = screws.steps(List.of(3e-6, 4e-6, 0.0), LEVEL);
    assertThat(steps.get(0).withinHandResolution()).isTrue();
    assertThat(steps.get(1).withinHandResolution()).isFalse();
    assertThat(steps.get(2).withinHandResolution()).isFalse();
    assertThat(screws.readingUncertainty(AdjustingScrews.HAND_RESOLUTION) * 1e6)
        .isCloseTo(2 * 1.763889, within(1e-5));
  }

  @Test
  void stationsCloseTogetherMagnifyReadingErrors() {
    List<Vec3> balls = triangle(0.035, 0);
    AdjustingScrews wide = new AdjustingScrews(THREAD, Clockwise.RAISES, balls, balls);
    AdjustingScrews narrow =
        new AdjustingScrews(THREAD, Clockwise.RAISES, balls, triangle(0.0035, 0));
    assertThat(wide.magnification()).isCloseTo(1, within(1e-12));
    assertThat(narrow.magnification()).isGreaterThan(6);
  }

  @Test
  void stationsOnOneLineAreRefused() {
    List<Vec3> line = List.of(Vec3.ZERO, Vec3.X, Vec3.X.times(2));
    assertThatThrownBy(() -> new AdjustingScrews(THREAD, Clockwise.RAISES, triangle(0.03, 0), line))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("indicator stations lie on one line");
    List<Vec3> point = List.of(Vec3.ZERO, Vec3.ZERO, Vec3.ZERO);
    assertThatThrownBy(
            () -> new AdjustingScrews(THREAD, Clockwise.RAISES, point, triangle(0.03, 0)))
        .hasMessageContaining("adjusting screws lie on one line");
    assertThatThrownBy(
            () ->
                new AdjustingScrews(THREAD, Clockwise.RAISES, triangle(0.03, 0), triangle(0.03, 0))
                    .steps(List.of(1e-6, 2e-6), LEVEL))
        .hasMessageContaining("three finite values");
  }

  private static Turn first(
      ScrewThread thread, Clockwise way, List<Vec3> places, List<Double> readings) {
    return new AdjustingScrews(thread, way, places, places).steps(readings, LEVEL).get(0).turn();
  }

  private static List<Vec3> shaken(List<Vec3> points, SplittableRandom random) {
    List<Vec3> moved = new ArrayList<>();
    for (Vec3 p : points) {
      moved.add(
          p.plus(new Vec3(random.nextDouble(-0.01, 0.01), random.nextDouble(-0.01, 0.01), 0)));
    }
    return moved;
  }

  private static List<Double> threeOf(SplittableRandom random, double scale) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      values.add(random.nextDouble(-scale, scale));
    }
    return values;
  }
}
