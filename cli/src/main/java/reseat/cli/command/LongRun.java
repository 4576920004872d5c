package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.LongFunction;

/**
 * Work that takes long enough to be watched, and that the user may stop: a line of progress while
 * it goes on, one line if it is stopped.
 */
final class LongRun {

  private final PrintWriter err;
  private final ProgressLine progress;
  private final LongFunction<String> stopped;

  /**
   * What is to be done.
   *
   * @param <R> what comes out
   */
  interface Work<R> {

    /**
     * Does it.
     *
     * @param progress to be told the number of steps done so far
     * @return what came out
     * @throws InterruptedException if the thread is interrupted
     * @throws IOException if a file cannot be read or written
     */
    R run(LongConsumer progress) throws InterruptedException, IOException;
  }

  /**
   * Prepares a run.
   *
   * @param err where progress is shown
   * @param watched whether that is a terminal; nothing is shown otherwise
   * @param steps number of steps in all
   * @param stopped what to say if the run is stopped after so many of them
   */
  LongRun(PrintWriter err, boolean watched, long steps, LongFunction<String> stopped) {
    this.err = err;
    this.stopped = stopped;
    progress = new ProgressLine(err, watched, steps, System::nanoTime);
  }

  /**
   * Does the work.
   *
   * @param <R> what comes out
   * @param work what to do
   * @return what came out; empty if the run was stopped, so that nothing may be printed
   * @throws IOException as the work throws it
   */
  <R> Optional<R> result(Work<R> work) throws IOException {
    Interruption interruption =
        Interruption.expect(
            err,
            () -> {
              progress.wipe();
              return stopped.apply(progress.done());
            });
    R result = null;
    boolean untouched = true;
    try {
      result = work.run(progress::at);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      untouched = interruption.over();
      progress.wipe();
    }
    return untouched ? Optional.ofNullable(result) : Optional.empty();
  }
}
