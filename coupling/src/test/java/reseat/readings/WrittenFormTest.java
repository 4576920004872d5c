package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static reseat.readings.WrittenReadings.problems;
import static reseat.readings.WrittenReadings.read;
import static reseat.readings.WrittenReadings.rows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.readings.ColumnHead.Kind;

/** Seldom columns and seldom faults of a readings file, each message to the letter. */
class WrittenFormTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "Cycle, CYCLE",
    "mount, CYCLE",
    "RUN, CYCLE",
    "number, CYCLE",
    "no, CYCLE",
    "No., CYCLE",
    "n, CYCLE",
    "#, CYCLE",
    "temperature, TEMPERATURE",
    "Temp, TEMPERATURE",
    "temp., TEMPERATURE",
    "time, TIME",
    "elapsed, TIME",
    "holder, HOLDER",
    "tool, HOLDER",
    "pallet, HOLDER",
    "direction, DIRECTION",
    "approach, DIRECTION",
    "side, DIRECTION",
    "note, NOTE",
    "notes, NOTE",
    "remark, NOTE",
    "remarks, NOTE",
    "comment, NOTE",
    "date, NOTE",
    "clock, NOTE",
    "operator, NOTE",
    "X, PROBE",
    "timer, PROBE",
  })
  void aColumnIsKnownByItsName(String name, Kind kind) {
    assertThat(ColumnHead.of(name).kind()).isEqualTo(kind);
    assertThat(ColumnHead.of(name + " [um]").kind()).isEqualTo(kind);
    assertThat(kind.hasUnit())
        .isEqualTo(List.of(Kind.PROBE, Kind.TEMPERATURE, Kind.TIME).contains(kind));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "X [um], temp | 1:9: column temp has no unit; write it in brackets, for instance temp [degC]",
        "Y, X [um] | 1:1: column Y has no unit; write it in brackets, for instance Y [um]",
        "[um], X [um] | 1:1: a column has no name; name it, for instance X [um]",
        "X [um], temperature [um] | 1:9: column temperature: [um] is a length, not a temperature",
        "X [um], time [mm] | 1:9: column time: [mm] is a length, not a time",
        "X [um], tool [um] | 1:9: column tool has the unit of a probe [um], but a column of this name",
        "X [um], N (mrad) | 1:9: column N has the unit of a probe [mrad], but a column of this name",
        "-2.5, X [um] | 1:1: found the number -2.5 where a column name belongs; the first line",
        "note, holder | 1: no probe column in the head; add one with its unit, for instance X [um]",
      })
  void aWrongHeadIsToldAtItsPlace(String head, String message) {
    List<String> found = problems(head + "\n1,1,1\n");
    assertThat(found).hasSize(1);
    assertThat(found.get(0)).startsWith("run.csv:" + message);
  }

  @Test
  void severalNotesAndCellsWithoutUnitAreTaken() throws Exception {
    MeasuredSeries s =
        read("date [UTC], note, operator, X [um], side\n1,,b,1.5,left\n2,x,,2.5,right\n");
    assertThat(s.columns()).hasSize(1);
    assertThat(s.directions()).containsExactly("left", "right");
    assertThat(s.temperatures()).isEmpty();
    assertThat(s.notMade()).isZero();
    assertThat(s.source()).isEqualTo("run.csv");
    assertThat(s.column("x").orElseThrow().name()).isEqualTo("X");
    assertThat(s.column("Z")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1;1e16;2;A | 2:3: column X: found \"1e16\", too large to be a reading",
        "1;-1e16;2;A | 2:3: column X: found \"-1e16\", too large to be a reading",
        "1;1e999;2;A | 2:3: column X: found \"1e999\", a number too large to be a reading",
        "1;1;2; | 2:7: column holder: the cell is empty; write it for every mount",
        "1;1;2;NaN | 2:7: column holder: found \"NaN\", no name; write it for every mount",
        "1;1;2;#N/A | 2:7: column holder: found \"#N/A\", no name; write it for every mount",
        ";1;2;A | 2:1: column cycle: found \"\", not the number of a mount; number the mounts",
        "1234567890;1;2;A | 2:1: column cycle: found \"1234567890\", not the number of a mount",
        "1a;1;2;A | 2:1: column cycle: found \"1a\", not the number of a mount; number the mounts",
        "-1;1;2;A | 2:1: column cycle: found \"-1\", not the number of a mount; number the mounts",
        "1;1;2;A;5 | 2:9: 5 cells where the head has 4; take out the extra separators",
        "1;1;2 | 2:6: column holder: the cell is empty; write it for every mount",
        "1;1;2;A%1;1;2;A | 3:1: mount 1 comes after mount 1 of holder A; put the rows in the order",
      })
  void aWrongRowIsToldAtItsPlace(String row, String message) {
    List<String> found = problems("cycle;X [um];Z [um];holder\n" + row.replace("%", "\n") + "\n");
    assertThat(found).hasSize(1);
    assertThat(found.get(0)).startsWith("run.csv:" + message);
  }

  @Test
  void numbersOfMountsHaveUpToNineDigitsFromNoughtToNine() throws Exception {
    MeasuredSeries s = read("mount,X [um]\n0,1\n9,2\n123456789,3\n");
    assertThat(s.cycle(0)).isZero();
    assertThat(s.cycle(1)).isEqualTo(9);
    assertThat(s.cycle(2)).isEqualTo(123456789);
  }

  @ParameterizedTest
  @CsvSource({"-49.9, true", "-50.1, false", "149.9, true", "150.1, false"})
  void temperaturesAreThoseOfAWorkshopOrATestChamber(String celsius, boolean taken)
      throws Exception {
    String text = "X [um],temp [degC]\n1," + celsius + "\n";
    if (taken) {
      double kelvin = Double.parseDouble(celsius) + 273.15;
      assertThat(read(text).temperatures().orElseThrow()[0]).isCloseTo(kelvin, within(1e-9));
    } else {
      assertThat(problems(text))
          .containsExactly(
              "run.csv:2:3: column temp: found \""
                  + celsius
                  + "\", with the unit of the column no temperature to measure at (-50 degC to 150"
                  + " degC); write the whole column in one unit and name it in the head");
    }
  }

  @Test
  void theWordsOfARowThatIsNotTakenAreForgotten() {
    assertThat(problems("cycle,X [um],holder\n5,1,A\n6,bad,C\n4,1,A\n3,1,B\n"))
        .satisfiesExactly(
            p -> assertThat(p).startsWith("run.csv:3:3: column X: found \"bad\""),
            p -> assertThat(p).startsWith("run.csv:4:1: mount 4 comes after mount 5 of holder A"));
  }

  @Test
  void aSecondCounterAndATimeWithoutUnitAreNotRead() throws Exception {
    MeasuredSeries s = read("mount, X [um], cycle, time\n1,2,7,3\n2,3,8,4\n");
    assertThat(s.cycle(0)).isEqualTo(1);
    assertThat(s.columns()).hasSize(1);
    assertThat(s.form().passedOver()).containsExactly("cycle", "time");
  }

  @Test
  void rowsThatWereSkippedAreNamed() throws Exception {
    MeasuredSeries s = read("cycle,X [um]\n1,1\n2,\n3,\n4,2\n5,\n6,3\n7,\n");
    assertThat(s.mounts()).isEqualTo(3);
    assertThat(s.notMade()).isEqualTo(1);
    assertThat(s.form().takenOut())
        .extracting(ReadingForm.TakenOut::mount)
        .containsExactly("2", "3", "5");
    assertThat(problems("cycle,X [um]\n1,\n2,\n"))
        .containsExactly(
            "run.csv: the file has a head and no readings; add one row for each mount");
    assertThat(read("cycle,X [um],time [s]\n1,1,5\n2,,\n").notMade()).isEqualTo(1);
    assertThat(read("cycle,X [um],time [s]\n1,1,5\n2,,6\n").notMade()).isEqualTo(1);
  }

  @Test
  void trailingSeparatorsOfHeadAndRowsAreTaken() throws Exception {
    MeasuredSeries s = read("X [um],Z [um],\n1,2\n3,4,\n5,6,,\n");
    assertThat(s.mounts()).isEqualTo(3);
    assertThat(s.columns().get(1).values()[2]).isCloseTo(6e-6, within(1e-20));
  }

  @Test
  void hundredsOfRowsKeepTheirNumbersLinesAndValues() throws Exception {
    String text =
        rows(
            "note,X [um],mount,temp [degC],holder",
            300,
            i -> "n," + i + "," + (2 * i + 1) + "," + (20 + i * 0.01) + "," + i % 3);
    MeasuredSeries s = read(text);
    assertThat(s.mounts()).isEqualTo(300);
    assertThat(s.form().takenOut()).as("every second number is a way to count").isEmpty();
    for (int i : new int[] {0, 63, 64, 65, 127, 128, 129, 299}) {
      assertThat(s.cycle(i)).isEqualTo(2 * i + 1);
      assertThat(s.line(i)).isEqualTo(i + 2);
      assertThat(s.columns().get(0).values()[i]).isCloseTo(i * 1e-6, within(1e-18));
      assertThat(s.temperatures().orElseThrow()[i]).isCloseTo(293.15 + i * 0.01, within(1e-9));
      assertThat(s.holders().get(i)).isEqualTo(String.valueOf(i % 3));
    }
  }

  @Test
  void aFileIsReadByItsNameAsTextIs() throws Exception {
    Path file = Files.writeString(folder.resolve("kept.csv"), "X [um]\n1\n2\n");
    MeasuredSeries s = ReadingsReader.read(file);
    assertThat(s.mounts()).isEqualTo(2);
    assertThat(s.source()).isEqualTo(file.toString());
    // without a column of numbers mounts are counted
    assertThat(s.cycle(1)).isEqualTo(2);
  }
}
