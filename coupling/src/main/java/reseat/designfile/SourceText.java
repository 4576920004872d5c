package reseat.designfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Takes a file's bytes to text: UTF-8, of a size that a person writes. */
final class SourceText {

  /** Largest file read, bytes. */
  static final long LARGEST = 4_000_000;

  private SourceText() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @param problems told if it is no UTF-8 text or too large
   * @return the text without a byte order mark, lines ended by a line feed; empty after a problem
   * @throws IOException if it cannot be read
   */
  static String of(Path file, Problems problems) throws IOException {
    if (Files.isDirectory(file)) {
      problems.error(0, 0, "", "is a folder; name a design file");
      return "";
    }
    if (Files.size(file) > LARGEST) {
      problems.error(
          0,
          0,
          "",
          "is larger than "
              + LARGEST / 1_000_000
              + " MB, which no design file is; was the right file named?");
      return "";
    }
    byte[] bytes = Files.readAllBytes(file);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    try {
      String text = decoder.decode(ByteBuffer.wrap(bytes)).toString();
      return (text.startsWith("\ufeff") ? text.substring(1) : text).replace("\r\n", "\n");
    } catch (CharacterCodingException e) {
      int line = 1;
      int at = firstBad(bytes);
      int lineStart = 0;
      for (int i = 0; i < at; i++) {
        if (bytes[i] == '\n') {
          line++;
          lineStart = i + 1;
        }
      }
      problems.error(
          line,
          at - lineStart + 1,
          "",
          "is not UTF-8 text from here on; save the file as UTF-8 (a ° or µ in another encoding is"
              + " the usual cause; \"deg\" and \"um\" are read too)");
      return "";
    }
  }

  private static int firstBad(byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    return result.isError() ? in.position() : bytes.length;
  }
}
