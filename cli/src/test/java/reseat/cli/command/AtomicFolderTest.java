package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder of papers is replaced whole, and nothing of the user's is lost with it. */
class AtomicFolderTest {

  @TempDir private Path place;
  private Path folder;

  @BeforeEach
  void aFolderOfPapers() throws IOException {
    folder = place.resolve("papers");
    write("form", "sheet");
  }

  private void write(String... names) throws IOException {
    write(false, names);
  }

  private void write(boolean force, String... names) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    for (String name : names) {
      files.put(name, ("blank " + name).getBytes(StandardCharsets.UTF_8));
    }
    AtomicFolder.write(folder, "shopsheet", files, force);
  }

  @Test
  void anUntouchedFolderIsReplacedWhole() throws IOException {
    write("form", "drawing");
    assertThat(folder.resolve("drawing")).exists();
    assertThat(folder.resolve("sheet")).doesNotExist();
    try (Stream<Path> beside = Files.list(place)) {
      assertThat(beside).containsExactly(folder);
    }
  }

  @Test
  void aFormThatWasFilledInIsKept() throws IOException {
    Files.writeString(folder.resolve("form"), "readings of a day's work");
    assertThatThrownBy(() -> write("form", "sheet"))
        .isInstanceOf(AtomicFolder.StandingFolderException.class)
        .hasMessageContaining("form changed since this command wrote it")
        .hasMessageContaining("--force");
    assertThat(folder.resolve("form")).hasContent("readings of a day's work");
    write(true, "form", "sheet");
    assertThat(folder.resolve("form")).hasContent("blank form");
  }

  @Test
  void aFileOfTheUsersIsKeptEvenByForce() throws IOException {
    Files.writeString(folder.resolve("photo.jpg"), "picture");
    for (boolean force : new boolean[] {false, true}) {
      assertThatThrownBy(() -> write(force, "form"))
          .hasMessageContaining("files that this command did not write (photo.jpg)")
          .hasMessageContaining("name a new or an empty folder");
    }
    assertThat(folder.resolve("photo.jpg")).exists();
  }

  @Test
  void aFolderOfTheUsersIsKept() throws IOException {
    Files.createDirectory(folder.resolve("form.d"));
    Files.delete(folder.resolve("form"));
    Files.createDirectory(folder.resolve("form"));
    assertThatThrownBy(() -> write("form")).hasMessageContaining("(form, form.d)");
  }

  @Test
  void aPaperThatWasThrownAwayComesBack() throws IOException {
    Files.delete(folder.resolve("sheet"));
    write("form", "sheet");
    assertThat(folder.resolve("sheet")).exists();
  }

  @Test
  void whatIsHiddenIsInNobodysWayAndStays() throws IOException {
    Files.writeString(folder.resolve(".note of a file browser"), "x");
    Files.createDirectories(folder.resolve(".history/deep"));
    write("form");
    assertThat(folder.resolve("form")).exists();
    assertThat(folder.resolve("sheet")).doesNotExist();
    assertThat(folder.resolve(".note of a file browser")).hasContent("x");
    assertThat(folder.resolve(".history/deep")).exists();
    write("form", "sheet");
    assertThat(folder.resolve(".history/deep")).exists();
  }

  @Test
  void anotherCommandsFolderIsForeign() {
    assertThatThrownBy(() -> AtomicFolder.check(folder, "report", true))
        .hasMessageContaining("did not write (form, sheet)");
  }

  @Test
  void anEmptyFolderIsTakenAndAFileIsNot() throws IOException {
    Path empty = Files.createDirectory(place.resolve("empty"));
    AtomicFolder.write(empty, "report", Map.of("page", new byte[0]), false);
    assertThat(empty.resolve("page")).exists();
    Path file = Files.createFile(place.resolve("file"));
    assertThatThrownBy(() -> AtomicFolder.check(file, "report", true))
        .isInstanceOf(NotDirectoryException.class);
  }
}
