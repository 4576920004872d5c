package reseat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The libraries that these tests run on, those that others bring along included. */
class TestClassPathTest {

  private static final Pattern JAR = Pattern.compile("(.+?)-(\\d[^/]*)\\.jar");

  @Test
  void everyLibraryStandsOnThePageOfDependenciesWithItsVersion() throws IOException {
    Path page = Path.of("docs/dependencies.md");
    if (!Files.exists(page)) {
      page = Path.of("..").resolve(page);
    }
    String text = Files.readString(page);
    List<String> rows = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      Matcher m = JAR.matcher(Path.of(entry).getFileName().toString());
      if (m.matches() && !entry.contains("surefire")) {
        rows.add(":" + m.group(1) + "` | " + m.group(2) + " |");
      }
    }
    assertThat(rows).hasSizeGreaterThan(20).allSatisfy(row -> assertThat(text).contains(row));
  }
}
