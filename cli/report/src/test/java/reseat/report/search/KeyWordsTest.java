package reseat.report.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.designfile.Starter;

/** Pictures speak trade words: every key that the guide and the shipped files vary has one. */
class KeyWordsTest {

  private static final Pattern VARIED = Pattern.compile("--vary ['\"]?([a-z][^ =]*)=");
  private static final Pattern LISTED =
      Pattern.compile("^ *\"([a-z_]+[^ =\"]*) = ", Pattern.MULTILINE);

  @Test
  void everyKeyOfTheShippedSweepsHasATradeWord() throws IOException {
    List<String> keys = new ArrayList<>();
    Path docs = Path.of("../../docs");
    try (var files = Files.walk(docs)) {
      for (Path file :
          files
              .filter(f -> f.toString().endsWith(".md") && !f.toString().contains("target"))
              .toList()) {
        gather(VARIED, Files.readString(file), keys);
      }
    }
    try (var files = Files.walk(docs.resolve("examples"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".toml")).toList()) {
        gather(LISTED, Files.readString(file), keys);
      }
    }
    for (Starter starter : Starter.values()) {
      gather(LISTED, starter.text(), keys);
    }
    assertThat(keys).hasSizeGreaterThan(6);
    assertThat(keys).allSatisfy(key -> assertThat(KeyWords.known(key)).as(key).isPresent());
  }

  private static void gather(Pattern pattern, String text, List<String> keys) {
    Matcher m = pattern.matcher(text);
    while (m.find()) {
      keys.add(m.group(1));
    }
  }

  @Test
  void choicesAndAxesAreTold() {
    assertThat(KeyWords.of("preload.force")).isEqualTo("preload");
    assertThat(KeyWords.of("support[front].ball.diameter")).isEqualTo("ball diameter of front");
    assertThat(KeyWords.of("support[*].ball.diameter")).isEqualTo("ball diameter");
    assertThat(KeyWords.of("load_case[rough].force.X")).isEqualTo("force of rough along X");
    assertThat(KeyWords.of("tool_point.at[3]")).isEqualTo("tool point, z");
    assertThat(KeyWords.of("some.strange_key")).isEqualTo("strange key");
    assertThat(KeyWords.ofOutput("peak-pressure")).isEqualTo("peak pressure");
    assertThat(KeyWords.ofOutput("stiffness.X")).isEqualTo("stiffness along X");
  }
}
