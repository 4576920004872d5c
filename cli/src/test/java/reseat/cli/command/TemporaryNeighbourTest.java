package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the program writes may be read by whoever may read the user's other files. */
class TemporaryNeighbourTest {

  @TempDir private Path folder;

  @Test
  void filesAndFoldersHaveTheUsualPermissions() throws IOException {
    FileStore store = Files.getFileStore(folder);
    assumeTrue(store.supportsFileAttributeView("posix"), "no permissions on this disk");
    Path plainFile = Files.createFile(folder.resolve("plain"));
    Path plainFolder = Files.createDirectory(folder.resolve("plain folder"));
    byte[] content = "x".getBytes(StandardCharsets.UTF_8);
    Path file = folder.resolve("file");
    AtomicFile.write(file, content, false);
    Path report = folder.resolve("report");
    AtomicFolder.write(report, "report", Map.of("page", content), false);
    assertThat(Files.getPosixFilePermissions(file))
        .isEqualTo(Files.getPosixFilePermissions(plainFile));
    assertThat(Files.getPosixFilePermissions(report))
        .isEqualTo(Files.getPosixFilePermissions(plainFolder));
  }

  @Test
  void aNameLeftByAKilledRunIsPassedOver() throws IOException {
    Path target = folder.resolve("post.toml");
    Path first = TemporaryNeighbour.newFile(target);
    Path second = TemporaryNeighbour.newFile(target);
    assertThat(second).isNotEqualTo(first).exists();
    assertThat(second.getParent()).isEqualTo(first.getParent());
  }
}
