package reseat.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The file in a written folder that tells which command wrote it and what it wrote, so that nothing
 * is replaced that the user put there or filled in since.
 *
 * @param digests SHA-256 of every file written, by name; empty in folders of older versions
 */
record FolderMarker(Map<String, String> digests) {

  /** Begins the name of the marker file; the command's name ends it. */
  private static final String PREFIX = ".reseat-";

  /** Copies the names. */
  FolderMarker {
    digests = Map.copyOf(digests);
  }

  /**
   * Marks a folder.
   *
   * @param folder folder that holds the files
   * @param command name of the command that wrote them
   * @param files what was written, by name
   * @throws IOException if the marker cannot be written
   */
  static void put(Path folder, String command, Map<String, byte[]> files) throws IOException {
    StringBuilder text = new StringBuilder("written by reseat " + command + "\n");
    new TreeMap<>(files)
        .forEach((name, content) -> text.append(digest(content)).append("  ").append(name + "\n"));
    Files.writeString(folder.resolve(PREFIX + command), text.toString());
  }

  /**
   * Reads the marker of a folder.
   *
   * @param folder any folder
   * @param command name of a command
   * @return what the command wrote there; empty if it wrote nothing there
   * @throws IOException if the marker cannot be read
   */
  static Optional<FolderMarker> find(Path folder, String command) throws IOException {
    Path marker = folder.resolve(PREFIX + command);
    if (!Files.exists(marker)) {
      return Optional.empty();
    }
    Map<String, String> digests = new TreeMap<>();
    for (String line : Files.readAllLines(marker)) {
      int gap = line.indexOf("  ");
      if (gap > 0) {
        digests.put(line.substring(gap + 2), line.substring(0, gap));
      }
    }
    return Optional.of(new FolderMarker(digests));
  }

  /**
   * Names what is not of the command's making.
   *
   * @param folder the marked folder
   * @return names of files and folders, sorted; what hides itself, such as notes of a file browser
   *     or locks of a spreadsheet, is not among them
   * @throws IOException if the folder cannot be listed
   */
  List<String> foreign(Path folder) throws IOException {
    List<String> names = new ArrayList<>();
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path file : inside.sorted().toList()) {
        String name = file.getFileName().toString();
        boolean written = Files.isRegularFile(file) && digests.containsKey(name);
        if (!written && !name.startsWith(".")) {
          names.add(name);
        }
      }
    }
    return names;
  }

  /**
   * Names what has another content than it was written with.
   *
   * @param folder the marked folder
   * @return names of files, sorted
   * @throws IOException if a file cannot be read
   */
  List<String> changed(Path folder) throws IOException {
    List<String> names = new ArrayList<>();
    for (Map.Entry<String, String> file : new TreeMap<>(digests).entrySet()) {
      Path there = folder.resolve(file.getKey());
      if (Files.exists(there) && !digest(Files.readAllBytes(there)).equals(file.getValue())) {
        names.add(file.getKey());
      }
    }
    return names;
  }

  private static String digest(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
