package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.cli.command.ExtremeDesigns.Extreme;
import reseat.cli.command.SpoiledRun.Outcome;

/**
 * Designs at the edge of mechanics get an answer or a clear refusal from every command, and no
 * output holds what is no number. Every command on every design with {@code -Pfull}; else the
 * check prints for people and as JSON in turn, and a slow command comes to every fifth design.
 */
class ExtremeDesignsTest {

  private static final boolean ALL = Boolean.getBoolean("full");

  private static final List<String> QUICK =
      List.of("check FILE --no-remedies", "check FILE --json --no-remedies");

  private static final List<String> SLOW =
      List.of(
          "check FILE",
          "remount FILE --mounts 6 --causes 2 --threads 1",
          "interchange FILE --holders 6 --threads 1",
          "shopsheet FILE -o TARGET",
          "report FILE -o TARGET --mounts 4 --holders 4 --threads 1",
          "remount FILE --mounts 6 --causes 2 --threads 1 --json",
          "interchange FILE --holders 6 --threads 1 --json",
          "size FILE --vary tool_point.at[3]=1mm,2mm --threads 1");

  /** A number printed for people that has slipped out of the format meant for it. */
  private static final Pattern SLIPPED = Pattern.compile("[0-9]e[+-]?[0-9]{3}|[0-9]{16}");

  /** Of so many designs one meets a slow command, without {@code -Pfull} and
 * {@code -Pspoil}. */
  private static final int EVERY = 5;

  @TempDir private Path folder;

  @Test
  void everyExtremeDesignGetsAnAnswerOrAClearRefusal() throws IOException {
    List<Extreme> designs = ExtremeDesigns.all();
    assertThat(designs).hasSizeGreaterThan(100);
    SpoiledRun run = new SpoiledRun(folder);
    List<String> faults = new ArrayList<>();
    int[] ended = new int[5];
    for (int i = 0; i < designs.size(); i++) {
      Extreme design = designs.get(i);
      for (String command : commands(i)) {
        List<String> fault = new ArrayList<>();
        byte[] bytes = design.text().getBytes(StandardCharsets.UTF_8);
        Outcome outcome = run.run(List.of(command.split(" ")), ".toml", bytes, fault);
        SLIPPED
            .matcher(command.contains("--json") ? "" : outcome.out())
            .results()
            .forEach(m -> fault.add("prints " + m.group()));
        fault.forEach(f -> faults.add(design + ", " + command + ": " + f));
        ended[Math.max(0, Math.min(ExitCode.NEEDS_DECISION, outcome.code()))]++;
      }
    }
    assertThat(faults).isEmpty();
    assertThat(ended)
        .as("some hold, some fail, some are refused, some have no rest")
        .doesNotContain(0);
  }

  private static List<String> commands(int design) {
    List<String> commands = new ArrayList<>();
    if (ALL) {
      commands.addAll(QUICK);
      commands.addAll(SLOW);
    } else {
      commands.add(QUICK.get(design % QUICK.size()));
      if (design % EVERY == 0) {
        commands.add(SLOW.get(design / EVERY % SLOW.size()));
      }
    }
    return commands;
  }
}
