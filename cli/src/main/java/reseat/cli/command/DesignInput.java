package reseat.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignProblem;

/** Reads the design file that a command works on and says what is wrong with it. */
final class DesignInput {

  /** More than any design file holds: a wrong file is refused before it fills the memory. */
  private static final int LARGEST = 4 << 20;

  private DesignInput() {}

  /**
   * Reads a design.
   *
   * @param file the file as named on the command line
   * @param err gets one line per error or warning
   * @return the design; empty if the file cannot be used, and then {@code err} says why
   * @throws IOException if the file cannot be read
   */
  static Optional<CouplingDesign> read(Path file, PrintWriter err) throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(LARGEST + 1);
    }
    if (bytes.length > LARGEST) {
      err.println(file + ": is larger than any design file (4 MB); is it the right file?");
      return Optional.empty();
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      err.println(file + ": is not text in UTF-8; save it as plain text in UTF-8");
      return Optional.empty();
    }
    DesignFile read = DesignFile.read(text);
    for (DesignProblem problem : read.problems()) {
      err.println(problem.oneLine(file.toString()));
    }
    return read.design();
  }
}
