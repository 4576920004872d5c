package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreadToleranceTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "M1.6", "M3", "M6x0.25", "M8x0.75", "M12x1", "M36", "#0-80", "1/4-100", "1-8", "3/8-40"
      })
  void closeFitHasLessPlayThanTheOrdinaryOne(String name) {
    ScrewThread thread = ScrewThread.parse(name);
    ThreadTolerance medium = ThreadTolerance.of(thread, ThreadFit.MEDIUM);
    ThreadTolerance close = ThreadTolerance.of(thread, ThreadFit.CLOSE);
    assertThat(close.axialPlayMax()).isLessThan(medium.axialPlayMax());
    assertThat(close.axialPlayMin()).isZero();
    assertThat(medium.axialPlayMin()).isPositive();
  }

  @ParameterizedTest
  @EnumSource(ThreadFit.class)
  void metricAndUnifiedSystemsAgreeRoughlyOnTheSameThread(ThreadFit fit) {
    // Two committees, one thread: 1/4-20 is 6.35 mm by 1.27 mm. Their play must be of one size.
    ThreadTolerance inch = ThreadTolerance.of(ScrewThread.parse("1/4-20"), fit);
    ThreadTolerance metric = ThreadTolerance.of(ScrewThread.parse("M6.35x1.27"), fit);
    assertThat(inch.pitchPlayMax() / metric.pitchPlayMax()).isBetween(0.6, 1.6);
  }

  @Test
  void twentyToFortyMicrometresOfDiametralPlayAreTwelveToTwentyThreeOfLostMotion() {
    ThreadTolerance limits =
        new ThreadTolerance(
            ScrewThread.parse("M8x1"),
            ThreadFit.MEDIUM,
            7.8e-3,
            7.97e-3,
            7.33e-3,
            7.33e-3,
            6.92e-3,
            7.15e-3,
            7.35e-3,
            7.37e-3);
    assertThat(limits.axialPlayMin() * 1e6).isCloseTo(11.547, within(1e-3));
    assertThat(limits.axialPlayMax() * 1e6).isCloseTo(23.094, within(1e-3));
    assertThat(limits.unlockedTilt(10e-3)).isCloseTo(4e-3, within(1e-12));
  }

  @Test
  void aScrewThatSlipsThroughItsNutIsRefused() {
    assertThatThrownBy(
            () ->
                new ThreadTolerance(
                    ScrewThread.parse("M8x1"),
                    ThreadFit.MEDIUM,
                    7.1e-3,
                    7.97e-3,
                    7.0e-3,
                    7.33e-3,
                    6.92e-3,
                    7.15e-3,
                    7.35e-3,
                    7.5e-3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("slips through");
  }

  @Test
  void classesReadAsOnADrawing() {
    assertThat(ThreadFit.MEDIUM.classes(ThreadForm.METRIC)).isEqualTo("6H/6g");
    assertThat(ThreadFit.CLOSE.classes(ThreadForm.UNIFIED)).isEqualTo("3B/3A");
  }
}
