package reseat.cli.command;

import java.io.PrintWriter;
import java.util.function.Supplier;

/**
 * What happens when the user stops a long run (Ctrl-C): one line, and nothing half-written.
 *
 * <p>The machine ends the process with code 130 by itself; results are printed only after {@link
 * #over()} has said that the run was not stopped.
 */
final class Interruption {

  private final Thread hook;

  private Interruption(Thread hook) {
    this.hook = hook;
  }

  /**
   * Prepares for the run to be stopped.
   *
   * @param err where the line goes
   * @param line gives the line when it happens
   * @return to be told when the run is over
   */
  static Interruption expect(PrintWriter err, Supplier<String> line) {
    Thread hook =
        new Thread(
            () -> {
              err.println(line.get());
              err.flush();
            },
            "stopped");
    Runtime.getRuntime().addShutdownHook(hook);
    return new Interruption(hook);
  }

  /**
   * Ends the watch.
   *
   * @return false if the process is already being stopped, so that nothing may be printed
   */
  boolean over() {
    try {
      return Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      return false;
    }
  }
}
