package reseat.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text of a user is worked out by a spreadsheet that opens our files. */
class PlainCellTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1+1",
        "-1+1",
        "@SUM(A1)",
        "  =1",
        "\t=1",
        "-2+3+cmd|' /C calc'!A0",
        "+x",
        "-"
      })
  void whatWouldBeWorkedOutGoesBehindAnApostrophe(String text) {
    assertThat(PlainCell.of(text)).isEqualTo("'" + text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-0.56",
        "+3",
        "-1.5e-6",
        "-30 deg",
        "-30 deg 57.6 min",
        "holder 1",
        "a=1",
        "-3 N"
      })
  void numbersQuantitiesAndOtherTextStay(String text) {
    assertThat(PlainCell.of(text)).isEqualTo(text);
  }

  @Test
  void cellsWithSeparatorsAreQuoted() {
    assertThat(PlainCell.quoted("=a,\"b\"\n")).isEqualTo("\"'=a,\"\"b\"\" \"");
    assertThat(PlainCell.quoted("plain")).isEqualTo("plain");
    assertThat(PlainCell.row(List.of("=1", 2.0, "x"))).isEqualTo(List.<Object>of("'=1", 2.0, "x"));
    assertThat(PlainCell.remark("minus master a,=1+1;@b, -c"))
        .isEqualTo("minus master a,'=1+1;'@b, '-c");
  }
}
