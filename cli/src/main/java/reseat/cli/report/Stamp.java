package reseat.cli.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * Says where a page or sheet comes from, so that it can be made again.
 *
 * <p>The date is that of the design file, not of the run: the same file, options and seed give the
 * same bytes.
 */
public final class Stamp {

  private Stamp() {}

  /**
   * Makes the lines of a stamp.
   *
   * @param file the design file
   * @param version version of the program
   * @param seed seed of all luck
   * @return lines of text
   * @throws IOException if the file cannot be read
   */
  public static List<String> of(Path file, String version, long seed) throws IOException {
    return List.of(origin(file), "Made by reseat " + version + ", seed " + seed + ".");
  }

  /**
   * Makes the lines of a stamp of what depends on no luck.
   *
   * @param file the design file
   * @param version version of the program
   * @return lines of text
   * @throws IOException if the file cannot be read
   */
  public static List<String> of(Path file, String version) throws IOException {
    return List.of(origin(file), "Made by reseat " + version + ".");
  }

  private static String origin(Path file) throws IOException {
    byte[] content = Files.readAllBytes(file);
    String saved = Files.getLastModifiedTime(file).toInstant().toString().substring(0, 10);
    return "Design file "
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
