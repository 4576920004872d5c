package reseat.cli.command;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
final class AtomicFile {

  private AtomicFile() {}

  /**
   * Writes a file by way of a temporary one beside it and a rename. A link stays one, and what it
   * points at is written; into a device or a pipe the content goes straight.
   *
   * @param file where to
   * @param content what
   * @param force whether a file that is there already is replaced
   * @throws FileAlreadyExistsException if it is there and {@code force} is false
   * @throws IOException if it cannot be written; what was there is left as it was
   */
  static void write(Path file, byte[] content, boolean force) throws IOException {
    boolean there = Files.exists(file);
    if (there && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
      UnbrokenWrite.of(file, () -> Files.write(file, content));
      return;
    }
    if (!force && there) {
      throw new FileAlreadyExistsException(file.toString());
    }
    UnbrokenWrite.of(file, () -> replace(there ? file.toRealPath() : file, content, force));
  }

  private static void replace(Path file, byte[] content, boolean force) throws IOException {
    Path beside = TemporaryNeighbour.newFile(file);
    try {
      Files.write(beside, content);
      if (force) {
        Files.move(
            beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
      } else {
        Files.move(beside, file);
      }
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
