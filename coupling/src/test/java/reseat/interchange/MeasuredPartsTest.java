package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.csv.CsvProblem;
import reseat.csv.UnreadableCsv;

/** What a measuring machine writes, and what it is told when it writes something else. */
class MeasuredPartsTest {

  private static final String HEAD =
      "part, feature, x [mm], y [mm], z [mm], diameter [mm], uncertainty [um]\n";

  @TempDir private Path folder;

  private MeasuredParts read(String text) throws IOException, UnreadableCsv {
    Path file = folder.resolve("parts.csv");
    Files.writeString(file, text);
    return MeasuredParts.read(file, List.of("front", "left", "right"));
  }

  private List<String> problems(String text) {
    return catchThrowableOfType(UnreadableCsv.class, () -> read(text)).problems().stream()
        .map(CsvProblem::text)
        .map(t -> t.substring(t.indexOf("parts.csv")))
        .toList();
  }

  @Test
  void postAndHoldersAreToldApartByName() throws Exception {
    MeasuredParts parts =
        read(
            HEAD
                + """
                # invented
                post, front, 34.926, 0.001, -0.0005, , 0.8

                A, front, 34.925, 0, 0, 12.7006, 0.8
                A, tool point, 47.01, 0, 15.19, , 2
                B, left, -17.46, 30.25, 0,, 0.8
                """);
    assertThat(parts.post().points()).hasSize(1);
    assertThat(parts.holders()).extracting(MeasuredPart::name).containsExactly("A", "B");
    MeasuredPoint front = parts.holders().get(0).at("front").orElseThrow();
    assertThat(front.diameter()).isCloseTo(0.0127006, within(1e-15));
    assertThat(front.uncertainty()).isCloseTo(0.8e-6, within(1e-18));
    assertThat(parts.post().at("front").orElseThrow().diameter()).isZero();
    assertThat(parts.holders().get(0).toolPoint().orElseThrow().centre().z())
        .isCloseTo(0.01519, within(1e-15));
    assertThat(parts.holders().get(1).toolPoint()).isEmpty();
  }

  @Test
  void inchesAndSemicolonsAreReadAsTheHeadSays() throws Exception {
    MeasuredParts parts =
        read("part; feature; x [in]; y [in]; z [in]; uncertainty [uin]\nA; front; 1.375; 0; 0; 20");
    assertThat(parts.holders().get(0).points().get(0).centre().x()).isEqualTo(0.034925);
    assertThat(parts.holders().get(0).points().get(0).uncertainty())
        .isCloseTo(20 * 25.4e-9, within(1e-18));
    assertThat(parts.post().points()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A, frnt, 1, 2, 3, , 1 | parts.csv:2:4: no support is called \"frnt\"; did you mean front?",
        "A, front, 1, 2, 3, , | parts.csv:2:21: column uncertainty",
        "A, front, 1, 2, 3, , -1 | must not be negative",
        "A, front, 1, 2, 3, -2, 1 | the diameter must not be negative",
        "A, front, 1,2, 2, 3, , 1 | decimals are written with a comma",
        "A, front, 1 mm, 2, 3, , 1 | cells hold plain numbers in the unit of the head (mm)",
        "A, front, one, 2, 3, , 1 | not a number",
        ", front, 1, 2, 3, , 1 | column part: the cell is empty",
        "post, tool point, 1, 2, 3, , 1 | the post has no tool point",
        "A, front, 1, 2, 3, , 1\\nA, front, 1, 2, 3, , 1 | parts.csv:3:4: front of A is there twice",
        "A, tool point, 1, 2, 3, , 1\\nA, tool point, 1, 2, 3, , 1 | is there twice",
        "post, front, 1, 2, 3, , 1 | only the post was measured",
        "A, front, \"1, 2, 3, , 1 | a quote mark is opened"
      })
  void everyMistakeIsToldWithItsPlace(String rows, String part) {
    assertThat(problems(HEAD + rows.replace("\\n", "\n") + "\n"))
        .singleElement()
        .asString()
        .contains(part);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "part, feature, x, y [mm], z [mm], uncertainty [um] | column x has no unit",
        "part, feature, x [kg], y [mm], z [mm], uncertainty [um] | [kg]",
        "part, feature, y [mm], z [mm], uncertainty [um] | column x is missing",
        "part, feature, x [mm], x [mm], y [mm], z [mm], uncertainty [um] | column x is there twice",
        "part, featur, x [mm], y [mm], z [mm], uncertainty [um] | did you mean feature?"
      })
  void theHeadIsReadAsStrictly(String head, String part) {
    assertThat(problems(head + "\nA, front, 1, 2, 3, 1\n"))
        .anySatisfy(p -> assertThat(p).contains(part));
  }

  @Test
  void aFileWithoutRowsSaysWhatBelongsThere() {
    assertThat(problems(HEAD))
        .singleElement()
        .asString()
        .contains("no rows")
        .contains("uncertainty");
    assertThat(problems("")).singleElement().asString().contains("no head line");
  }

  @Test
  void aNoteColumnIsPassedOver() throws Exception {
    MeasuredParts parts =
        read(
            """
            part, note, feature, x [mm], y [mm], z [mm], uncertainty [um]
            A, cleaned, front, 1, 2, 3, 1,
            """);
    assertThat(parts.holders()).hasSize(1);
  }
}
