package reseat.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether somebody watches a stream on a terminal. */
final class Terminal {

  private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");

  private Terminal() {}

  /**
   * Says whether the error stream goes to a terminal.
   *
   * @return true if it does; where the system does not tell, true if input and output do
   */
  @SuppressWarnings("SystemConsoleNull") // the property brings back the meaning of null
  static boolean showsErrors() {
    try {
      if (Files.isSymbolicLink(ERROR_STREAM)) {
        String target = Files.readSymbolicLink(ERROR_STREAM).toString();
        return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
      }
    } catch (IOException | SecurityException e) {
      return false;
    }
    // from Java 22 on there is a console without a terminal too, unless this one is asked for
    System.setProperty("jdk.console", "java.base");
    return System.console() != null;
  }
}
