package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.cli.command.SpoiledRun.Outcome;

/**
 * Spoiled files get an answer or a message, whatever they hold: never a fault of the program, a
 * number that is none, silence, or a file half-written. Many more cases with {@code -Pfull} and
 * {@code -Pspoil}; what was found stands in {@link FoundCasesTest}.
 */
class SpoiledInputTest {

  private static final int CASES = Integer.getInteger("spoiled", 2000);
  private static final long SEED = Long.getLong("spoiled.seed", 20261125);

  /** Far beyond the slowest case; only a run that never ends meets it. */
  private static final Duration FOREVER = Duration.ofMinutes(10);

  private static final String VARY =
      "layout.ball.diameter = 1/2 in, 5/8 in"; // two candidates of the tool post

  @TempDir private Path folder;

  /** Shares are in thousandths of all cases; the slow commands have the small ones. */
  @ParameterizedTest
  @CsvSource({
    "150, tool-post.toml, check FILE",
    "30, tool-post.toml, check FILE --json",
    "196, pallet.toml, check FILE",
    "190, sensor-mount.toml, check FILE",
    "150, cone-vee-flat.toml, check FILE",
    "140, ball-mount.toml, mount FILE",
    "20, ball-mount.toml, mount FILE --json",
    "4, readings-tool-post.csv, readings FILE",
    "2, readings-tool-post.csv, readings FILE --json",
    "60, readings-five-holders.csv, readings FILE",
    "6, readings-weekly-check.csv, readings FILE",
    "3, readings-weekly-check.csv, readings @readings-tool-post.csv --later FILE",
    "1, readings-seven-probes.csv, readings FILE --probes @probe-layout.csv",
    "8, probe-layout.csv, readings @readings-seven-probes.csv --probes FILE",
    "1, readings-five-holders.csv, readings FILE -o TARGET",
    "8, tool-post-parts.csv, "
        + "interchange @tool-post.toml --measured FILE --holders 2 --threads 1",
    "4, tool-post.toml, interchange FILE --holders 2 --threads 1",
    "4, pallet.toml, remount FILE --mounts 2 --causes 2 --threads 1",
    "3, cone-vee-flat.toml, remount FILE --mounts 2 --causes 2 --threads 1 --json",
    "5, ball-mount.toml, shopsheet FILE -o TARGET",
    "2, tool-post.toml, shopsheet FILE -o TARGET",
    "1, sensor-mount.toml, report FILE -o TARGET --mounts 2 --holders 2 --threads 1",
    "3, sensor-mount.toml, "
        + "sweep FILE --vary preload[1].force=20N..30N:2 --csv TARGET --mounts 2 --threads 1",
    "1, tool-post.toml, size FILE --vary VARY --threads 1",
    "8, candidates.csv, size @tool-post.toml --vary VARY --threads 1 --merge FILE",
  })
  void everySpoiledFileGetsAnAnswer(int share, String example, String command) throws IOException {
    String text = text(example);
    String other = text(example.endsWith(".csv") ? "probe-layout.csv" : "pallet.toml");
    String ending = example.substring(example.lastIndexOf('.'));
    List<String> words = words(command);
    long seed = SEED + (example + command).hashCode();
    SpoiledText spoiled = new SpoiledText(seed);
    SpoiledRun run = new SpoiledRun(folder);
    long cases = Math.max(1, (long) CASES * share / 1000);
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < cases; i++) {
      byte[] bytes = spoiled.of(text, other);
      List<String> fault = new ArrayList<>();
      assertTimeoutPreemptively(
          FOREVER,
          () -> run.run(words, ending, bytes, fault),
          () -> "hangs: case " + kept(bytes, ending));
      if (!fault.isEmpty()) {
        faults.add(kept(bytes, ending) + ": " + String.join("; ", fault));
      }
    }
    assertThat(faults).as("reseat %s, seed %d, %d cases", command, seed, cases).isEmpty();
  }

  @Test
  void anEmptyFileIsToldToBeEmptyOfWhatIsWanted() throws IOException {
    List<String> fault = new ArrayList<>();
    Outcome outcome =
        new SpoiledRun(folder).run(List.of("check", "FILE"), ".toml", new byte[0], fault);
    assertThat(fault).isEmpty();
    assertThat(outcome.code()).isEqualTo(ExitCode.BAD_INPUT);
  }

  private static List<String> words(String command) {
    return List.of(command.split(" ")).stream().map(w -> w.equals("VARY") ? VARY : w).toList();
  }

  private String text(String example) throws IOException {
    if (!example.equals("candidates.csv")) {
      return Files.readString(SpoiledRun.EXAMPLES.resolve(example));
    }
    Path file = folder.resolve("candidates.csv");
    String[] args = {
      "size",
      SpoiledRun.EXAMPLES.resolve("tool-post.toml").toString(),
      "--vary",
      VARY,
      "--candidates",
      file.toString()
    };
    new Dispatch()
        .run(args, new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()));
    return Files.readString(file);
  }

  /** Keeps the bytes of a case and says where. */
  private static String kept(byte[] bytes, String ending) {
    try {
      return "kept as " + Files.write(Files.createTempFile("reseat-spoiled", ending), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
