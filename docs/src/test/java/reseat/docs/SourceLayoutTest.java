package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the source files of every module to the layout described in DEVELOPERS.md. */
class SourceLayoutTest {

  private static final Path PROJECT = ProjectFolder.root();
  private static final int LONGEST_FILE = 500;
  private static final int FILES_AT_LEAST = 60;
  private static final Pattern BUCKET_NAME = Pattern.compile(".*(Utils?|Helper|Manager|Common)s?");

  @Test
  void noFileIsLongerThanOneIdea() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (Path file : mainSources()) {
      int lines = Files.readAllLines(file).size();
      if (lines > LONGEST_FILE) {
        tooLong.add(PROJECT.relativize(file) + " has " + lines + " lines");
      }
    }
    assertThat(tooLong).isEmpty();
  }

  @Test
  void noClassIsNamedAfterABucket() throws IOException {
    assertThat(mainSources())
        .map(file -> file.getFileName().toString().replace(".java", ""))
        .noneMatch(name -> BUCKET_NAME.matcher(name).matches());
  }

  @Test
  void everyPackageExplainsItself() throws IOException {
    assertThat(mainSources())
        .extracting(Path::getParent)
        .allMatch(folder -> Files.exists(folder.resolve("package-info.java")));
  }

  private static List<Path> mainSources() throws IOException {
    List<Path> found = new ArrayList<>();
    for (String module : List.of("coupling", "plots", "cli")) {
      Path root = PROJECT.resolve(module).resolve("src/main/java");
      if (Files.exists(root)) {
        try (Stream<Path> files = Files.walk(root)) {
          files.filter(file -> file.toString().endsWith(".java")).forEach(found::add);
        }
      }
    }
    assertThat(found).hasSizeGreaterThan(FILES_AT_LEAST);
    return found;
  }
}
