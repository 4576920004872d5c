package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.csv.UnreadableCsv;
import reseat.design.InputDoubt;

/** Heads of readings that name another unit than was read. */
class ReadingDoubtsTest {

  private static final String ROWS = "1, 0.35\n2, 0.41\n3, 0.28\n4, 0.37\n5, 0.40\n6, 0.33\n";

  private static List<InputDoubt> doubts(String text) throws IOException, UnreadableCsv {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ReadingDoubts.of(ReadingsReader.read("r.csv", new ByteArrayInputStream(bytes)));
  }

  @ParameterizedTest
  @CsvSource({"mm, X [um]", "in, X [um]"})
  void millimetresOverMicrometresAreDoubted(String unit, String meant)
      throws IOException, UnreadableCsv {
    assertThat(doubts("# test\ncycle, X [" + unit + "]\n" + ROWS))
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.key()).isEqualTo("X");
              assertThat(d.line()).isEqualTo(2);
              assertThat(d.column()).isEqualTo(8);
              assertThat(d.meant()).isEqualTo(meant);
            });
  }

  @Test
  void micrometresOverMillimetresAreDoubted() throws IOException, UnreadableCsv {
    String rows = ROWS.replace("0.", "0.000");
    assertThat(doubts("cycle, X [um]\n" + rows))
        .singleElement()
        .satisfies(d -> assertThat(d.meant()).isEqualTo("X [mm]"));
  }

  @ParameterizedTest
  @CsvSource({"um", "uin"})
  void theRightHeadIsNotDoubted(String unit) throws IOException, UnreadableCsv {
    assertThat(doubts("cycle, X [" + unit + "]\n" + ROWS)).isEmpty();
  }

  @Test
  void holdersThatDifferAreNoScatter() throws IOException, UnreadableCsv {
    String rows = "1, 0.1000, A\n1, 0.3000, B\n2, 0.1002, A\n2, 0.3001, B\n3, 0.1001, A\n";
    assertThat(doubts("cycle, X [mm], holder\n" + rows)).isEmpty();
  }
}
