package reseat.report.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TextTableTest {

  @Test
  void numbersStandUnderEachOtherAndNothingTrails() {
    String text =
        new TextTable("lrl", "axis", "± 95 %", "verdict")
            .row("X", "0.12 µm", "holds")
            .row("height", "12 µm", "")
            .text();
    assertThat(text)
        .isEqualTo(
            """
              axis     ± 95 %  verdict
              X       0.12 µm  holds
              height    12 µm
            """);
  }

  @Test
  void aRowOfAnotherLengthIsRefused() {
    assertThatThrownBy(() -> new TextTable("lr", "a", "b").row("only one"))
        .hasMessageContaining("2 cells");
  }

  @Test
  void runningTextIsBrokenBetweenWordsAndKeepsItsIndent() {
    String text = Paragraph.of("  ", "word ".repeat(40).strip());
    assertThat(text.lines()).hasSize(3).allMatch(l -> l.startsWith("  word"));
    assertThat(text.lines()).allMatch(l -> l.length() <= Paragraph.WIDTH);
  }
}
