package reseat.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.designfile.SizeWish.RankBy;

/** How a design that was judged stands in an order, and a preload in its band. */
class JudgementTest {

  private static final Judgement STANDS =
      new Judgement("size", 0.75, Optional.of(new Merits(0.2, 3e7, 0.4, 0.08)));

  @ParameterizedTest
  @CsvSource({
    "MARGIN, 0.75",
    "REPEATABILITY, 0.2",
    "STIFFNESS, -3e7",
    "PRESSURE, 0.4",
    "SIZE, 0.08"
  })
  void everyRuleOrdersByItsOwnQualityTheLessTheBetter(RankBy rule, double score) {
    assertThat(STANDS.score(rule)).isEqualTo(score);
    assertThat(Judgement.fails("size", 1.2).score(rule)).as("last of all").isInfinite();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void qualitiesAreFinite(int which) {
    double[] q = {1, 1, 1, 1};
    q[which] = Double.POSITIVE_INFINITY;
    assertThatThrownBy(() -> new Merits(q[0], q[1], q[2], q[3])).hasMessageContaining("finite");
  }

  private static AllowedPreload band(double nominal, double least, double most, double scatter) {
    return new AllowedPreload(nominal, least, "lift-off", most, "contact pressure", scatter);
  }

  @Test
  void theMiddleOfABandIsAsManyTimesItsLeastAsItsMostIsOfIt() {
    assertThat(band(500, 200, 1800, 0).middle()).isCloseTo(600, within(1e-12));
    assertThat(band(500, 0, 1800, 0).middle()).as("nothing from below").isEqualTo(500);
    assertThat(band(500, 200, Double.POSITIVE_INFINITY, 0).middle()).isEqualTo(500);
  }

  @Test
  void aBandCoversAForceThatStaysInsideWithItsScatterToEitherSide() {
    // 500 N and 20 %: 400 to 600 N
    assertThat(band(500, 400, 600, 0.2).coversScatter()).isTrue();
    assertThat(band(500, 401, 1e4, 0.2).coversScatter()).isFalse();
    assertThat(band(500, 0, 599, 0.2).coversScatter()).isFalse();
  }
}
