package reseat.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.designfile.SizeTargets.RankBy;

/** How a design that was judged stands in an order. */
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
}
