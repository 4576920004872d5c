package reseat.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A standard stream as UTF-8 text, whatever the locale, that remembers why writing failed.
 *
 * <p>{@link PrintWriter} alone only says <em>that</em> it failed. The reason matters: a reader that
 * has seen enough and closed the pipe is no fault, a full disk is one.
 */
final class OutputChannel extends OutputStream {

  private final OutputStream target;
  private final Path link;
  private IOException failure;

  /**
   * Wraps a stream.
   *
   * @param target where the bytes go
   * @param link where the system says what the stream is, by a link; need not exist
   */
  OutputChannel(OutputStream target, Path link) {
    this.target = target;
    this.link = link;
  }

  /**
   * Opens the channel for text.
   *
   * @return a buffered writer; the caller flushes it
   */
  PrintWriter writer() {
    return new PrintWriter(new OutputStreamWriter(this, StandardCharsets.UTF_8), false);
  }

  boolean failed() {
    return failure != null;
  }

  /**
   * Tells a closed pipe from a real failure.
   *
   * @return true if writing failed because nobody reads the stream any more
   */
  boolean readerWentAway() {
    return failed() && (failure().toLowerCase(Locale.ROOT).contains("broken pipe") || isPipe());
  }

  /**
   * Whether it goes to another program: such writing fails for that one reason, told in any tongue.
   */
  private boolean isPipe() {
    try {
      return Files.readSymbolicLink(link).toString().startsWith("pipe:");
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  /**
   * Says why writing failed.
   *
   * @return the system's reason; empty if nothing failed or none was given
   */
  String failure() {
    return failure == null || failure.getMessage() == null ? "" : failure.getMessage();
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      target.write(bytes, from, count);
    } catch (IOException e) {
      if (failure == null) {
        failure = e;
      }
      throw e;
    }
  }
}
