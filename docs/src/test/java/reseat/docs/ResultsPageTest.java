package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.cli.command.Dispatch;

/** Holds the tables of keys to what the commands print: every key stands there, and no other. */
class ResultsPageTest {

  private static final Pattern PRINTED = Pattern.compile("(?m)^ *\"([^\"]+)\":");
  private static final Pattern CODE = Pattern.compile("`([^`]+)`");

  /** Names of axes and probes of the examples, which stand for keys. */
  private static final Set<String> NAMES = Set.of("X", "Z", "height", "front", "side");

  /** Stand in the tables for what they are, not for keys. */
  private static final Set<String> WORDS =
      Set.of("null", "--against", "--probes", "--later", "--all", "[remount]", "_m", "_rad");

  @TempDir private Path folder;

  private static String example(String name) {
    return ProjectFolder.examples().resolve(name).toString();
  }

  private static Set<String> printed(List<String[]> runs) {
    Set<String> keys = new TreeSet<>();
    for (String[] args : runs) {
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      new Dispatch().run(args, new PrintWriter(out, true), new PrintWriter(err, true));
      assertThat(err.toString()).as(Arrays.toString(args)).isEmpty();
      Matcher m = PRINTED.matcher(out.toString());
      while (m.find()) {
        keys.add(m.group(1));
      }
    }
    keys.removeAll(NAMES);
    return keys;
  }

  private String[] check(String name, String text) throws IOException {
    Path file = Files.writeString(folder.resolve(name), text);
    return new String[] {"check", file.toString(), "--json"};
  }

  /** Last parts of all keys in the table below a heading. */
  private static Set<String> told(String command) throws IOException {
    String page = Files.readString(ProjectFolder.docs().resolve("guide/results.md"));
    int begin = page.indexOf("## `" + command + " --json`");
    int end = page.indexOf("\n## ", begin + 1);
    Set<String> keys = new TreeSet<>();
    for (String line : page.substring(begin, end < 0 ? page.length() : end).lines().toList()) {
      Matcher m = CODE.matcher(line);
      while (line.startsWith("|") && m.find()) {
        keys.addAll(Arrays.asList(m.group(1).replace("[]", "").split("\\.")));
      }
    }
    keys.removeAll(WORDS);
    return keys;
  }

  @Test
  void everyKeyOfCheckStandsInItsTable() throws IOException {
    List<String[]> runs = new ArrayList<>();
    for (String name : List.of("tool-post.toml", "cone-vee-flat.toml")) {
      runs.add(new String[] {"check", example(name), "--json", "--all"});
    }
    String post = Files.readString(ProjectFolder.examples().resolve("tool-post.toml"));
    runs.add(check("weak.toml", post.replace("force = \"600 N\"", "force = \"60 N\"")));
    runs.add(check("soft.toml", post.replace("material = \"A2\"", "material = \"6061-T6\"")));
    String vee = Files.readString(ProjectFolder.examples().resolve("cone-vee-flat.toml"));
    runs.add(
        check(
            "decided.toml",
            vee.replace("height = \"0.5 um\"", "height = \"0.32 um\"")
                + "\n[[accepted]]\ncheck = \"repeatability\"\nwhere = \"height\"\nup_to = 1.1\nreason = \"tried\"\n"));
    assertThat(told("check")).isEqualTo(printed(runs));
  }

  @Test
  void everyKeyOfReadingsStandsInItsTable() throws IOException {
    Path ways = folder.resolve("ways.csv");
    StringBuilder rows = new StringBuilder("mount,X [um],temperature [degC],direction,holder\n");
    for (int i = 1; i <= 24; i++) {
      rows.append(i).append(',').append(i * 37 % 11 / 10.0);
      rows.append(',').append(20 + i * 53 % 17 / 20.0);
      rows.append(i % 2 == 0 ? ",left" : ",right").append(i % 4 < 2 ? ",1\n" : ",2\n");
    }
    Files.writeString(ways, rows);
    Path coarse = folder.resolve("coarse.csv");
    Files.writeString(coarse, "mount,X [mm]\n1,3\n2,8\n3,1\n4,9\n5,2\n6,7\n#7,5\n8,4\n");
    List<String[]> runs =
        List.of(
            new String[] {"readings", ways.toString(), "--json"},
            new String[] {"readings", coarse.toString(), "--json"},
            new String[] {
              "readings",
              example("readings-tool-post.csv"),
              "--against",
              example("tool-post.toml"),
              "--later",
              example("readings-weekly-check.csv"),
              "--json"
            },
            new String[] {
              "readings", example("readings-five-holders.csv"), "--reference", "1", "--json"
            },
            new String[] {
              "readings",
              example("readings-seven-probes.csv"),
              "--probes",
              example("probe-layout.csv"),
              "--tool-point",
              "47 mm, 0 mm, 15.2 mm",
              "--json"
            });
    assertThat(told("readings")).isEqualTo(printed(runs));
  }
}
