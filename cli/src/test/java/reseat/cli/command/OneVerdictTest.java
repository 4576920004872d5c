package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.designfile.Starter;

/**
 * Every command gives the verdict of the check, as exit code and in JSON: on the shipped couplings,
 * on designs drawn round them, and upside down, dry, warm and tilted. Nothing is called holding
 * with a number beyond the limit printed beside it. With {@code -Pfull} 60 designs are drawn,
 * else 3, and every coupling meets every state, else one state each.
 */
class OneVerdictTest extends TypedCommand {

  private static final boolean FULL = Boolean.getBoolean("full");
  private static final int DRAWN = FULL ? 60 : 3;

  private static final Pattern VERDICT = Pattern.compile("\"verdict\": \"(\\w+)\"");
  private static final Pattern FINDING = Pattern.compile("\\{[^{}]*\"judged\": [^{}]*}");

  @TempDir private Path folder;

  /** What a command says of a design. */
  private record Word(int code, String verdict) {}

  private Word word(String name, List<?> words, String... more) {
    int code = type(words, more);
    assertThat(code).as("%s: %s", name, err).isIn(0, 1, 4);
    Matcher m = VERDICT.matcher(out.toString());
    assertThat(m.find()).as("%s has a verdict", name).isTrue();
    assertThat(code)
        .as("%s: code and JSON", name)
        .isEqualTo(
            switch (m.group(1)) {
              case "holds" -> 0;
              case "fails" -> 1;
              default -> 4;
            });
    keepsItsLimits(name, out.toString());
    return new Word(code, m.group(1));
  }

  /** Nothing holds beyond its printed limit, and what is beyond a limit is no advice. */
  private static void keepsItsLimits(String name, String json) {
    Matcher m = FINDING.matcher(json);
    while (m.find()) {
      String f = m.group();
      if (f.contains("\"judged\": \"holds\"")) {
        double value = number(f, "value");
        double limit = number(f, "limit");
        boolean most = f.contains("\"sense\": \"at most\"");
        assertThat(most ? value <= limit : value >= limit).as("%s: %s", name, f).isTrue();
      }
    }
  }

  private static double number(String finding, String key) {
    Matcher m = Pattern.compile("\"" + key + "\": (-?[0-9.eE+-]+)").matcher(finding);
    assertThat(m.find()).as("%s in %s", key, finding).isTrue();
    return Double.parseDouble(m.group(1));
  }

  /** The verdict of every command on a design; the report by its check. */
  private Word all(String name, String text, boolean report) throws IOException {
    Path file = Files.writeString(folder.resolve("design.toml"), text);
    Word check = word(name + " check", List.of("check", file, "--no-remedies"), "--json");
    boolean seated = out.toString().contains("\"state\": \"seated\"");
    assertThat(type(List.of("check", file, "--no-remedies")))
        .as("%s on the screen", name)
        .isEqualTo(check.code());
    String first = out.toString().lines().limit(2).reduce("", (a, b) -> a + b);
    assertThat(first)
        .as(name)
        .contains(
            switch (check.code()) {
              case 0 -> "HOLDS";
              case 1 -> "FAILS";
              default -> "NEEDS A DECISION";
            });
    assertThat(word(name + " remount", List.of("remount", file), "--json", "--mounts", "20"))
        .as(name + " remount")
        .isEqualTo(check);
    assertThat(word(name + " shopsheet", List.of("shopsheet", file), "--json"))
        .as(name + " shopsheet")
        .isEqualTo(check);
    interchange(name, file, check);
    if (report && seated) {
      Path target = folder.resolve("report");
      int code =
          type(
              List.of("report", file, "-o", target, "--force"),
              "--mounts",
              "20",
              "--holders",
              "10");
      assertThat(code).as(name + " report").isEqualTo(check.code());
      assertThat(Files.readString(target.resolve("check.json")))
          .contains("\"verdict\": \"" + check.verdict() + "\"");
    }
    return check;
  }

  /** Interchange adds what it finds of the holders alone. */
  private void interchange(String name, Path file, Word check) {
    Word word =
        word(name + " interchange", List.of("interchange", file), "--json", "--holders", "10");
    boolean misfits = false;
    Matcher m = FINDING.matcher(out.toString());
    while (m.find()) {
      misfits |=
          m.group().contains("\"check\": \"interchange\"")
              && m.group().contains("\"judged\": \"fails\"");
    }
    assertThat(word.code()).as(name + " interchange").isEqualTo(misfits ? 1 : check.code());
  }

  @ParameterizedTest
  @EnumSource(
      value = Starter.class,
      names = {"TOOL_POST", "PALLET", "SENSOR_MOUNT", "CONE_VEE_FLAT"})
  void shippedCouplingsHoldWithoutADecisionInEveryCommand(Starter starter) throws IOException {
    boolean report = FULL || starter == Starter.SENSOR_MOUNT;
    assertThat(all(starter.word(), starter.text(), report)).isEqualTo(new Word(0, "holds"));
    Path file = Files.writeString(folder.resolve("d.toml"), starter.text());
    type(List.of("check", file, "--no-remedies"), "--json");
    assertThat(out.toString()).contains("\"accepted\": 0");
  }

  @ParameterizedTest
  @EnumSource(
      value = Starter.class,
      names = {"TOOL_POST", "PALLET", "SENSOR_MOUNT", "CONE_VEE_FLAT"})
  void turnedOverDryWarmAndTiltedAllCommandsAgree(Starter starter) throws IOException {
    String text = starter.text();
    if (FULL || starter == Starter.TOOL_POST) {
      all(starter.word() + " upside down", DrawnFiles.upsideDown(text), false);
    }
    if (FULL || starter == Starter.PALLET) {
      assertThat(all(starter.word() + " dry", DrawnFiles.dry(text), false).code())
          .as("dry steel hangs up: " + starter.word())
          .isEqualTo(1);
    }
    if (FULL || starter == Starter.CONE_VEE_FLAT) {
      all(starter.word() + " warm", DrawnFiles.warm(text), false);
    }
    if (FULL || starter == Starter.SENSOR_MOUNT) {
      all(starter.word() + " tilted", DrawnFiles.tilted(text), false);
    }
  }

  @Test
  void designsDrawnRoundThemGetOneVerdictAndFewNeedADecision() throws IOException {
    int undecided = 0;
    int passing = 0;
    List<String> told = new ArrayList<>();
    for (int seed = 0; seed < DRAWN; seed++) {
      Word word = all("seed " + seed, DrawnFiles.drawn(seed), FULL);
      undecided += word.code() == 4 ? 1 : 0;
      passing += word.code() == 1 ? 0 : 1;
      told.add(seed + " " + word.verdict());
    }
    System.out.println("drawn designs: " + told);
    assertThat(passing).as("%s", told).isGreaterThan(DRAWN / 2);
    assertThat(undecided)
        .as("at most a fifth of %s: %s", passing, told)
        .isLessThanOrEqualTo(passing / 5);
  }
}
