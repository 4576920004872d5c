package reseat.numerics;

import java.util.function.Consumer;
import java.util.function.LongFunction;

/** Batches run one after another by whoever asks for them, where there are no threads. */
public record OneAfterAnother() implements OrderedBatches {

  @Override
  public <T> void run(long count, String name, LongFunction<T> work, Consumer<T> inOrder) {
    for (long batch = 0; batch < count; batch++) {
      inOrder.accept(work.apply(batch));
    }
  }
}
