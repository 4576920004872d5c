package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Follows every page that shows commands, step by step, and compares what it shows with what they
 * print. With {@code -Dguide.write=true} the pages are renewed instead; {@code
 * -Dguide.only=remount} takes the pages with that in their name.
 */
class GuideTest {

  private static final boolean WRITE = Boolean.getBoolean("guide.write");
  private static final String ONLY = System.getProperty("guide.only", "");

  static Stream<Path> pages() throws IOException {
    List<Path> pages =
        new ArrayList<>(ProjectFolder.files(ProjectFolder.docs().resolve("guide"), ".md"));
    pages.addAll(ProjectFolder.files(ProjectFolder.docs(), ".md"));
    pages.add(ProjectFolder.examples().resolve("README.md"));
    pages.add(ProjectFolder.root().resolve("README.md"));
    return pages.stream()
        .filter(Files::exists)
        .map(p -> ProjectFolder.root().relativize(p))
        .filter(p -> p.toString().contains(ONLY));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void whatAPageShowsIsWhatTheProgramPrints(Path name) throws IOException {
    GuidePage page = GuidePage.read(ProjectFolder.root().resolve(name));
    List<String> renewed = new ArrayList<>(page.lines());
    int shift = 0;
    GuideShell shell = GuideShell.clean();
    for (GuidePage.Step step : page.steps()) {
      String place = name + ":" + step.line();
      if (step instanceof GuidePage.Save save) {
        shell.save(save);
      } else if (step instanceof GuidePage.Edit edit) {
        shell.edit(edit);
      } else if (step instanceof GuidePage.Commands commands) {
        GuideShell.Outcome outcome = shell.run(commands);
        assertThat(outcome.code())
            .as("exit code at %s, which printed%n%s", place, String.join("\n", outcome.printed()))
            .isEqualTo(commands.exitCode());
        Optional<GuidePage.Block> shown = commands.printed();
        if (shown.isPresent() && WRITE) {
          List<String> lines = ShownOutput.renewed(shown.get().lines(), outcome.printed());
          renewed.subList(shift + shown.get().from() + 1, shift + shown.get().to()).clear();
          renewed.addAll(shift + shown.get().from() + 1, lines);
          shift += lines.size() - shown.get().lines().size();
        } else if (shown.isPresent()) {
          assertThat(ShownOutput.difference(shown.get().lines(), outcome.printed()))
              .as("what is shown at %s:%d", name, shown.get().from() + 1)
              .isEmpty();
        }
      }
    }
    if (WRITE) {
      Files.write(page.file(), renewed);
    }
  }

  @Test
  void theReadmeSetsUpWithTwoCommands() throws IOException {
    List<String> commands = new ArrayList<>();
    for (GuidePage.Step step : GuidePage.read(ProjectFolder.root().resolve("README.md")).steps()) {
      if (step instanceof GuidePage.Commands c) {
        commands.addAll(c.commands());
      }
    }
    assertThat(commands).startsWith("./reseat check docs/examples/tool-post.toml", "mvn -B verify");
  }
}
