package reseat.report.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * Says where a page or sheet comes from, so that it can be made again.
 *
 * <p>The date is that of the file, not of the run: the same file, options and seed give the same
 * bytes.
 */
public final class PageSource {

  private PageSource() {}

  /**
   * Makes the lines of a stamp.
   *
   * @param file the design file
   * @param seed seed of all luck
   * @return lines of text
   * @throws IOException if the file cannot be read
   */
  public static List<String> of(Path file, long seed) throws IOException {
    return List.of(origin("Design file ", file), madeBy(", seed " + seed));
  }

  /**
   * Makes the lines of a stamp of what depends on no luck.
   *
   * @param file the design file
   * @return lines of text
   * @throws IOException if the file cannot be read
   */
  public static List<String> of(Path file) throws IOException {
    return List.of(origin("Design file ", file), madeBy(""));
  }

  /**
   * Makes the lines of a stamp on a page about readings.
   *
   * @param readings the file of readings
   * @param others further files that went into it, each with what it is
   * @return lines of text
   * @throws IOException if a file cannot be read
   */
  public static List<String> ofReadings(Path readings, Map<Path, String> others)
      throws IOException {
    List<String> lines = new ArrayList<>(List.of(origin("Readings ", readings)));
    for (Map.Entry<Path, String> other : others.entrySet()) {
      lines.add(origin(other.getValue() + " ", other.getKey()));
    }
    lines.add(madeBy(""));
    return lines;
  }

  /**
   * Tells whether a file name stands for standard input.
   *
   * @param file the file
   * @return true for a single dash
   */
  public static boolean isStandardInput(Path file) {
    return file.toString().equals("-");
  }

  /** The versions on which every figure of a page rests. */
  private static String madeBy(String seed) {
    return "Made by reseat "
        + Versions.program()
        + ", materials table "
        + Versions.catalog()
        + ", physics "
        + Versions.physics()
        + seed
        + ".";
  }

  private static String origin(String what, Path file) throws IOException {
    if (isStandardInput(file)) {
      return what + "from standard input";
    }
    byte[] content = Files.readAllBytes(file);
    String saved = Files.getLastModifiedTime(file).toInstant().toString().substring(0, 10);
    return what
        + file.getFileName()
        + ", saved "
        + saved
        + " (UTC), digest "
        + digest(content).substring(0, 16)
        + " (SHA-256, first 16 digits).";
  }

  private static String digest(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
