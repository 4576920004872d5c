package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.cli.command.SpoiledRun.Outcome;

/**
 * Files that once made the program do wrong, each run again. {@code found.txt} beside them has a
 * line each: file, exit code wanted, words of the message wanted, command, what it once did.
 */
class FoundCasesTest {

  private static final Path FOUND = Path.of("src/test/resources/reseat/cli/command/found");

  @TempDir private Path folder;

  private record Found(String file, int code, String words, String command, String once) {
    @Override
    public String toString() {
      return file + ": " + once;
    }
  }

  static Stream<Found> found() throws IOException {
    return Files.readAllLines(FOUND.resolve("found.txt")).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(" \\| ", 5))
        .map(f -> new Found(f[0], Integer.parseInt(f[1]), f[2], f[3], f[4]));
  }

  @ParameterizedTest
  @MethodSource("found")
  void whatWasFoundOnceIsRight(Found found) throws IOException {
    byte[] bytes = Files.readAllBytes(FOUND.resolve(found.file()));
    String ending = found.file().substring(found.file().lastIndexOf('.'));
    List<String> fault = new ArrayList<>();
    Outcome outcome =
        new SpoiledRun(folder).run(List.of(found.command().split(" ")), ending, bytes, fault);
    assertThat(fault).isEmpty();
    assertThat(outcome.code()).as(outcome.err()).isEqualTo(found.code());
    assertThat(outcome.out() + outcome.err()).contains(found.words());
  }

  @Test
  void everyFileKeptIsRun() throws IOException {
    List<String> run = found().map(Found::file).toList();
    try (Stream<Path> kept = Files.list(FOUND)) {
      assertThat(kept.map(f -> f.getFileName().toString()).filter(f -> !f.equals("found.txt")))
          .allMatch(run::contains);
    }
  }
}
