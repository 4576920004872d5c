package reseat.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.space.Vec3;

/**
 * Effects on the part against independent computation.
 *
 * <p>CV-154 to CV-156, CV-158 to CV-163: computed independently from the stated formulas. CV-157
 * uses the printed numbers of a trade article on tool centre height (read). The definition of the
 * ogive error is that of a published text on ogive error in diamond turning (extract read).
 */
class TurningEffectValidationTest {

  @ParameterizedTest
  @CsvSource({
    "10, 0.1, 4.999875e-4",
    "5, 0.02, 3.999984e-5",
    "1, 0.05, 1.249220e-3",
  })
  void heightErrorIsSecondOrderInRadius(double radius, double height, double expected) {
    // CV-154 to CV-156, mm
    double got = 1e3 * TurningEffect.radiusErrorFromHeight(radius * 1e-3, height * 1e-3);
    assertThat(got).isCloseTo(expected, within(1e-6 * expected));
  }

  @ParameterizedTest
  @CsvSource({"0.0625, 6.398362e-5", "0.005, 7.703296e-4"})
  void smallDiametersSufferMost(double halfSize, double expected) {
    // CV-157, inch: h = .002, diameter error twice that of the radius
    double got =
        2 * TurningEffect.radiusErrorFromHeight(halfSize * 0.0254, 0.002 * 0.0254) / 0.0254;
    assertThat(got).isCloseTo(expected, within(1e-6 * expected));
  }

  @Test
  void facingLeavesAPostOfTwiceTheHeightError() {
    // CV-158
    assertThat(TurningEffect.centrePostDiameter(-5e-6)).isCloseTo(10e-6, within(1e-18));
  }

  @ParameterizedTest
  @CsvSource({
    "50, 10, 0.2041248, 0.05064, -0.009897",
    "100, 12.5, 0.1259883, 0.03140, -0.015935",
    "25, 10, 0.4364418, 0.10552, -0.004790"
  })
  void ogiveOfAMicrometreOffset(
      double radius, double aperture, double raw, double residual, double change) {
    // CV-159 to CV-161
    TurningEffect.Ogive o = TurningEffect.ogive(radius * 1e-3, aperture * 1e-3, 1e-6);
    assertThat(1e6 * o.peakToValley()).isCloseTo(raw, within(2e-5 * raw));
    assertThat(1e6 * o.residual()).isCloseTo(residual, within(3e-4 * residual));
    assertThat(1e3 * o.radiusChange()).isCloseTo(change, within(2e-3 * Math.abs(change)));
  }

  @Test
  void anErrorAcrossTheAxisCountsTwiceInDiameter() {
    assertThat(TurningEffect.diameterError(0.5e-6)).isEqualTo(1e-6);
  }

  @Test
  void impossiblePartsAreRefused() {
    assertThatThrownBy(() -> TurningEffect.radiusErrorFromHeight(0, 1e-6))
        .hasMessageContaining("radius");
    assertThatThrownBy(() -> TurningEffect.ogive(0.01, 0.02, 1e-6))
        .hasMessageContaining("aperture");
  }

  @Test
  void budgetLinesAddByRootSumSquareAndKindsStayApart() {
    BudgetLine a =
        new BudgetLine(
            "preload size", BudgetLine.Nature.RANDOM, 7, "N", "uniform", new Vec3(3e-8, 0, 4e-8));
    BudgetLine b =
        new BudgetLine("film", BudgetLine.Nature.RANDOM, 0, "", "", new Vec3(4e-8, 0, 3e-8));
    BudgetLine c =
        new BudgetLine("ball lot", BudgetLine.Nature.SYSTEMATIC, 1, "um", "", new Vec3(0, 1e-6, 0));
    ErrorBudget budget = new ErrorBudget(List.of(a, b, c), 2);
    assertThat(budget.lines().get(0)).isEqualTo(c);
    assertThat(budget.combined(BudgetLine.Nature.RANDOM).x()).isCloseTo(5e-8, within(1e-20));
    assertThat(budget.combined(BudgetLine.Nature.RANDOM).y()).isZero();
    assertThat(budget.expanded(BudgetLine.Nature.SYSTEMATIC).y()).isCloseTo(2e-6, within(1e-20));
    assertThat(budget.combined().y()).isCloseTo(1e-6, within(1e-20));
    assertThat(a.sensitivity().z()).isCloseTo(4e-8 / 7, within(1e-20));
    assertThat(b.sensitivity()).isEqualTo(Vec3.ZERO);
    assertThatThrownBy(() -> new ErrorBudget(List.of(a), 0)).hasMessageContaining("coverage");
  }
}
