package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.csv.DecimalMark;
import reseat.csv.UnreadableCsv;
import reseat.units.QuantityKind;

/**
 * Readings as people type them: one file for each form, all with the same twelve mounts. The values
 * are those typed into this class, not read back from the files.
 */
class ReadingFormsTest {

  private static final double[] X = {
    0.28, 0.31, 0.25, 0.30, 0.27, 0.33, 0.29, 0.26, 0.30, 0.28, 0.32, 0.27
  };
  private static final double[] Z = {
    -0.56, -0.60, -0.55, -0.58, -0.61, -0.57, -0.54, -0.59, -0.62, -0.56, -0.58, -0.57
  };

  private static MeasuredSeries read(String name, ReaderWishes wishes)
      throws IOException, UnreadableCsv {
    try (InputStream in = ReadingFormsTest.class.getResourceAsStream("/readings/" + name)) {
      return ReadingsReader.read(name, in, wishes);
    }
  }

  private static MeasuredSeries read(String name) throws IOException, UnreadableCsv {
    return read(name, ReaderWishes.NONE);
  }

  private static void isAsMade(MeasuredSeries s) {
    assertThat(s.mounts()).isEqualTo(X.length);
    for (int i = 0; i < X.length; i++) {
      assertThat(s.cycle(i)).isEqualTo(i + 1);
      assertThat(value(s, "X", i)).isCloseTo(X[i], within(1e-9));
      assertThat(value(s, "Z", i)).isCloseTo(Z[i], within(1e-9));
    }
  }

  private static double value(MeasuredSeries s, String name, int mount) {
    ReadingColumn c = s.column(name).orElseThrow();
    return 1e6 * c.values()[mount];
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "decimal-commas.csv",
        "decimal-commas-tabs.txt",
        "quoted-commas.csv",
        "title-and-notes.csv",
        "title-with-unit.csv",
        "units-below.csv",
        "counter-hash.csv",
        "counter-unnamed.csv",
        "counter-odd-name.csv",
        "brackets.csv",
        "unit-for-all.csv",
        "figures-below.csv",
        "windows.csv",
        "unicode-minus.csv",
        "remarks-beside.csv",
        "words-column.csv"
      })
  void everyFormGivesTheSameReadings(String name) throws Exception {
    isAsMade(read(name));
  }

  @Test
  void decimalsAreTold() throws Exception {
    assertThat(read("decimal-commas.csv").form().mark()).isEqualTo(DecimalMark.COMMA);
    assertThat(read("title-and-notes.csv").form().mark()).isEqualTo(DecimalMark.POINT);
  }

  @Test
  void titlesAreNamedAndMayHoldTheUnit() throws Exception {
    assertThat(read("title-and-notes.csv").form().titles()).containsExactly(1, 2);
    assertThat(read("title-with-unit.csv").form().titles()).containsExactly(1);
    assertThat(read("title-with-unit.csv").form().unitFromElsewhere()).isEqualTo("µm");
    assertThat(read("units-below.csv").temperatures().orElseThrow()[0])
        .isCloseTo(293.25, within(1e-9));
  }

  @Test
  void aCounterIsNoProbe() throws Exception {
    for (String name : List.of("counter-hash.csv", "counter-unnamed.csv", "counter-odd-name.csv")) {
      assertThat(read(name).columns()).extracting(ReadingColumn::name).containsExactly("X", "Z");
    }
    assertThat(read("counter-hash.csv").form().counter()).isEqualTo("#");
    assertThat(read("counter-hash.csv").form().counterByLooks()).isFalse();
    assertThat(read("counter-odd-name.csv").form().counterByLooks()).isTrue();
  }

  @Test
  void unitsStandInBracketsOfAnyKind() throws Exception {
    MeasuredSeries s = read("brackets.csv");
    assertThat(s.columns())
        .extracting(ReadingColumn::name)
        .containsExactly("X", "Z", "height", "tilt");
    assertThat(s.column("tilt").orElseThrow().quantity()).isEqualTo(QuantityKind.ANGLE);
    assertThat(value(s, "tilt", 0)).isCloseTo(2.5, within(1e-9));
    assertThat(value(s, "height", 0)).isCloseTo(1, within(1e-9));
  }

  @Test
  void unitsThatAreMissingAreAskedForOnceAndTakenFromTheAnswer() throws Exception {
    assertThatThrownBy(() -> read("no-units.csv"))
        .hasMessage(
            "no-units.csv:1:7: columns X, Z have no unit; write it in brackets, for instance X [um],"
                + " or say it with --unit um (--unit mm, --unit in)");
    isAsMade(read("no-units.csv", new ReaderWishes(Optional.empty(), Map.of("", "um"))));
    MeasuredSeries each =
        read("no-units.csv", new ReaderWishes(Optional.empty(), Map.of("x", "um", "z", "mm")));
    assertThat(value(each, "Z", 0)).isCloseTo(-560, within(1e-6));
  }

  @Test
  void aReadingThatWasMissedLeavesTheOthersOfItsMount() throws Exception {
    MeasuredSeries s = read("missed-once.csv");
    assertThat(s.mounts()).isEqualTo(12);
    assertThat(s.column("X").orElseThrow().missed()).containsExactly(3, 6);
    assertThat(s.column("Z").orElseThrow().missed()).containsExactly(9);
    SeriesAnalysis a = SeriesAnalysis.of(s, Map.of(), AnalysisOptions.USUAL);
    assertThat(a.columns().get(0).all().orElseThrow().n()).isEqualTo(10);
    assertThat(a.columns().get(1).all().orElseThrow().n()).isEqualTo(11);
    // by hand: the standard deviation of the ten readings of X without mounts 4 and 7
    double[] kept = {0.28, 0.31, 0.25, 0.27, 0.33, 0.26, 0.30, 0.28, 0.32, 0.27};
    double mean = 0;
    for (double v : kept) {
      mean += v / 10;
    }
    double squares = 0;
    for (double v : kept) {
      squares += (v - mean) * (v - mean);
    }
    assertThat(1e6 * a.columns().get(0).all().orElseThrow().s())
        .isCloseTo(Math.sqrt(squares / 9), within(1e-9));
    // what needs all probes takes the nine mounts that have them
    assertThat(a.freedom(java.util.Set.of())).isEqualTo(8);
  }

  @Test
  void mountsThatWereTakenOutAreNamed() throws Exception {
    MeasuredSeries s = read("taken-out.csv");
    assertThat(s.mounts()).isEqualTo(9);
    assertThat(s.form().takenOut())
        .containsExactlyInAnyOrder(
            new ReadingForm.TakenOut("5", 6, ReadingForm.Why.HASH),
            new ReadingForm.TakenOut("9", 10, ReadingForm.Why.EMPTY),
            new ReadingForm.TakenOut("11", 0, ReadingForm.Why.NO_ROW));
    assertThat(read("figures-below.csv").form().takenOut())
        .extracting(ReadingForm.TakenOut::mount, ReadingForm.TakenOut::why)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("Mean", ReadingForm.Why.FIGURE),
            org.assertj.core.groups.Tuple.tuple("Std. dev.", ReadingForm.Why.FIGURE));
  }

  @Test
  void thinSpacesAndUnicodeMinusesAreTaken() throws Exception {
    MeasuredSeries s = read("thin-spaces.csv");
    assertThat(value(s, "X", 0)).isCloseTo(1228.5, within(1e-6));
    assertThat(value(s, "Z", 0)).isCloseTo(-0.56, within(1e-9));
  }

  @Test
  void wordsAreNoReadingsAndAreNamed() throws Exception {
    assertThat(read("words-column.csv").form().passedOver()).containsExactly("Shift", "Time");
    assertThat(read("remarks-beside.csv").form().passedOver()).containsExactly("behind the last");
  }

  @Test
  void whatIsDoubtfulIsAskedForByOneMessage() {
    assertThatThrownBy(() -> read("doubtful-comma.csv"))
        .hasMessage(
            "doubtful-comma.csv:2: found 1,200: 1.200 or 1200? Say that the comma stands before"
                + " decimals with --decimal comma, or between thousands with --decimal point");
    assertThatThrownBy(() -> read("both-marks.csv"))
        .hasMessageContaining("1,25 in line 2 and 1.26 in line 3")
        .hasMessageContaining("--decimal");
    assertThatThrownBy(() -> read("comma-in-comma.csv"))
        .hasMessageContaining("separate the cells by semicolons")
        .satisfies(e -> assertThat(((UnreadableCsv) e).problems()).hasSize(1));
    assertThatThrownBy(() -> read("date-for-reading.csv")).hasMessageContaining("a date");
  }

  @Test
  void theAnswerSettlesTheDoubt() throws Exception {
    ReaderWishes comma = new ReaderWishes(Optional.of(DecimalMark.COMMA), Map.of());
    ReaderWishes point = new ReaderWishes(Optional.of(DecimalMark.POINT), Map.of());
    assertThat(value(read("doubtful-comma.csv", comma), "X", 1)).isCloseTo(1.203, within(1e-9));
    assertThat(value(read("doubtful-comma.csv", point), "X", 1)).isCloseTo(1203, within(1e-6));
    assertThatThrownBy(() -> read("both-marks.csv", comma))
        .hasMessageContaining("found \"1.26\", a point where decimals have a comma");
  }
}
