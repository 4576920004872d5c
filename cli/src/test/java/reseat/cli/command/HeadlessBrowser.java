package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A real browser, headless Chromium; tests are skipped where there is none (.ci/run installs it).
 */
final class HeadlessBrowser {

  private static final List<Path> BROWSERS =
      List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));

  private final Path program;
  private final Path folder;
  private final Path profile;

  private HeadlessBrowser(Path program, Path folder) throws IOException {
    this.program = program;
    this.folder = folder;
    this.profile = Files.createTempDirectory(folder, "browser");
  }

  /** Finds the browser, or skips the test; its files go to a folder. */
  static HeadlessBrowser in(Path folder) throws IOException {
    Path program = BROWSERS.stream().filter(Files::isExecutable).findFirst().orElse(null);
    assumeTrue(program != null, "no Chromium on this machine");
    return new HeadlessBrowser(program, folder);
  }

  /** Runs it and returns what it wrote. */
  String run(String... args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(program.toString());
    command.addAll(
        List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--virtual-time-budget=3000",
            "--user-data-dir=" + profile));
    command.addAll(List.of(args));
    Path out = Files.createTempFile(folder, "out", ".txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("the browser ended").isTrue();
    return Files.readString(out);
  }
}
