package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same command gives the same bytes, printed and written, whatever the language and time zone
 * of the machine, on any number of threads, however often it is run. {@code .ci/same-results} does
 * the same in processes of their own.
 */
class SameResultTest extends TypedCommand {

  private static final Path EXAMPLES = Path.of("..", "docs", "examples");
  private static final int[] THREADS = {1, 2, 3, 7};

  @TempDir private Path folder;

  private final Locale language = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void goHome() {
    Locale.setDefault(language);
    TimeZone.setDefault(zone);
  }

  /** Somewhere with commas in numbers, dotless letters or digits of its own. */
  private static void travel(int time) {
    List<Locale> languages =
        List.of(
            Locale.ROOT,
            Locale.forLanguageTag("tr-TR"),
            Locale.GERMANY,
            Locale.forLanguageTag("ar-EG-u-nu-arab"));
    List<String> zones = List.of("UTC", "Pacific/Kiritimati", "America/Adak", "Asia/Kathmandu");
    Locale.setDefault(languages.get(time % languages.size()));
    TimeZone.setDefault(TimeZone.getTimeZone(zones.get(time % zones.size())));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "remount tool-post.toml --mounts 200 --causes 40 --cut rough --reclamp",
        "remount cone-vee-flat.toml --mounts 100 --causes off --json",
        "interchange tool-post.toml --holders 3000 --posts 2",
        "interchange tool-post.toml --holders 1000 --measured tool-post-parts.csv --json",
        "sweep tool-post.toml --vary preload.force=400_N..800_N:3 --mounts 40 --csv OUT/a.csv",
        "size tool-post.toml --vary preload.force=400_N..800_N:3 --winner OUT/w.toml"
            + " --candidates OUT/c.csv --picture OUT/p.svg",
        "size pallet.toml --vary layout.ball.diameter=10_mm,12_mm --json",
        "report tool-post.toml -o OUT/page --mounts 60 --holders 60",
      })
  void onAnyNumberOfThreads(String line) throws IOException {
    Map<String, String> first = null;
    for (int time = 0; time < THREADS.length; time++) {
      travel(time);
      Map<String, String> result = run(line + " --threads " + THREADS[time], "r" + time);
      first = first == null ? result : first;
      assertThat(result).as("%d threads", THREADS[time]).isEqualTo(first);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check tool-post.toml",
        "check pallet.toml --json",
        "starter ball-mount OUT/new.toml",
        "materials",
        "materials 440C",
        "verify",
        "size tool-post.toml --choices",
        "report tool-post.toml --picture plan --png -o OUT/plan.png",
        "shopsheet sensor-mount.toml -o OUT/sheets",
        "shopsheet pallet.toml --json",
        "mount ball-mount.toml",
        "mount ball-mount.toml --json",
        "mount ball-mount.toml --picture section-stud -o OUT/stud.svg",
        "readings readings-five-holders.csv --reference 1 --offsets OUT/offsets.csv",
        "readings readings-tool-post.csv --later readings-weekly-check.csv --json",
        "readings readings-tool-post.csv -o OUT/page",
        "readings OUT/form.csv --plan --target X=0.5_um",
        "check readings-tool-post.csv",
      })
  void howeverOftenAndWherever(String line) throws IOException {
    Map<String, String> first = null;
    for (int time = 0; time < 3; time++) {
      travel(time);
      Map<String, String> result = run(line, "r" + time);
      first = first == null ? result : first;
      assertThat(result).as("run %d", time).isEqualTo(first);
    }
  }

  /** Code, what is printed, and every file that is written. */
  private Map<String, String> run(String line, String name) throws IOException {
    Path target = Files.createDirectory(folder.resolve(name));
    List<String> words = new ArrayList<>();
    for (String word : line.split(" ", -1)) {
      boolean example = Files.exists(EXAMPLES.resolve(word));
      words.add(
          example
              ? EXAMPLES.resolve(word).toString()
              : word.replace("OUT", target.toString()).replace('_', ' '));
    }
    int code = type(words);
    Map<String, String> result = new TreeMap<>();
    result.put("code", String.valueOf(code));
    result.put("out", out.toString().replace(target.toString(), "OUT"));
    result.put("err", err.toString().replace(target.toString(), "OUT"));
    assertThat(code).as("%s: %s", line, err).isIn(ExitCode.HOLDS, ExitCode.CHECK_FAILS, 2);
    assertThat(code == ExitCode.BAD_INPUT).as("%s", err).isEqualTo(out.toString().isEmpty());
    try (Stream<Path> files = Files.walk(target)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        // every byte a character of its own: PNG is no text
        String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        result.put(target.relativize(file).toString(), bytes.replace(target.toString(), "OUT"));
      }
    }
    return result;
  }
}
