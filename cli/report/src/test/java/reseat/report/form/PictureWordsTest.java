package reseat.report.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PictureWordsTest {

  @Test
  void columnsInAnyWritingGiveWordsOfTheirOwn() {
    List<String> names =
        List.of(
            "X", "Höhe", "hohe", "HÖHE", "高さ", "幅", "X (rear)", "x--rear", "\uFEFF\uFEFFZ", "-");
    PictureWords words = new PictureWords(names);
    assertThat(names.stream().map(words::of))
        .containsExactly(
            "x",
            "hohe",
            "hohe-2",
            "hohe-3",
            "column",
            "column-2",
            "x-rear",
            "x-rear-2",
            "z",
            "column-3");
  }

  @Test
  void aLongNameGivesAWordThatAFileMayHave() {
    String name = "temperature of the headstock near the front bearing";
    assertThat(new PictureWords(List.of(name)).of(name))
        .isEqualTo("temperature-of-the-headstock-n");
  }
}
