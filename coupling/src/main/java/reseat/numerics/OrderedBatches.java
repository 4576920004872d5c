package reseat.numerics;

import java.util.function.Consumer;
import java.util.function.LongFunction;

/**
 * A way to run numbered batches of work that hands the results on in their order.
 *
 * <p>What is made of the results is therefore the same, to the last bit, whichever way is chosen.
 */
public interface OrderedBatches {

  /**
   * Runs the batches 0 to count - 1.
   *
   * @param count number of batches
   * @param name what is worked on, for those who look at the process
   * @param work makes the result of a batch from its number; perhaps called on other threads
   * @param inOrder takes the results, batch by batch in order; called on the calling thread
   * @param <T> result of a batch
   * @throws InterruptedException if the calling thread is interrupted; the work is then left
   */
  <T> void run(long count, String name, LongFunction<T> work, Consumer<T> inOrder)
      throws InterruptedException;
}
