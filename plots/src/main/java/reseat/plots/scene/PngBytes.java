package reseat.plots.scene;

import java.util.Arrays;
import java.util.Base64;

/** A bitmap as the content of a PNG file. Immutable. */
public final class PngBytes {

  private final byte[] content;

  /**
   * Keeps a copy of a file's content.
   *
   * @param content the bytes of a PNG file
   */
  public PngBytes(byte[] content) {
    this.content = content.clone();
  }

  /**
   * Returns the content.
   *
   * @return a copy of the bytes
   */
  public byte[] content() {
    return content.clone();
  }

  /**
   * Returns the content as an address that needs no fetching.
   *
   * @return a data URL
   */
  public String dataUrl() {
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(content);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PngBytes png && Arrays.equals(content, png.content);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(content);
  }

  @Override
  public String toString() {
    return "PNG of " + content.length + " bytes";
  }
}
