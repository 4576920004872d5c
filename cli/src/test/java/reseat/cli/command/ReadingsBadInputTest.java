package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.numerics.RandomStream;

/** Every kind of spoiled readings file gets one clear answer from the command. */
class ReadingsBadInputTest extends TypedCommand {

  @TempDir Path folder;

  private int run(byte[] content) throws IOException {
    Path file = Files.write(folder.resolve("r.csv"), content);
    return type(List.of("readings", file));
  }

  private void isRefused(String content, String... words) throws IOException {
    assertThat(run(content.getBytes(StandardCharsets.UTF_8))).as(content).isEqualTo(2);
    assertThat(err.toString()).as(content).contains(words);
    assertThat(out.toString()).as(content).isEmpty();
  }

  private void isRead(String content, String... words) throws IOException {
    assertThat(run(content.getBytes(StandardCharsets.UTF_8))).as(content).isZero();
    assertThat(err.toString()).as(content).isEmpty();
    assertThat(out.toString().replaceAll("\\s+", " "))
        .as(content)
        .contains(words)
        .doesNotContain("NaN");
  }

  @Test
  void unitsStandInTheHeadAndNowhereElse() throws IOException {
    isRefused("cycle,X [um]\n1,0.1\n2,0.2 mm\n", "r.csv:3:3", "number with its own unit");
    isRefused("cycle,X\n1,0.1\n2,0.2\n", "r.csv:1:7", "has no unit", "X [um]");
    isRefused("cycle,X [N]\n1,0.1\n2,0.2\n", "is a force, not a length");
    isRead("cycle,X [um],Z [in]\n1,0.1,0.2\n2,0.2,0.3\n3,0.1,0.25\n", "X, µm", "Z, in");
    assertThat(type(List.of("readings", folder.resolve("r.csv"), "--unit", "kg"))).isEqualTo(2);
    assertThat(err.toString()).contains("--unit: [kg]");
  }

  @Test
  void aReadingInAnotherUnitThanTheRestIsNoticed() throws IOException {
    StringBuilder csv = new StringBuilder("cycle,X [um]\n");
    for (int i = 1; i <= 20; i++) {
      csv.append(i).append(i == 7 ? ",0.00123" : ",1." + (20 + i % 5)).append('\n');
    }
    isRead(csv.toString(), "Mount 7", "stands out", "taken for one another; it is counted");
  }

  @Test
  void aMissedReadingLeavesTheOthersAndIsTold() throws IOException {
    isRead(
        "cycle,X [um],Z [um]\n1,0.1,0.2\n2,,0.3\n3,0.3,0.2\n4,0.2,0.2\n",
        "4 mounts",
        "X not read at mount 2: counts for the others.");
  }

  @Test
  void commasAreNotTakenForPoints() throws IOException {
    isRead("cycle;X [um]\n1;0,1\n2;0,2\n3;0,15\n", "X in µm; decimals with a comma.");
    isRefused("cycle;X [um]\n1;1,100\n2;1,200\n", "r.csv:2", "1.100 or 1100?", "--decimal comma");
    isRefused("cycle,X [um]\n1,0,1\n2,0,2\n", "3 cells where the head has 2", "1.25");
    isRefused("cycle,X [um]\n1,\"1,234.5\"\n2,\"1,200\"\n", "no thousands mark");
  }

  @Test
  void textFromTheClipboardIsReadFromStandardInput() throws IOException {
    InputStream before = System.in;
    try {
      System.setIn(
          new ByteArrayInputStream(
              "Mount\tX\n1\t0,1\n2\t0,2\n3\t0,15\n".getBytes(StandardCharsets.UTF_8)));
      assertThat(type(List.of("readings", "-", "--unit", "um"))).isZero();
    } finally {
      System.setIn(before);
    }
    assertThat(out.toString()).startsWith("standard input: 3 mounts; X in µm");
  }

  @Test
  void textIsNotTakenForANumber() throws IOException {
    isRefused("cycle,X [um]\n1,abc\n2,0x1\n3,Infinity\n", "r.csv:2:3", "r.csv:3:3", "r.csv:4:3");
    isRefused("cycle,X [um]\n1,1e999\n2,1e300\n3,0\n", "too large to be a reading");
  }

  @Test
  void tooFewRowsAreSaidToBeTooFew() throws IOException {
    isRefused("", "no head line");
    isRefused("cycle,X [um]\n", "no readings");
    isRefused("cycle,X [um]\n1,0.1\n", "one mount says nothing about scatter");
  }

  @Test
  void zeroScatterIsNotResolvedByTheGauge() throws IOException {
    isRead(
        "cycle,X [um]\n1,0.1\n2,0.1\n3,0.1\n",
        "the gauge cannot resolve this mount",
        "--resolution");
  }

  @Test
  void marksAndLineEndsOfOtherSystemsAreRead() throws IOException {
    isRead("\ufeffcycle,X [µm]\r\n1,0.1\r\n2,0.2\r\n3,0.15\r\n", "3 mounts");
    isRead("cycle,X [um]\r1,0.1\r2,0.2\r3,0.15\r", "3 mounts");
    assertThat(run("cycle,X [µm]\n1,0.1\n2,0.2\n".getBytes(StandardCharsets.ISO_8859_1)))
        .isEqualTo(2);
    assertThat(err.toString()).contains("not UTF-8", "write um");
    assertThat(run("cycle,X [um]\n1,0.1\n2,0.2\n".getBytes(StandardCharsets.UTF_16))).isEqualTo(2);
    assertThat(err.toString()).contains("not UTF-8");
  }

  @Test
  void aMillionRowsAreReadAndJudged() throws IOException {
    Path file = folder.resolve("long.csv");
    RandomStream luck = RandomStream.of(20261126, 3);
    try (BufferedWriter csv = Files.newBufferedWriter(file)) {
      csv.write("X [um]\n");
      for (int i = 0; i < 1_000_000; i++) {
        // thousandths of a micrometre, written without the cost of a format
        csv.write(String.valueOf(Math.round(100 * luck.normal()) / 1000.0));
        csv.write('\n');
      }
    }
    int code = type(List.of("readings", file), "--all");
    assertThat(code).isZero();
    assertThat(out.toString())
        .contains("1000000 mounts", "none seen")
        .containsPattern("all: s +0\\.100")
        .doesNotContain("do not look normal");
  }
}
