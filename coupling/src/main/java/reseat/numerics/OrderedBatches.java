package reseat.numerics;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.LongFunction;

/**
 * Runs numbered batches of work on several threads and hands the results on in their order.
 *
 * <p>What is made of the results is therefore the same, to the last bit, on any number of threads.
 * At most four batches per thread wait at any time, so memory does not grow with their number.
 */
public final class OrderedBatches {

  private static final int WAITING_PER_THREAD = 4;

  private OrderedBatches() {}

  /**
   * Runs the batches 0 to count - 1.
   *
   * @param count number of batches
   * @param threads number of threads
   * @param name name of the threads, for those who look at the process
   * @param work makes the result of a batch from its number; called on the threads
   * @param inOrder takes the results, batch by batch in order; called on the calling thread
   * @param <T> result of a batch
   * @throws InterruptedException if the calling thread is interrupted; the threads are told to stop
   */
  public static <T> void run(
      long count, int threads, String name, LongFunction<T> work, Consumer<T> inOrder)
      throws InterruptedException {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            threads,
            task -> {
              Thread t = new Thread(task, name);
              t.setDaemon(true);
              return t;
            });
    try {
      Deque<Future<T>> waiting = new ArrayDeque<>();
      long sent = 0;
      for (long done = 0; done < count; done++) {
        while (sent < count && waiting.size() < WAITING_PER_THREAD * threads) {
          long batch = sent++;
          waiting.add(pool.submit(() -> work.apply(batch)));
        }
        inOrder.accept(waiting.remove().get());
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
