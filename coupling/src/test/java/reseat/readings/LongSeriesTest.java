package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A million mounts: read as a stream, and analysed without taking every pair. */
class LongSeriesTest {

  @Test
  void aLongSeriesIsTakenWithoutTakingEveryPair() {
    SplittableRandom random = new SplittableRandom(77);
    double[] y = new double[1_000_000];
    Arrays.setAll(y, i -> random.nextGaussian() + 1e-5 * i);
    Drift d = Drift.of(y);
    assertThat(d.verdict()).isEqualTo(Drift.Verdict.RISING);
    assertThat(d.monotonic().everyPair()).isFalse();
    assertThat(d.monotonic().slope()).isCloseTo(1e-5, within(2e-8));
    assertThat(Repeatability.of(y).bounds(0.95).upperOneSided()).isGreaterThan(0);
    assertThat(Outliers.of(y, 0.05).flagged()).isEmpty();
    assertThat(Settling.of(y).settled()).isFalse();
  }

  @Test
  void aMillionRowsAreReadAsAStream() throws Exception {
    int rows = 1_000_000;
    MeasuredSeries s = ReadingsReader.read("long.csv", new ManyRows(rows));
    assertThat(s.mounts()).isEqualTo(rows);
    assertThat(s.cycle(rows - 1)).isEqualTo(rows);
    assertThat(s.line(rows - 1)).isEqualTo(rows + 1);
    assertThat(Repeatability.of(s.columns().get(0).values()).range())
        .isCloseTo(0.9e-6, within(1e-15));
  }

  /** A file that is made as it is read, so that the test itself holds no text. */
  private static final class ManyRows extends InputStream {
    private final int rows;
    private byte[] line = "cycle,X [um],Z [um]\n".getBytes(StandardCharsets.UTF_8);
    private int at;
    private int row;

    ManyRows(int rows) {
      this.rows = rows;
    }

    @Override
    public int read() {
      if (at == line.length) {
        if (row == rows) {
          return -1;
        }
        row++;
        line = (row + ",0." + row % 10 + ",1.5\n").getBytes(StandardCharsets.UTF_8);
        at = 0;
      }
      return line[at++];
    }

    @Override
    public int read(byte[] into, int from, int length) {
      int count = 0;
      while (count < length) {
        int b = read();
        if (b < 0) {
          return count == 0 ? -1 : count;
        }
        into[from + count++] = (byte) b;
      }
      return count;
    }
  }
}
