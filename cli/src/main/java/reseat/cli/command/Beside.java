package reseat.cli.command;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A place beside a file or folder where its successor is written before it takes its name.
 *
 * <p>Made with the permissions that the user's new files have; those of Java's temporary files
 * would shut out everybody else, and stay after the rename.
 */
final class Beside {

  private static final int NAMES = 1000;

  private Beside() {}

  /**
   * Makes an empty file.
   *
   * @param target the file that it is to become
   * @return a new file in the same folder
   * @throws IOException if it cannot be made
   */
  static Path newFile(Path target) throws IOException {
    return make(target, false);
  }

  /**
   * Makes an empty folder.
   *
   * @param target the folder that it is to become
   * @return a new folder in the same folder
   * @throws IOException if it cannot be made
   */
  static Path newFolder(Path target) throws IOException {
    return make(target, true);
  }

  private static Path make(Path target, boolean folder) throws IOException {
    Path absolute = target.toAbsolutePath();
    String name = "." + absolute.getFileName() + "." + ProcessHandle.current().pid() + "-";
    for (int i = 1; ; i++) {
      Path tried = absolute.resolveSibling(name + i + ".part");
      try {
        return folder ? Files.createDirectory(tried) : Files.createFile(tried);
      } catch (FileAlreadyExistsException e) {
        // Left by a run that was killed, or being written by another thread.
        if (i == NAMES) {
          throw e;
        }
      }
    }
  }
}
