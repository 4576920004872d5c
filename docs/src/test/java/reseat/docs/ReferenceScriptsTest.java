package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs the reference scripts that need Python and mpmath alone; skipped where there is no such
 * Python (.ci/run installs what is missing and runs all scripts).
 */
class ReferenceScriptsTest {

  private static final Path FOLDER = ProjectFolder.docs().resolve("reference");
  private static final List<String> PYTHONS = List.of("python3", "/usr/bin/python3");
  private static final String PROBE = "import sys, mpmath; print(sys.version_info >= (3, 10))";

  @TempDir private Path folder;
  private static String python;

  @BeforeAll
  static void findPython() throws InterruptedException {
    for (String candidate : PYTHONS) {
      if (python == null && answers(candidate)) {
        python = candidate;
      }
    }
    assumeTrue(
        python != null,
        "the reference scripts were not run: no python3 of 3.10 or later with mpmath here"
            + " (Debian package python3-mpmath)");
  }

  private static boolean answers(String candidate) throws InterruptedException {
    try {
      return run(candidate, List.of("-c", PROBE)).output().equals("True\n");
    } catch (IOException notThere) {
      return false;
    }
  }

  @Test
  void theScriptsReproduceTheValuesOfTheProgram() throws Exception {
    Run run = run(python, List.of(FOLDER.resolve("run.py").toString(), "--quick"));
    assertThat(run.output().lines().filter(l -> !l.startsWith("ok   ")).toList())
        .as(run.output())
        .anyMatch(l -> l.matches("computed: 5\\d\\d of \\d+ reproduced"))
        .endsWith("ok");
    assertThat(run.code()).isZero();
  }

  @Test
  void aWrongValueIsFound() throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(ReferenceValuesTest.TABLE));
    lines.replaceAll(l -> l.contains("\tCV-094\t") ? l.replace("2240.8", "2241.1") : l);
    Path table = Files.write(folder.resolve("values.tsv"), lines);
    String script = FOLDER.resolve("materials.py").toString();
    Run wrong = run(python, List.of(script, "--values", table.toString()));
    assertThat(wrong.output()).contains("OFF  CV-094 52100: tensile strength: table 2241.1, ");
    assertThat(wrong.code()).isEqualTo(1);
    assertThat(run(python, List.of(script)).code()).isZero();
  }

  @Test
  void aValueWithoutAComputationIsFound() throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(ReferenceValuesTest.TABLE));
    lines.add("Materials\tCV-000\tnew\t1.0\t\t0.1\tCOMPUTED");
    Path table = Files.write(folder.resolve("values.tsv"), lines);
    String script = FOLDER.resolve("materials.py").toString();
    Run run = run(python, List.of(script, "--values", table.toString()));
    assertThat(run.output()).contains("NONE CV-000 new: no computation");
    assertThat(run.code()).isEqualTo(1);
  }

  private static Run run(String program, List<String> args)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(program));
    words.addAll(args);
    ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
    builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
    builder.environment().put("PYTHONIOENCODING", "utf-8");
    Process process = builder.start();
    process.getOutputStream().close();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(process.waitFor(), output);
  }

  private record Run(int code, String output) {}
}
