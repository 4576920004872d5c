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
 * Batches run on several threads.
 *
 * <p>At most four batches per thread wait at any time, so memory does not grow with their number.
 *
 * @param threads number of threads, at least 1
 */
public record OnThreads(int threads) implements OrderedBatches {

  private static final int WAITING_PER_THREAD = 4;

  /** Refuses to run on no thread. */
  public OnThreads {
    if (threads < 1) {
      throw new IllegalArgumentException("at least 1 thread is needed, found " + threads);
    }
  }

  @Override
  public <T> void run(long count, String name, LongFunction<T> work, Consumer<T> inOrder)
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
