package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Holds the page about the library to an example that is compiled and run. */
class LibraryPageTest {

  private static String page() throws IOException {
    return Files.readString(ProjectFolder.docs().resolve("guide/library.md"));
  }

  private static Path source() {
    return ProjectFolder.docs().resolve("src/test/java/reseat/docs/LibraryExample.java");
  }

  private static String block(String language) throws IOException {
    Matcher m = Pattern.compile("(?s)```" + language + "\n(.*?)```").matcher(page());
    assertThat(m.find()).as(language).isTrue();
    return m.group(1);
  }

  /** What stands in the example besides its package and the names of the class. */
  private static List<String> shown(String source) {
    return source.substring(source.indexOf("import ")).lines().toList();
  }

  @Test
  void theCodeOfThePageIsTheCodeThatRuns() throws IOException {
    assertThat(block("java").lines().toList()).isEqualTo(shown(Files.readString(source())));
  }

  @Test
  void whatItPrintsIsWhatThePageShows() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    LibraryExample.print(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    List<String> printed = bytes.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(ShownOutput.difference(block("text").lines().toList(), printed)).isEmpty();
  }

  @Test
  void theExampleKeepsToThePackagesOfThePublicWayIn() throws IOException {
    Matcher sentence = Pattern.compile("A program uses the packages (.*?)\\.\n").matcher(page());
    assertThat(sentence.find()).isTrue();
    TreeSet<String> named = new TreeSet<>();
    Matcher names = Pattern.compile("`([\\w.]+)`").matcher(sentence.group(1));
    while (names.find()) {
      named.add(names.group(1));
      Path folder =
          ProjectFolder.root()
              .resolve("coupling/src/main/java")
              .resolve(names.group(1).replace('.', '/'));
      assertThat(folder.resolve("package-info.java")).content().contains("Public way in");
    }
    assertThat(named).hasSize(7);
    Matcher imports =
        Pattern.compile("import (reseat\\.[a-z]+)\\.").matcher(Files.readString(source()));
    while (imports.find()) {
      assertThat(named).contains(imports.group(1));
    }
  }

  @Test
  void noOtherPackageCallsItselfThePublicWayIn() throws IOException {
    long marked = 0;
    try (var folders = Files.list(ProjectFolder.root().resolve("coupling/src/main/java/reseat"))) {
      for (Path folder : folders.toList()) {
        marked +=
            Files.readString(folder.resolve("package-info.java")).contains("Public way in") ? 1 : 0;
      }
    }
    assertThat(marked).isEqualTo(7);
  }
}
