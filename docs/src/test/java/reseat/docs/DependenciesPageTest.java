package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page of dependencies and the licences in the jar name what the build uses, and no more. */
class DependenciesPageTest {

  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| `([^`: ]+:[^`: ]+)` \\| (\\S+) \\| ([^|]+) \\| ([^|]+) \\|$");
  private static final Pattern BROUGHT = Pattern.compile("comes with .*");
  private static final Pattern JAR = Pattern.compile("(.+?)-(\\d[^/]*)\\.jar");

  private record Row(String version, String reason) {}

  private static Map<String, Row> rows(String page) {
    Map<String, Row> rows = new TreeMap<>();
    Matcher m = ROW.matcher(page);
    while (m.find()) {
      rows.put(m.group(1), new Row(m.group(2), m.group(4).strip()));
    }
    return rows;
  }

  private static String page() throws IOException {
    return Files.readString(ProjectFolder.docs().resolve("dependencies.md"));
  }

  @Test
  void everyThingThatThePomsNameIsListedWithItsVersion() throws IOException {
    Map<String, Row> rows = rows(page());
    Map<String, String> versions = BuildFiles.versions();
    assertThat(versions).hasSizeGreaterThan(30);
    versions.forEach(
        (name, version) ->
            assertThat(rows.getOrDefault(name, new Row("missing", "")).version())
                .as(name)
                .isEqualTo(version));
  }

  @Test
  void nothingElseIsListedButWhatComesAlong() throws IOException {
    Map<String, String> versions = BuildFiles.versions();
    assertThat(rows(page()))
        .allSatisfy(
            (name, row) ->
                assertThat(
                        versions.containsKey(name)
                            // The list of JUnit's parts names the version for it.
                            || name.equals("org.junit.jupiter:junit-jupiter")
                            || BROUGHT.matcher(row.reason()).matches())
                    .as(name)
                    .isTrue());
  }

  @Test
  void theLicencesInTheJarCoverEveryLibraryOfTheProgram() throws IOException {
    String page = page();
    int begin = page.indexOf("## In the program");
    Map<String, Row> program = rows(page.substring(begin, page.indexOf("## In the tests only")));
    Path texts = ProjectFolder.root().resolve("cli/src/main/resources/META-INF");
    String list = Files.readString(texts.resolve("licenses/README.txt"));
    assertThat(program).hasSizeGreaterThan(8);
    program.forEach(
        (name, row) ->
            assertThat(list)
                .containsPattern("(?m)^" + Pattern.quote(name) + " +" + row.version() + " "));
    assertThat(texts.resolve("LICENSE"))
        .hasSameBinaryContentAs(ProjectFolder.root().resolve("LICENSE"));
    assertThat(ProjectFolder.files(texts.resolve("licenses"), ".txt"))
        .extracting(file -> file.getFileName().toString())
        .containsExactlyInAnyOrder("README.txt", "commons-math.txt");
  }

  @Test
  void everyLibraryOfTheseTestsIsListedAndNoClassIsInTwo() throws IOException {
    Map<String, Row> rows = rows(page());
    Map<String, String> classes = new TreeMap<>();
    List<String> twice = new ArrayList<>();
    int libraries = 0;
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      Path file = Path.of(entry);
      Matcher m = JAR.matcher(file.getFileName().toString());
      if (!m.matches() || m.group(1).startsWith("reseat-") || entry.contains("surefire")) {
        continue;
      }
      libraries++;
      assertThat(rows)
          .as("row of %s", entry)
          .anySatisfy(
              (name, row) -> {
                assertThat(name).endsWith(":" + m.group(1));
                assertThat(row.version()).isEqualTo(m.group(2));
              });
      try (JarFile jar = new JarFile(file.toFile())) {
        jar.stream()
            .map(e -> e.getName())
            .filter(name -> name.endsWith(".class") && !name.endsWith("module-info.class"))
            .filter(name -> classes.putIfAbsent(name, entry) != null)
            .forEach(name -> twice.add(name + " in " + entry + " and " + classes.get(name)));
      }
    }
    assertThat(libraries).isGreaterThan(15);
    assertThat(twice).isEmpty();
  }
}
