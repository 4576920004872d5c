package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ThreadStrengthTest {

  private static ThreadStrength strength(String thread, double engagement, double nutUltimate) {
    return ThreadStrength.of(
        ThreadTolerance.of(ScrewThread.parse(thread), ThreadFit.MEDIUM),
        engagement,
        1000e6,
        nutUltimate);
  }

  @Test
  void aSoftNutStripsBeforeAHardScrew() {
    ThreadStrength soft = strength("M8x1", 6e-3, 300e6);
    assertThat(soft.weakest()).isEqualTo(ThreadStrength.Weakest.NUT_STRIPS);
    assertThat(soft.capacity()).isEqualTo(soft.nutStrippingLoad());
  }

  @Test
  void inAnEquallyHardNutTheScrewThreadStripsFirst() {
    ThreadStrength equal = strength("M8x1", 2e-3, 1000e6);
    assertThat(equal.weakest()).isEqualTo(ThreadStrength.Weakest.SCREW_STRIPS);
  }

  @Test
  void atTheNeededEngagementTheWeakestThreadIsJustAsStrongAsTheShank() {
    SplittableRandom random = new SplittableRandom(62);
    String[] names = {"M5", "M8x1", "M10x0.75", "1/4-28", "3/8-40", "1/2-20", "10-32"};
    for (int i = 0; i < 100; i++) {
      String name = names[random.nextInt(names.length)];
      double nut = random.nextDouble(200e6, 1200e6);
      double needed = strength(name, 1e-3, nut).engagementSoScrewBreaks();
      ThreadStrength at = strength(name, needed, nut);
      assertThat(Math.min(at.screwStrippingLoad(), at.nutStrippingLoad()))
          .as("seed 62, case %d, %s", i, name)
          .isCloseTo(at.tensileLoad(), within(1e-9 * at.tensileLoad()));
      assertThat(strength(name, needed * 1.01, nut).weakest())
          .isEqualTo(ThreadStrength.Weakest.SCREW_BREAKS);
    }
  }

  @Test
  void twiceTheStressAreaIsTheHandbookRuleForHalfTheStrengthInShear() {
    // Machinery's Handbook asks for a screw shear area of twice the stress area, which is the
    // engagement at which the screw breaks if shear strength is half of tensile strength.
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse("1/2-20"), ThreadFit.MEDIUM);
    ThreadStrength half = new ThreadStrength(limits, 1e-2, 1000e6, 5000e6, 0.5);
    double needed = half.engagementSoScrewBreaks();
    ThreadStrength there = new ThreadStrength(limits, needed, 1000e6, 5000e6, 0.5);
    assertThat(there.screwShearArea())
        .isCloseTo(
            2 * limits.thread().stressArea(), within(1e-12 * there.screwShearArea() + 1e-15));
  }

  @Test
  void flankPressureTimesProjectedAreaIsTheLoad() {
    ThreadStrength s = strength("M8x1", 5e-3, 800e6);
    double outer = s.limits().screwMajorMin();
    double inner = s.limits().nutMinorMax();
    double area = 5 * Math.PI / 4 * (outer * outer - inner * inner);
    assertThat(s.flankPressure(600) * area).isCloseTo(600, within(1e-9));
    assertThat(s.flankPressure(1200)).isCloseTo(2 * s.flankPressure(600), within(1e-3));
  }

  @Test
  void strengthsMustBePositive() {
    assertThatThrownBy(() -> strength("M8x1", -1e-3, 800e6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("thread engagement is -0.00100000 m");
  }
}
