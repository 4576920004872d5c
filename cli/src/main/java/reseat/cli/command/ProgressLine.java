package reseat.cli.command;

import java.io.PrintWriter;
import java.util.function.LongSupplier;
import reseat.elementary.Elementary;
import reseat.units.FilledText;

/**
 * One line on a terminal that tells how far a long run has come and how long it will still take.
 *
 * <p>Nothing is written unless somebody watches; at most five times a second, not in the first half
 * second, and wiped at the end.
 */
final class ProgressLine {

  private static final long BETWEEN_NANOS = 200_000_000L;
  private static final long QUIET_NANOS = 500_000_000L;
  private static final int BAR = 30;

  private final PrintWriter err;
  private final boolean watched;
  private final long total;
  private final LongSupplier clock;
  private final long start;
  private long last;
  private int width;
  private volatile long done;

  /**
   * Starts a line.
   *
   * @param err where to
   * @param watched whether it is a terminal
   * @param total number of steps
   * @param clock nanoseconds
   */
  ProgressLine(PrintWriter err, boolean watched, long total, LongSupplier clock) {
    this.err = err;
    this.watched = watched;
    this.total = total;
    this.clock = clock;
    start = clock.getAsLong();
    last = start + QUIET_NANOS - BETWEEN_NANOS;
  }

  /**
   * Tells how far the run has come.
   *
   * @param steps steps done
   */
  void at(long steps) {
    done = steps;
    long now = clock.getAsLong();
    if (!watched || now - last < BETWEEN_NANOS || steps <= 0) {
      return;
    }
    last = now;
    double left = (now - start) * 1e-9 * (total - steps) / steps;
    int filled = (int) (BAR * steps / total);
    show(
        FilledText.of(
            "[%s%s] %d %%, %s left",
            "=".repeat(filled), " ".repeat(BAR - filled), 100 * steps / total, time(left)));
  }

  /** Seconds in words. */
  static String time(double seconds) {
    if (seconds < 90) {
      return Math.max(1, Elementary.round(seconds)) + " s";
    }
    if (seconds < 5400) {
      return Elementary.round(seconds / 60) + " min";
    }
    return FilledText.of("%.1f h", seconds / 3600);
  }

  private void show(String text) {
    err.print('\r' + text + " ".repeat(Math.max(0, width - text.length())));
    err.flush();
    width = text.length();
  }

  /** Wipes the line. */
  void wipe() {
    if (width > 0) {
      err.print('\r' + " ".repeat(width) + '\r');
      err.flush();
      width = 0;
    }
  }

  /**
   * Returns how far the run has come.
   *
   * @return steps done
   */
  long done() {
    return done;
  }
}
