package reseat.cli.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A place beside a file or folder where its successor is written before it takes its name.
 *
 * <p>Made with the permissions that the user's new files have; those of Java's temporary files
 * would shut out everybody else, and stay after the rename.
 */
final class TemporaryNeighbour {

  private static final int NAMES = 1000;
  private static final String PART = ".part";
  private static final String FORMER = ".old";

  /** Younger things may belong to a run on another machine that shares the folder. */
  private static final Duration SETTLED = Duration.ofMinutes(1);

  private TemporaryNeighbour() {}

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

  /**
   * Names the place where the folder that is being replaced waits meanwhile.
   *
   * @param made what {@link #newFolder(Path)} gave
   * @return a folder that does not exist
   */
  static Path formerOf(Path made) {
    return made.resolveSibling(made.getFileName() + FORMER);
  }

  /**
   * Deletes a folder of files, if it is there.
   *
   * @param folder the folder; holds no folders
   * @throws IOException if it cannot be deleted
   */
  static void delete(Path folder) throws IOException {
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

  /**
   * Puts back the folder that a killed run had just moved aside.
   *
   * @param target its place; nothing happens if something stands there
   * @throws IOException if it cannot be put back
   */
  static void restore(Path target) throws IOException {
    if (!Files.exists(target)) {
      for (Path left : leftBy(target, true)) {
        if (!Files.exists(target)) {
          Files.move(left, target);
        }
      }
    }
  }

  private static Path make(Path target, boolean folder) throws IOException {
    Path absolute = target.toAbsolutePath();
    sweep(absolute);
    String name = "." + absolute.getFileName() + "." + ProcessHandle.current().pid() + "-";
    for (int i = 1; ; i++) {
      Path tried = absolute.resolveSibling(name + i + PART);
      try {
        return folder ? Files.createDirectory(tried) : Files.createFile(tried);
      } catch (AccessDeniedException e) {
        throw new AccessDeniedException(target.toString()); // the name that the user knows
      } catch (NoSuchFileException e) {
        throw new NoSuchFileException(absolute.getParent().toString());
      } catch (FileAlreadyExistsException e) {
        // Being written by another thread, or by another machine that shares the folder.
        if (i == NAMES) {
          throw e;
        }
      }
    }
  }

  /** Deletes what killed runs have left beside the target. */
  private static void sweep(Path target) throws IOException {
    for (boolean former : new boolean[] {false, true}) {
      if (former && !Files.exists(target)) {
        return;
      }
      for (Path left : leftBy(target, former)) {
        if (Files.isDirectory(left)) {
          delete(left);
        } else {
          Files.deleteIfExists(left);
        }
      }
    }
  }

  /** What runs that are no more have left, a minute ago or longer. */
  private static List<Path> leftBy(Path target, boolean former) throws IOException {
    Path parent = target.getParent();
    if (parent == null || !Files.isReadable(parent)) {
      return List.of();
    }
    String start = "." + target.getFileName() + ".";
    String end = former ? PART + FORMER : PART;
    Instant before = Instant.now().minus(SETTLED);
    List<Path> left = new ArrayList<>();
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(parent, p -> named(p.getFileName().toString(), start, end))) {
      for (Path path : all) {
        if (Files.getLastModifiedTime(path).toInstant().isBefore(before)) {
          left.add(path);
        }
      }
    } catch (NoSuchFileException e) {
      return List.of(); // another run has tidied up
    }
    return left;
  }

  private static boolean named(String name, String start, String end) {
    int number = name.indexOf('-', start.length());
    if (!name.startsWith(start) || !name.endsWith(end) || number < 0) {
      return false;
    }
    try {
      long pid = Long.parseLong(name.substring(start.length(), number));
      return ProcessHandle.of(pid).isEmpty();
    } catch (NumberFormatException e) {
      return false;
    }
  }
}
