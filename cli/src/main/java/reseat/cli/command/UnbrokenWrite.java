package reseat.cli.command;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets a user who stops the program (Ctrl-C) wait until what is being written stands in its place.
 *
 * <p>Writing takes milliseconds once the results are there, so nobody notices; without it a stop in
 * the middle would leave pieces of files.
 */
final class UnbrokenWrite {

  private static final ReentrantLock WRITING = new ReentrantLock();
  private static boolean watched;

  private UnbrokenWrite() {}

  /** Something that writes. */
  interface Work {

    /**
     * Writes.
     *
     * @throws IOException if it cannot be written
     */
    void write() throws IOException;
  }

  /**
   * Does the work; the program does not end meanwhile, unless it is killed.
   *
   * @param target what is written, for a reason that does not say it, such as that of a full disk
   * @param work what is to be done in one go
   * @throws IOException if the work throws it
   */
  static void of(Path target, Work work) throws IOException {
    WRITING.lock();
    try {
      watch();
      work.write();
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) {
      FileSystemException named =
          new FileSystemException(target.toString(), null, String.valueOf(e.getMessage()));
      named.initCause(e);
      throw named;
    } finally {
      WRITING.unlock();
    }
  }

  private static void watch() {
    if (watched) {
      return;
    }
    watched = true;
    try {
      // Taken and kept: no writing begins once the program ends.
      Runtime.getRuntime().addShutdownHook(new Thread(WRITING::lock, "end of writing"));
    } catch (IllegalStateException e) {
      WRITING.lock(); // ends already; this thread goes no further
      throw e;
    }
  }
}
