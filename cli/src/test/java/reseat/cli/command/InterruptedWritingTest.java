package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders and files that two runs want, that a killed run has left, or that are no plain ones. */
class InterruptedWritingTest {

  /** No process has this number: Linux numbers them up to 4 194 304. */
  private static final long NOBODY = 99_999_999L;

  @TempDir private Path made;
  private Path folder;
  private Path target;

  @BeforeEach
  void target() throws IOException {
    folder = Files.createDirectory(made.resolve("Größe µ 支点"));
    target = folder.resolve("my report");
  }

  private static Map<String, byte[]> pages(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return Map.of("a.html", bytes, "b.csv", bytes);
  }

  private void write(String text) throws IOException {
    AtomicFolder.write(target, "report", pages(text), false);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private Path left(String ending, Duration ago) throws IOException {
    Path left = Files.createDirectory(folder.resolve(".my report." + NOBODY + "-1" + ending));
    byte[] content = "left".getBytes(StandardCharsets.UTF_8);
    Files.write(left.resolve("a.html"), content);
    FolderMarker.put(left, "report", Map.of("a.html", content));
    Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(ago)));
    return left;
  }

  @Test
  void ofTwoRunsAtOnceEachPutsItsFolderWhole() throws Exception {
    ExecutorService runs = Executors.newFixedThreadPool(4);
    List<Future<?>> all = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      String text = "run " + i;
      all.add(
          runs.submit(
              () -> {
                write(text);
                return null;
              }));
    }
    for (Future<?> one : all) {
      one.get();
    }
    runs.shutdown();
    assertThat(names()).containsExactly("my report");
    assertThat(target.resolve("a.html")).hasSameTextualContentAs(target.resolve("b.csv"));
  }

  @Test
  void whatAKilledRunLeftIsTidiedUpByTheNext() throws IOException {
    left(".part", Duration.ofHours(1));
    left(".part.old", Duration.ofHours(1));
    Path young = left("2.part", Duration.ofSeconds(1));
    write("one");
    write("two");
    assertThat(names()).containsExactly(young.getFileName().toString(), "my report");
  }

  @Test
  void aFolderThatAKilledRunHadMovedAsideComesBack() throws IOException {
    left(".part.old", Duration.ofHours(1));
    AtomicFolder.check(target, "report", false);
    assertThat(Files.readString(target.resolve("a.html"))).isEqualTo("left");
  }

  @Test
  void aFileThatAKilledRunLeftIsTidiedUpByTheNext() throws IOException {
    Path left = Files.createFile(folder.resolve(".p.svg." + NOBODY + "-3.part"));
    Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofDays(2))));
    Path other = Files.createFile(folder.resolve(".p.svg.mine.part"));
    AtomicFile.write(folder.resolve("p.svg"), new byte[1], false);
    assertThat(left).doesNotExist();
    assertThat(other).exists();
  }

  @Test
  void aFolderWithFoldersOfTheUsersOwnIsLeftAlone() throws IOException {
    write("one");
    Files.createDirectory(target.resolve("photographs"));
    assertThatThrownBy(() -> write("two")).hasMessageContaining("did not write");
    assertThat(Files.readString(target.resolve("a.html"))).isEqualTo("one");
  }

  @Test
  void aLinkStaysALinkAndWhatItPointsAtIsWritten() throws IOException {
    Path real = Files.createDirectory(made.resolve("elsewhere"));
    Files.createSymbolicLink(target, real);
    write("one");
    write("two");
    assertThat(target).isSymbolicLink();
    assertThat(Files.readString(real.resolve("a.html"))).isEqualTo("two");
    Path file = Files.createFile(made.resolve("plain"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), file);
    AtomicFile.write(link, "three".getBytes(StandardCharsets.UTF_8), true);
    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(file)).isEqualTo("three");
  }

  @Test
  void aDeviceIsWrittenToAndStaysADevice() throws IOException {
    Path device = Path.of("/dev/null");
    org.junit.jupiter.api.Assumptions.assumeTrue(Files.isWritable(device));
    AtomicFile.write(device, new byte[10], true);
    AtomicFile.write(device, new byte[10], false);
    assertThat(Files.isRegularFile(device)).isFalse();
  }
}
