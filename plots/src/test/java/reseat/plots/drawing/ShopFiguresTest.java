package reseat.plots.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as the shop writes them. */
class ShopFiguresTest {

  private static final ShopFigures MM = new ShopFigures(false);
  private static final ShopFigures INCH = new ShopFigures(true);

  @Test
  void theUsersUnitComesFirstAndTheOtherInBrackets() {
    assertThat(MM.length(0.0127)).isEqualTo("12.700 (0.5000)");
    assertThat(INCH.length(0.0127)).isEqualTo("0.5000 (12.700)");
    assertThat(MM.length(0.0127, 8e-6)).isEqualTo("12.700 \u00b10.008 (0.5000 \u00b10.00031)");
  }

  @ParameterizedTest
  @CsvSource({
    "3e-6, ±0.003 (0.00011)",
    "3.29e-6, ±0.0032 (0.00012)",
    "50e-6, ±0.050 (0.0019)",
    "0.25e-6, ±0.00025 (0.000009)",
  })
  void aToleranceIsNeverRoundedUp(double metres, String written) {
    assertThat(MM.tolerance(metres)).isEqualTo(written);
  }

  @Test
  void equalSizesAreRoundedAlikeAndNothingHasNoSign() {
    double cosine = 0.034925 * Math.cos(2 * Math.PI / 3);
    double other = 0.034925 * Math.cos(4 * Math.PI / 3);
    assertThat(MM.first(cosine)).isEqualTo(MM.first(other)).isEqualTo("-17.463");
    assertThat(MM.length(-1e-18)).isEqualTo("0.000 (0.0000)");
  }

  @Test
  void anglesHaveDegreesAndMinutes() {
    assertThat(ShopFigures.angle(Math.toRadians(30.96))).isEqualTo("30.96\u00b0 (30\u00b058')");
    assertThat(ShopFigures.angleTolerance(Math.toRadians(10 / 60.0)))
        .isEqualTo("\u00b10.16\u00b0 (10')");
    assertThat(ShopFigures.angleTolerance(Double.POSITIVE_INFINITY)).isEqualTo("\u2013");
  }

  @Test
  void scalesAreRound() {
    assertThat(List.of(20.0, 1.0, 0.5, 0.4, 0.02))
        .extracting(r -> new PaperScale(r).words())
        .containsExactly("20:1", "1:1", "1:2", "1:2.5", "1:50");
    double room = PaperScale.UNITS_PER_METRE * 0.1;
    assertThat(PaperScale.fitting(0.1, 0.05, room, room).ratio()).isEqualTo(1);
    assertThat(PaperScale.fitting(0.101, 0.05, room, room).ratio()).isEqualTo(0.5);
  }

  @Test
  void runningDimensionsTooCloseMoveApartToBothSides() {
    assertThat(RunningDimensions.spread(List.of(0.0, 2.0, 100.0)))
        .containsExactly(-5.5, 7.5, 100.0);
    assertThat(RunningDimensions.spread(List.of(0.0, 20.0))).containsExactly(0.0, 20.0);
  }
}
