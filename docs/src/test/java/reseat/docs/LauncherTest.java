package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the launcher as a person does: another process, another folder, a link. */
class LauncherTest {

  private static final Path LAUNCHER = ProjectFolder.root().resolve("reseat");

  @TempDir private Path elsewhere;

  @Test
  void theVersionIsTheOnlyOutputOfAskingForIt() throws IOException, InterruptedException {
    run(LAUNCHER, "--version");
    Run second = run(LAUNCHER, "--version");
    assertThat(second.output()).matches("reseat \\d+\\.\\d+\\.\\d+\\R");
    assertThat(second.code()).isZero();
  }

  @Test
  void aLinkToALinkInAFolderWithASpaceWorks() throws IOException, InterruptedException {
    Path folder = Files.createDirectory(elsewhere.resolve("my tools"));
    Path first = Files.createSymbolicLink(folder.resolve("first"), LAUNCHER);
    Path second = Files.createSymbolicLink(folder.resolve("second"), first.getFileName());
    Run run = run(second, "--version");
    Files.delete(second);
    Files.delete(first);
    assertThat(run.code()).isZero();
  }

  @Test
  void theExitCodeOfTheProgramIsTheLaunchersOwn() throws IOException, InterruptedException {
    Run run = run(LAUNCHER, "no-such-command");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.output()).contains("no command 'no-such-command'");
  }

  private Run run(Path program, String... args) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(program.toString()));
    words.addAll(List.of(args));
    Process process =
        new ProcessBuilder(words)
            .directory(elsewhere.toFile())
            .redirectErrorStream(true)
            .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(process.waitFor(), output);
  }

  private record Run(int code, String output) {}
}
