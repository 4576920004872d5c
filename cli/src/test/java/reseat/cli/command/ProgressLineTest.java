package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

  private static final long SECOND = 1_000_000_000L;

  private final StringWriter err = new StringWriter();
  private long now;

  private ProgressLine line(boolean watched) {
    return new ProgressLine(new PrintWriter(err), watched, 1000, () -> now);
  }

  @Test
  void nothingIsWrittenUnlessSomebodyWatches() {
    ProgressLine line = line(false);
    now = 10 * SECOND;
    line.at(500);
    line.wipe();
    assertThat(err.toString()).isEmpty();
    assertThat(line.done()).isEqualTo(500);
  }

  @Test
  void theTimeLeftFollowsFromTheTimeTaken() {
    ProgressLine line = line(true);
    now = 10 * SECOND;
    line.at(250);
    assertThat(err.toString()).contains("25 %, 30 s left");
    line.wipe();
    assertThat(err.toString()).endsWith("\r");
  }

  @Test
  void aShortRunShowsNothingAndALongOneIsNotWrittenTooOften() {
    ProgressLine line = line(true);
    now = SECOND / 10;
    line.at(100);
    assertThat(err.toString()).isEmpty();
    now = SECOND;
    line.at(200);
    int length = err.toString().length();
    assertThat(length).isPositive();
    now += SECOND / 100;
    line.at(201);
    assertThat(err.toString()).hasSize(length);
  }

  @Test
  void timesAreToldInTheUnitThatSuits() {
    assertThat(ProgressLine.time(0.2)).isEqualTo("1 s");
    assertThat(ProgressLine.time(89)).isEqualTo("89 s");
    assertThat(ProgressLine.time(600)).isEqualTo("10 min");
    assertThat(ProgressLine.time(9000)).isEqualTo("2.5 h");
  }
}
