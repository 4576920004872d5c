package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static reseat.readings.WrittenReadings.analysed;
import static reseat.readings.WrittenReadings.rows;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.readings.OutlierCause.Slip;

/** Readings that stand out by a slip of the hand are called that. */
class OutlierCauseTest {

  private static final String[] READINGS = {
    "5.27", "5.31", "5.25", "5.30", "5.28", "5.33", "5.29", "5.26", "5.30", "5.28", "5.32", "5.27",
    "5.31", "5.29", "5.24", "5.30"
  };

  private static Optional<OutlierCause> cause(String slipped) throws Exception {
    String text = rows("X [um]", READINGS.length, i -> i == 8 ? slipped : READINGS[i]);
    ColumnAnalysis c = analysed(text, 0, Map.of()).columns().get(0);
    assertThat(c.flagged()).hasSize(1);
    assertThat(c.flagged().get(0).index()).isEqualTo(8);
    return c.cause(c.flagged().get(0));
  }

  @Test
  void everySlipIsCalledByItsName() throws Exception {
    assertThat(cause("-5.30").orElseThrow().slip()).isEqualTo(Slip.SIGN);
    assertThat(cause("3.50").orElseThrow().slip()).isEqualTo(Slip.DIGITS);
    assertThat(cause("3.50").orElseThrow().meant()).isBetween(5.29e-6, 5.31e-6);
    assertThat(cause("0.0053").orElseThrow().slip()).isEqualTo(Slip.UNIT);
    assertThat(cause("53.1").orElseThrow().unit()).contains(UnitSlip.TEN);
    assertThat(cause("5.85")).isEmpty();
  }

  @Test
  void theOthersOfTheSameHolderAreWhatItIsHeldTo() throws Exception {
    // two holders 10 um apart; a sign slip in the second
    String text =
        rows(
            "X [um],holder",
            READINGS.length * 2,
            i -> {
              String v = READINGS[i % READINGS.length];
              return i < READINGS.length ? v + ",A" : (i == 20 ? "-1" : "1") + v + ",B";
            });
    ColumnAnalysis c = analysed(text, 0, Map.of()).columns().get(0);
    assertThat(c.flagged()).hasSize(1);
    assertThat(c.cause(c.flagged().get(0)).orElseThrow().slip()).isEqualTo(Slip.SIGN);
  }

  @Test
  void oneStepOffIsNoOutlier() throws Exception {
    String text = rows("X [um]", 24, i -> i == 11 ? "2.54" : "0");
    ColumnAnalysis c =
        analysed(text, 0, Map.of("X", new ColumnFacts(0, 2.54e-6, 0))).columns().get(0);
    assertThat(c.flagged()).isEmpty();
    String two = rows("X [um]", 24, i -> i == 11 ? "5.08" : "0");
    assertThat(
            analysed(two, 0, Map.of("X", new ColumnFacts(0, 2.54e-6, 0)))
                .columns()
                .get(0)
                .flagged())
        .hasSize(1);
  }
}
