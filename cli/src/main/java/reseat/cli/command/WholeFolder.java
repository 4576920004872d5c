package reseat.cli.command;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes a folder of files whole or not at all.
 *
 * <p>The files go to a new folder beside the wanted one, which then takes its place by renaming. A
 * folder that is there already is replaced only if the same command wrote it, which a marker file
 * in it tells.
 */
final class WholeFolder {

  /** Begins the name of the marker file; the command's name ends it. */
  private static final String MARKER = ".reseat-";

  private WholeFolder() {}

  /**
   * Writes the folder.
   *
   * @param folder where to
   * @param command name of the command that writes it
   * @param files content by file name
   * @throws FileAlreadyExistsException if something else stands there
   * @throws IOException if it cannot be written; what was there is left as it was
   */
  static void write(Path folder, String command, Map<String, byte[]> files) throws IOException {
    check(folder, command);
    Path target = folder.toAbsolutePath();
    Files.createDirectories(target.getParent());
    Path made = Beside.newFolder(target);
    Path old = made.resolveSibling(made.getFileName() + ".old");
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(made.resolve(file.getKey()), file.getValue());
      }
      Files.writeString(
          made.resolve(MARKER + command), "written by reseat " + command + "; safe to replace\n");
      if (Files.exists(target)) {
        Files.move(target, old);
      }
      Files.move(made, target);
    } finally {
      if (!Files.exists(target) && Files.exists(old)) {
        Files.move(old, target);
      }
      delete(made);
      delete(old);
    }
  }

  /**
   * Says whether the folder may be written.
   *
   * @param folder the folder
   * @param command name of the command that is to write it
   * @throws FileAlreadyExistsException if something stands there that this command did not write
   */
  static void check(Path folder, String command) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new FileAlreadyExistsException(folder.toString(), null, "is a file, not a folder");
    }
    try (Stream<Path> inside = Files.list(folder)) {
      boolean empty = inside.findAny().isEmpty();
      if (!empty && !Files.exists(folder.resolve(MARKER + command))) {
        throw new ForeignFolderException(folder);
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path file : inside.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }

  /** A folder stands in the way that another wrote. */
  static final class ForeignFolderException extends IOException {

    private static final long serialVersionUID = 1L;

    ForeignFolderException(Path folder) {
      super(
          folder + ": holds files that this command did not write; name a new or an empty folder");
    }
  }
}
