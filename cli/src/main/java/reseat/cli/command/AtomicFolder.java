package reseat.cli.command;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Writes a folder of files whole or not at all.
 *
 * <p>The files go to a new folder beside the wanted one, which then takes its place by renaming. A
 * folder that is there already is replaced only if the same command wrote all of it, which a {@link
 * FolderMarker} in it tells; and what was filled in since only if the user says so.
 */
final class AtomicFolder {

  private static final int MOST_NAMED = 3;

  /** How often another run may put its folder in the place first. */
  private static final int TRIES = 1000;

  private AtomicFolder() {}

  /**
   * Writes the folder.
   *
   * @param folder where to
   * @param command name of the command that writes it
   * @param files content by file name
   * @param force whether files are replaced that were changed since the command wrote them
   * @throws FileSystemException if something stands there that is not to be lost
   * @throws IOException if it cannot be written; what was there is left as it was
   */
  static void write(Path folder, String command, Map<String, byte[]> files, boolean force)
      throws IOException {
    check(folder, command, force);
    UnbrokenWrite.of(
        folder,
        () -> {
          Path target = Files.exists(folder) ? folder.toRealPath() : folder.toAbsolutePath();
          Files.createDirectories(target.getParent());
          Path made = TemporaryNeighbour.newFolder(target);
          try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
              Files.write(made.resolve(file.getKey()), file.getValue());
            }
            FolderMarker.put(made, command, files);
            exchange(target, made);
          } finally {
            TemporaryNeighbour.delete(made);
          }
        });
  }

  /** Puts a folder in the place of another; two runs may do so at once, and the last one stays. */
  private static void exchange(Path target, Path made) throws IOException {
    Path old = TemporaryNeighbour.formerOf(made);
    for (int left = TRIES; ; left--) {
      try {
        if (Files.exists(target)) {
          Files.move(target, old);
        }
        Files.move(made, target);
        keepHidden(old, target);
        TemporaryNeighbour.delete(old);
        return;
      } catch (FileSystemException e) {
        if (!Files.exists(target) && Files.exists(old)) {
          Files.move(old, target);
        }
        TemporaryNeighbour.delete(old);
        if (!isOfAnotherRun(e) || left == 0) {
          throw e;
        }
      }
    }
  }

  private static boolean isOfAnotherRun(FileSystemException e) {
    return e instanceof NoSuchFileException
        || e instanceof FileAlreadyExistsException
        || e instanceof DirectoryNotEmptyException;
  }

  /**
   * Says whether the folder may be written.
   *
   * @param folder the folder
   * @param command name of the command that is to write it
   * @param force whether files are replaced that were changed since the command wrote them
   * @throws NotDirectoryException if a file stands there
   * @throws StandingFolderException if the folder holds what is not to be lost
   */
  static void check(Path folder, String command, boolean force) throws IOException {
    TemporaryNeighbour.restore(folder.toAbsolutePath());
    for (int left = TRIES; ; left--) {
      Object standing = keyOf(folder, command);
      try {
        checkStanding(folder, command, force);
        return;
      } catch (NoSuchFileException | StandingFolderException e) {
        // Unless another run of ours replaced it meanwhile, so that pieces of two were seen.
        if (left == 0 || Objects.equals(standing, keyOf(folder, command))) {
          throw e;
        }
      }
    }
  }

  /** What tells a folder from its successor of the same name; null if nothing stands there. */
  private static Object keyOf(Path folder, String command) throws IOException {
    try {
      // The system gives the number of a folder that is gone to the next one, so that alone won't
      // do.
      BasicFileAttributes seen = Files.readAttributes(folder, BasicFileAttributes.class);
      return Arrays.asList(
          seen.fileKey(), seen.lastModifiedTime(), FolderMarker.find(folder, command));
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  private static void checkStanding(Path folder, String command, boolean force) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    FolderMarker marker =
        FolderMarker.find(folder, command).orElseGet(() -> new FolderMarker(Map.of()));
    List<String> foreign = marker.foreign(folder);
    if (!foreign.isEmpty()) {
      throw new StandingFolderException(
          folder,
          "holds files that this command did not write ("
              + few(foreign)
              + "); name a new or an empty folder");
    }
    List<String> changed = force ? List.of() : marker.changed(folder);
    if (!changed.isEmpty()) {
      throw new StandingFolderException(
          folder,
          few(changed)
              + " changed since this command wrote it; name another folder, or give --force to lose"
              + " the change");
    }
  }

  private static String few(List<String> names) {
    return names.size() <= MOST_NAMED
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, MOST_NAMED)) + ", ...";
  }

  /** Carries over what a file browser, a spreadsheet or the user has hidden there. */
  private static void keepHidden(Path old, Path target) throws IOException {
    if (!Files.exists(old)) {
      return;
    }
    try (Stream<Path> inside = Files.list(old)) {
      for (Path file : inside.filter(f -> f.getFileName().toString().startsWith(".")).toList()) {
        Path kept = target.resolve(file.getFileName());
        if (!Files.exists(kept)) {
          Files.move(file, kept);
        }
      }
    } catch (NoSuchFileException e) {
      return; // replaced again by another run
    }
  }

  /** A folder stands in the way whose content would be lost. */
  static final class StandingFolderException extends FileSystemException {

    private static final long serialVersionUID = 1L;

    StandingFolderException(Path folder, String reason) {
      super(folder.toString(), null, reason);
    }
  }
}
