package reseat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.cli.Launched.End;

/**
 * Kills, starves and stops the program while it writes: old results stay whole, one message says
 * what happened, the exit code is the right one. {@code -Dspoiled.kills=100} repeats the kills.
 */
@EnabledOnOs(OS.LINUX)
class FaultOfSurroundingsTest {

  private static final int KILLS = Integer.getInteger("spoiled.kills", 1);
  private static final Path EXAMPLES = Path.of("..", "docs", "examples").toAbsolutePath();

  /** Every command that writes; the word OUT is where to. */
  private static final String REPORT =
      "report post.toml -o OUT --mounts 30 --holders 30 --threads 1";

  private static final String SHOPSHEET = "shopsheet post.toml -o OUT";
  private static final String READINGS = "readings series.csv -o OUT";
  private static final String SWEEP =
      "sweep post.toml --vary preload.force=500N..700N:3 --mounts 9 --csv OUT --force --threads 1";
  private static final String PICTURE = "report post.toml --picture plan -o OUT --force";
  private static final String WINNER =
      "size post.toml --vary preload.force=500N,600N --winner OUT --force --threads 1";
  private static final String LONG_SEARCH =
      "size post.toml --vary preload.force=200N..900N:60"
          + " --vary layout.groove.flank_angle=35deg..55deg:10 --candidates OUT --threads 1";

  @TempDir private Path folder;

  @BeforeEach
  void files() throws IOException {
    Files.copy(EXAMPLES.resolve("tool-post.toml"), folder.resolve("post.toml"));
    Files.copy(EXAMPLES.resolve("readings-five-holders.csv"), folder.resolve("series.csv"));
  }

  @ParameterizedTest
  @ValueSource(strings = {REPORT, SHOPSHEET, READINGS, SWEEP, PICTURE, WINNER})
  void aRunThatIsKilledWhileItWritesLeavesTheOldResultsOrTheNew(String command)
      throws IOException, InterruptedException {
    Path target = folder.resolve("OUT");
    Launched.plain(folder, words(command)).end();
    Map<String, String> old = contents(target);
    assertThat(old).isNotEmpty();
    change();
    for (int i = 0; i < KILLS; i++) {
      Launched run = Launched.plain(folder, words(command));
      while (run.runs() && parts().isEmpty()) {
        Thread.onSpinWait();
      }
      run.kill();
      run.end();
      Map<String, String> left = contents(target);
      if (!left.equals(old)) {
        restored(command);
        if (left.isEmpty()) { // killed between the two renames: the next run puts a folder there
          assertThat(contents(target).keySet()).isEqualTo(old.keySet());
          return;
        }
        assertThat(contents(target)).as("the new results, whole").isEqualTo(left);
        return;
      }
    }
    End again = restored(command);
    assertThat(again.code()).as(again.err()).isBetween(0, 1);
    assertThat(contents(target).keySet()).isEqualTo(old.keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {REPORT, SHOPSHEET, READINGS, SWEEP, PICTURE, WINNER})
  void aDiskThatIsFullLeavesTheOldResultsAndIsToldInOneLine(String command)
      throws IOException, InterruptedException {
    Path target = folder.resolve("OUT");
    Launched.plain(folder, words(command)).end();
    Map<String, String> old = contents(target);
    change();
    String starved = "(ulimit -f 0; \"$@\" 2>&1; echo code $?) | cat >&2";
    End end = Launched.through(folder, starved, Map.of(), words(command)).end();
    assertThat(end.err().lines()).as(end.err()).hasSize(2);
    assertThat(end.err()).contains("OUT: cannot read or write: File too large\ncode 2\n");
    assertThat(contents(target)).isEqualTo(old);
    assertThat(parts()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {REPORT, SHOPSHEET, READINGS, SWEEP, PICTURE, WINNER})
  void aPlaceThatCannotBeWrittenIsToldInOneLine(String command)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(words(command));
    words.set(words.indexOf("OUT"), "/proc/OUT"); // shut even to root
    End end = Launched.plain(folder, words).end();
    assertThat(end.code()).isEqualTo(2);
    assertThat(end.err().lines()).as(end.err()).hasSize(1);
    assertThat(end.err()).contains("/proc").doesNotContain(".part");
    assertThat(end.out()).isEmpty();
  }

  @Test
  void aSearchThatIsKilledGoesOnWhereItWas() throws IOException, InterruptedException {
    Path target = folder.resolve("OUT");
    Launched run = Launched.plain(folder, words(LONG_SEARCH));
    while (run.runs() && !(Files.exists(target) && Files.size(target) > 8_000)) {
      Thread.sleep(1);
    }
    assumeTrue(run.runs(), "the search was over before it could be killed");
    run.kill();
    run.end();
    goesOnToTheSameEnd(target);
  }

  @Test
  void aSearchThatFillsTheDiskSaysHowToGoOn() throws IOException, InterruptedException {
    Path target = folder.resolve("OUT");
    String starved = "(ulimit -f 24; \"$@\" 2>&1; echo code $?) | cat >&2";
    End end = Launched.through(folder, starved, Map.of(), words(LONG_SEARCH)).end();
    assertThat(end.err())
        .endsWith(
            "OUT: cannot read or write: File too large; make room, then add --resume\ncode 2\n");
    assertThat(Files.size(target)).isPositive();
    goesOnToTheSameEnd(target);
  }

  private void goesOnToTheSameEnd(Path target) throws IOException, InterruptedException {
    End resumed = Launched.plain(folder, words(LONG_SEARCH + " --resume")).end();
    byte[] joined = Files.readAllBytes(target);
    End whole = Launched.plain(folder, words(LONG_SEARCH + " --force")).end();
    assertThat(joined).isEqualTo(Files.readAllBytes(target));
    assertThat(resumed.out()).isEqualTo(whole.out()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "report post.toml -o OUT --mounts 50000000 --threads 1",
        "remount post.toml --mounts 50000000 --threads 1",
        "interchange post.toml --holders 50000000 --threads 1",
        "sweep post.toml --vary preload.force=500N..700N:9000 --csv OUT --threads 1",
        "size post.toml --vary preload.force=200N..900N:6000"
            + " --vary layout.groove.flank_angle=35deg..55deg:400 --winner OUT --threads 1",
      })
  void aStoppedRunEndsWith130AndOneLineAndWritesNothing(String command)
      throws IOException, InterruptedException {
    assumeTrue(Launched.heedsInterrupts(), "started in the background of a script");
    Launched run = Launched.plain(folder, words(command));
    Thread.sleep(1500);
    assertThat(run.runs()).as("long enough to be stopped: %s", run.said()).isTrue();
    run.interrupt();
    End end = run.end();
    assertThat(end.code()).isEqualTo(130);
    assertThat(end.out()).isEmpty();
    assertThat(end.err().strip().lines()).as(end.err()).hasSizeLessThanOrEqualTo(1);
    assertThat(folder.resolve("OUT")).doesNotExist();
    assertThat(parts()).isEmpty();
  }

  @Test
  void aStopWhileAFolderIsWrittenLetsItBeFinished() throws IOException, InterruptedException {
    assumeTrue(Launched.heedsInterrupts(), "started in the background of a script");
    Launched run = Launched.plain(folder, words(SHOPSHEET));
    while (run.runs() && parts().isEmpty()) {
      Thread.onSpinWait();
    }
    run.interrupt();
    run.end();
    assertThat(parts()).isEmpty();
    assertThat(folder.resolve("OUT").resolve("cautions.html")).isNotEmptyFile();
  }

  @Test
  void aReaderThatHasSeenEnoughEndsTheRunQuietly() throws IOException, InterruptedException {
    for (String command : List.of("verify", "check post.toml --json", "materials")) {
      End end =
          Launched.through(folder, "(\"$@\"; echo code $? >&2) | head -1", Map.of(), words(command))
              .end();
      assertThat(end.out().lines()).hasSize(1);
      assertThat(end.err().strip()).as(command).isEqualTo("code 0");
    }
  }

  @Test
  void aScreenThatTakesNothingIsToldInOneLine() throws IOException, InterruptedException {
    for (String command : List.of("check post.toml", "check post.toml --json", "starter pallet")) {
      End end = Launched.through(folder, "exec \"$@\" >/dev/full", Map.of(), words(command)).end();
      assertThat(end.code()).as(command).isEqualTo(2);
      assertThat(end.err()).isEqualTo("reseat: cannot write the result: No space left on device\n");
    }
  }

  @Test
  void noHomeAndNoLocaleAndAnotherTimeZoneChangeNothing() throws IOException, InterruptedException {
    End wanted = Launched.plain(folder, words("check post.toml")).end();
    Map<String, String> odd = new HashMap<>();
    odd.put("HOME", null);
    odd.put("LC_ALL", "C");
    odd.put("LANG", "xx_XX");
    odd.put("TZ", "Pacific/Kiritimati");
    odd.put("TERM", null);
    for (String home : new String[] {null, "/nonexistent", "/proc"}) {
      odd.put("HOME", home);
      End end = Launched.through(folder, "exec \"$@\"", odd, words("check post.toml")).end();
      assertThat(end).isEqualTo(wanted);
      End png =
          Launched.through(
                  folder, "exec \"$@\"", odd, words(PICTURE.replace("OUT", "OUT.png") + " --png"))
              .end();
      assertThat(png.code()).as(png.err()).isZero();
      assertThat(png.err()).isEmpty();
    }
  }

  private static List<String> words(String command) {
    return List.of(command.split(" "));
  }

  /** So that new results differ from the old ones. */
  private void change() throws IOException {
    Path post = folder.resolve("post.toml");
    Files.writeString(post, Files.readString(post).replace("Tool post for", "Another post for"));
    Path series = folder.resolve("series.csv");
    Files.writeString(series, Files.readString(series).replace("1, 16.37", "1, 16.38"));
  }

  private End restored(String command) throws IOException, InterruptedException {
    return Launched.plain(folder, words(command)).end();
  }

  private List<Path> parts() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.getFileName().toString().startsWith(".OUT")).toList();
    }
  }

  private static Map<String, String> contents(Path target) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    if (!Files.exists(target)) {
      return contents;
    }
    try (Stream<Path> files = Files.walk(target, FileVisitOption.FOLLOW_LINKS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        byte[] bytes = Files.readAllBytes(file);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        contents.put(target.relativize(file).toString(), text);
      }
    }
    return contents;
  }
}
