package reseat.plots;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NumberTextTest {

  @Test
  void numbersCarryNoMoreDigitsThanAskedFor() {
    assertThat(NumberText.significant(0.0012345, 3)).isEqualTo("0.00123");
    assertThat(NumberText.significant(123456, 3)).isEqualTo("123000");
    assertThat(NumberText.significant(2.5, 3)).isEqualTo("2.5");
    assertThat(NumberText.significant(0, 3)).isEqualTo("0");
  }

  @Test
  void negativeNumbersHaveATrueMinusSignAndZeroHasNone() {
    assertThat(NumberText.significant(-6, 3)).isEqualTo("\u22126");
    assertThat(NumberText.decimals(-0.0001, 2)).isEqualTo("0.00");
    assertThat(NumberText.decimals(-1.5, 1)).isEqualTo("\u22121.5");
  }

  @Test
  void ticksHideTheDustOfBinaryFractions() {
    assertThat(NumberText.tick(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(NumberText.tick(-5.5e-17)).isEqualTo("0");
  }

  @Test
  void numberAndUnitStayOnOneLine() {
    assertThat(NumberText.force(146.6)).isEqualTo("147\u00a0N");
    assertThat(NumberText.force(23456)).isEqualTo("23.5\u00a0kN");
    assertThat(NumberText.length(0.06985)).isEqualTo("69.85\u00a0mm (2.7500\u00a0in)");
  }
}
