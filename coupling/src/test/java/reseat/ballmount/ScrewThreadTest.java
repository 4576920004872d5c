package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScrewThreadTest {

  @ParameterizedTest(name = "{0} is {1} mm with a pitch of {2} mm")
  @CsvSource({
    "M8x1, 8, 1, M8x1",
    "M6x0.5, 6, 0.5, M6x0.5",
    "M6 X .5, 6, 0.5, M6x0.5",
    "M8×1, 8, 1, M8x1",
    "M8, 8, 1.25, M8x1.25",
    "M2.5, 2.5, 0.45, M2.5x0.45",
    "M8x0.75-LH, 8, 0.75, M8x0.75-LH",
    "1/2-20, 12.7, 1.27, 1/2-20",
    "3/8-40, 9.525, 0.635, 3/8-40",
    "10-32, 4.826, 0.79375, #10-32",
    "#10-32, 4.826, 0.79375, #10-32",
    "1/4-80, 6.35, 0.3175, 1/4-80",
    "5/16-24, 7.9375, 1.0583333333333, 5/16-24",
    "1/2-20 UNF, 12.7, 1.27, 1/2-20",
    "3/8-40 UNS, 9.525, 0.635, 3/8-40",
    "1 1/4-12, 31.75, 2.1166666666667, 1 1/4-12",
    "1-1/4-12 UNF, 31.75, 2.1166666666667, 1 1/4-12",
    "0.190-40, 4.826, 0.635, 0.19-40",
    ".250-100, 6.35, 0.254, 0.25-100",
    "1-8, 25.4, 3.175, 1in-8",
    "1in-12, 25.4, 2.1166666666667, 1in-12",
    "1-64, 1.8542, 0.396875, #1-64",
    "10-40, 4.826, 0.635, #10-40",
    "1/4-28 UNF-LH, 6.35, 0.90714285714286, 1/4-28-LH"
  })
  void designationsOfTheTradeAreRead(String text, double diameter, double pitch, String name) {
    ScrewThread thread = ScrewThread.parse(text);
    assertThat(thread.diameter() * 1e3).isCloseTo(diameter, within(1e-10));
    assertThat(thread.pitch() * 1e3).isCloseTo(pitch, within(1e-10));
    assertThat(thread.designation()).isEqualTo(name);
    assertThat(thread).hasToString(name);
    assertThat(ScrewThread.parse(name)).isEqualTo(thread);
  }

  @ParameterizedTest(name = "\"{0}\" is refused: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "M8x0,75 | comma",
        "M8,5x1 | comma",
        "8x1 | write a metric thread as M8x1",
        "M8-1 | write a metric thread as M8x1",
        "-3/8-40 | write a metric thread as M8x1",
        "/4-20 | write a metric thread as M8x1",
        "M8x | write a metric thread as M8x1",
        "1/4-28-2A | leave the tolerance class",
        "fine | write a metric thread as M8x1",
        "M8.4 | ISO 261 has no coarse pitch",
        "1/2-20 UNC | this diameter has 13 UNC, 20 UNF, 28 UNEF",
        "0.3-30 UNF | none of the series",
        "7-32 | no screw number",
        "#7-32 | #0 to #6",
        "1/0-20 | divides by zero",
        "2-32 | write #2-32 or 2in-32",
        "M8x28 | threads per inch given as a pitch",
        "1/4-2 | at most a third",
        "M8x0.01 | finest",
        "1/4-0 | positive",
        "40-20 | for millimetres M40x"
      })
  void whatIsNoThreadIsRefusedWithTheReason(String text, String reason) {
    assertThatThrownBy(() -> ScrewThread.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void anEmptyDesignationIsRefused() {
    assertThatThrownBy(() -> ScrewThread.parse(" "))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no thread is given");
  }

  @Test
  void everyNumberedScrewIsThirteenThousandthsLargerThanTheLast() {
    assertThat(ScrewThread.parse("#0-80").diameter()).isCloseTo(0.060 * 0.0254, within(1e-12));
    assertThat(ScrewThread.parse("#8-32").diameter()).isCloseTo(0.164 * 0.0254, within(1e-12));
    assertThat(ScrewThread.parse("#12-24").diameter()).isCloseTo(0.216 * 0.0254, within(1e-12));
  }

  @Test
  void basicDiametersOfM8AreThoseOfTheStandardProfile() {
    // ISO 724 recalled from memory: d2 7.188, D1 6.647, d3 6.466 mm.
    ScrewThread m8 = ScrewThread.parse("M8");
    assertThat(m8.pitchDiameter() * 1e3).isCloseTo(7.188, within(5e-4));
    assertThat(m8.minorDiameter() * 1e3).isCloseTo(6.647, within(5e-4));
    assertThat(m8.rootDiameter() * 1e3).isCloseTo(6.466, within(5e-4));
  }

  @Test
  void stressAreaLiesBetweenRootAndPitchCircle() {
    SplittableRandom random = new SplittableRandom(61);
    for (int i = 0; i < 200; i++) {
      double diameter = random.nextDouble(2e-3, 30e-3);
      double pitch = diameter * random.nextDouble(0.03, 0.25);
      ThreadForm form = random.nextBoolean() ? ThreadForm.METRIC : ThreadForm.UNIFIED;
      ScrewThread thread =
          new ScrewThread(form, diameter, Math.max(pitch, 0.06e-3), ThreadHand.RIGHT, "drawn");
      assertThat(thread.stressArea())
          .as("seed 61, case %d, %s", i, thread)
          .isGreaterThan(0.97 * circle(thread.rootDiameter()))
          .isLessThan(circle(thread.pitchDiameter()));
    }
  }

  @Test
  void travelOfAHelixIsItsLeadAngleUnrolled() {
    ScrewThread thread = ScrewThread.parse("3/8-40");
    double circumference = Math.PI * thread.pitchDiameter();
    assertThat(circumference * Math.tan(thread.leadAngle()))
        .isCloseTo(thread.pitch(), within(1e-15));
  }

  @Test
  void ordinaryThreadsHoldThemselvesAndSteepOnesNeedMoreFriction() {
    assertThat(ScrewThread.parse("M8x1").selfLocking(0.1)).isTrue();
    assertThat(ScrewThread.parse("M8x1").selfLocking(0.03)).isFalse();
    assertThat(ScrewThread.parse("M8x1").selfLockingFriction())
        .isLessThan(ScrewThread.parse("M8").selfLockingFriction());
  }

  @Test
  void leftHandThreadsAdvanceTheOtherWay() {
    ScrewThread right = ScrewThread.parse("1/4-28");
    ScrewThread left = ScrewThread.parse("1/4-28-LH");
    assertThat(left.hand().advanceClockwise()).isEqualTo(-right.hand().advanceClockwise());
    assertThat(right.differentialTravelPerRadian(left))
        .isCloseTo(2 * right.travelPerRadian(), within(1e-18));
  }

  @Test
  void threadsPerInchAreThoseOfTheDesignation() {
    assertThat(ScrewThread.parse("3/8-40").threadsPerInch()).isCloseTo(40, within(1e-9));
    assertThat(ScrewThread.parse("M8x1").threadsPerInch()).isCloseTo(25.4, within(1e-9));
  }

  private static double circle(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
