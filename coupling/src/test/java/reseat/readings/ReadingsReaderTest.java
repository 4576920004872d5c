package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static reseat.readings.WrittenReadings.problems;
import static reseat.readings.WrittenReadings.read;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.csv.CsvRows;
import reseat.units.QuantityKind;

/** A readings file is taken exactly as it stands, or every problem in it is told with its place. */
class ReadingsReaderTest {

  private static final String GOOD =
      """
      # invented
      cycle, X [um], Z [um], temperature [degC], time [s], holder

      1, 1.25, -0.5, 20.1, 0, A
      2, 1.30, -4e-1, 20.2, 65, A
      3, \u22121.3, .5, 20.2, 130, B
      """;

  @Test
  void everyColumnIsRecognisedAndTakenToSi() throws Exception {
    MeasuredSeries s = read(GOOD);
    assertThat(s.mounts()).isEqualTo(3);
    assertThat(s.columns()).extracting(ReadingColumn::name).containsExactly("X", "Z");
    assertThat(s.columns().get(0).values()[0]).isCloseTo(1.25e-6, within(1e-20));
    assertThat(s.columns().get(0).values()[2]).isCloseTo(-1.3e-6, within(1e-20));
    assertThat(s.columns().get(1).values()[1]).isCloseTo(-0.4e-6, within(1e-20));
    assertThat(s.columns().get(0).unit().symbol()).isEqualTo("µm");
    assertThat(s.temperatures().orElseThrow()[0]).isCloseTo(293.25, within(1e-10));
    assertThat(s.holders()).containsExactly("A", "A", "B");
    assertThat(s.cycle(2)).isEqualTo(3);
    assertThat(s.line(0)).isEqualTo(4);
    assertThat(s.directions()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {";", "\t", ","})
  void theSeparatorIsThatOfTheHead(String separator) throws Exception {
    MeasuredSeries s = read(GOOD.replace(",", separator));
    assertThat(s.columns().get(0).values()[1]).isCloseTo(1.30e-6, within(1e-20));
    assertThat(s.holders()).containsExactly("A", "A", "B");
  }

  @Test
  void aByteOrderMarkWindowsLineEndsQuotesAndTrailingSeparatorsAreTaken() throws Exception {
    MeasuredSeries s =
        read("\uFEFF\"X [um]\", note,\r\n1.5,\"first, cold\",\r\n 2.5 ,\"\",\r\n3,later");
    assertThat(s.columns().get(0).name()).isEqualTo("X");
    assertThat(s.columns().get(0).values()[2]).isCloseTo(3e-6, within(1e-20));
    assertThat(s.cycle(2)).isEqualTo(3);
    assertThat(s.line(2)).isEqualTo(4);
  }

  @Test
  void columnsMayHaveUnitsOfTheirOwnAndRoundBrackets() throws Exception {
    MeasuredSeries s = read("X (mm), Z [uin], yaw [urad]\n0.001,1,5\n0.002,2,6\n");
    assertThat(s.columns().get(0).values()[0]).isCloseTo(1e-6, within(1e-20));
    assertThat(s.columns().get(1).values()[1]).isCloseTo(50.8e-9, within(1e-20));
    assertThat(s.columns().get(2).quantity()).isEqualTo(QuantityKind.ANGLE);
    assertThat(s.columns().get(2).values()[0]).isCloseTo(5e-6, within(1e-20));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.25 mm | a number with its own unit; cells hold plain numbers in the unit of the head (um)",
        "1.25um | a number with its own unit",
        "'1,250.5' | a number with a comma; write decimals with a point (1.25)",
        "1 250.5 | a thousands mark",
        "abc | not a number; put remarks in a column named note",
        "12.05.2026 | a date; if a program made it of a reading",
        "0x1p3 | cells hold plain numbers",
        "1d | a number with its own unit",
        "1e999 | too large to be a reading"
      })
  void aCellThatIsNoPlainNumberIsExplained(String cell, String reason) {
    List<String> found = problems("cycle; X [um]\n1; 1.0\n2; " + cell + "\n3; 1.0\n");
    assertThat(found).hasSize(1);
    assertThat(found.get(0)).startsWith("run.csv:3:").contains(reason);
  }

  @Test
  void aTemperatureInAnotherUnitThanItsColumnIsNotTaken() {
    List<String> found = problems("X [um], temperature [degC]\n1, 20.1\n2, 293.3\n3, 20.2\n");
    assertThat(found).hasSize(1);
    assertThat(found.get(0)).contains("found \"293.3\"").contains("in one unit");
    assertThat(problems("X [um], temperature [K]\n1, 293\n2, 20.1\n")).hasSize(1);
  }

  @Test
  void thePlaceOfACellIsItsFirstCharacterInTheLine() {
    assertThat(problems("note, X [um], Z [um]\n\"a, b\",  1.5, x1\n").get(0))
        .startsWith("run.csv:2:15: column Z: found \"x1\"");
  }

  @Test
  void decimalCommasInACommaFileShowAsTooManyCells() {
    assertThat(problems("cycle,X [um],Z [um]\n1,1,25,0,75\n"))
        .containsExactly(
            "run.csv:2:8: 5 cells where the head has 3; if decimals are written with a comma,"
                + " separate the cells by semicolons or tabs, or write decimals with a point (1.25)");
  }

  @Test
  void allProblemsAreToldAtOnceUpToALimit() {
    StringBuilder text = new StringBuilder("cycle,X [um]\n");
    for (int i = 1; i <= 80; i++) {
      text.append(i).append(",bad\n");
    }
    List<String> found = problems(text.toString());
    assertThat(found).hasSize(CsvRows.MOST_PROBLEMS + 1);
    assertThat(found.get(50)).contains("reading stops here");
  }

  @Test
  void theHeadIsHeldToNamesAndUnits() {
    assertThat(problems("cycle, X, Z [furlong], [um], x [um]\n1,2,3,4,5\n"))
        .hasSize(4)
        .anySatisfy(p -> assertThat(p).contains("1:8: column X has no unit").contains("X [um]"))
        .anySatisfy(p -> assertThat(p).contains("1:11: column Z").contains("furlong"))
        .anySatisfy(p -> assertThat(p).contains("a column has no name"))
        .anySatisfy(p -> assertThat(p).contains("repeats column 2"));
    assertThat(problems("1, 2.5, 3.5\n2, 2.6, 3.4\n").get(0))
        .contains("found the number 1 where a column name belongs");
    assertThat(problems("cycle, temperature [degC]\n1,20\n").get(0)).contains("no probe column");
    assertThat(problems("X [kg]\n1\n").get(0)).contains("column X");
  }

  @Test
  void filesWithoutReadingsSaySo() {
    assertThat(problems(""))
        .containsExactly(
            "run.csv: the file has no head line; start it with column names, for instance cycle, X"
                + " [um], Z [um]");
    assertThat(problems("# only a remark\n\n").get(0)).contains("no head line");
    assertThat(problems("cycle, X [um]\n").get(0)).contains("a head and no readings");
  }

  @Test
  void rowsOfAFormThatWereNotMadeAreCountedAndPassedOver() throws Exception {
    MeasuredSeries s = read("cycle,X [um],Z [um],note\n1,1,2,\n2,1.5,2.5,\n3,,,fell\n4,,,\n");
    assertThat(s.mounts()).isEqualTo(2);
    assertThat(s.notMade()).isEqualTo(2);
  }

  @Test
  void mountsOutOfOrderAreToldButEachHolderCountsForItself() throws Exception {
    assertThat(problems("cycle,X [um]\n1,1\n3,1\n2,1\n").get(0))
        .contains("run.csv:4:1: mount 2 comes after mount 3");
    assertThat(problems("cycle,X [um]\n1,1\n1.5,1\n").get(0)).contains("not the number of a mount");
    assertThat(read("cycle,X [um],holder\n1,1,A\n2,1,A\n1,5,B\n2,5,B\n").mounts()).isEqualTo(4);
  }

  @Test
  void anOpenQuoteIsToldOnItsLineAndSwallowsNothing() {
    assertThat(problems("X [um], note\n1,\"fine\"\n2,\"open\nbad,x\n"))
        .satisfiesExactly(
            p -> assertThat(p).contains("run.csv:3: a quote mark is opened and not closed"),
            p -> assertThat(p).contains("run.csv:4:1: column X"));
  }

  @Test
  void bytesThatAreNotTextAreRefusedWithTheirLine() {
    byte[] latin = "X [\u00b5m]\n1\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(problems(latin).get(0)).contains("not UTF-8 text").contains("write um");
    assertThat(problems(new byte[] {'P', 'K', 3, 4, 0, 0}).get(0)).contains("spreadsheet workbook");
  }
}
