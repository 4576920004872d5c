package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class OrderedBatchesTest {

  @Test
  void resultsComeInTheOrderOfTheirBatches() throws InterruptedException {
    List<Long> seen = new ArrayList<>();
    OrderedBatches.run(
        200,
        5,
        "test",
        batch -> {
          double busy = 0;
          for (int i = 0; i < (batch % 7) * 1000; i++) {
            busy += Math.sin(i);
          }
          return batch + (busy > 1e9 ? 1 : 0);
        },
        seen::add);
    assertThat(seen).hasSize(200).isSorted();
  }

  @Test
  void noMoreBatchesWaitThanThreadsCanSoonTake() throws InterruptedException {
    AtomicLong started = new AtomicLong();
    AtomicLong most = new AtomicLong();
    AtomicLong taken = new AtomicLong();
    OrderedBatches.run(
        1000,
        2,
        "test",
        batch -> started.incrementAndGet(),
        done -> most.set(Math.max(most.get(), started.get() - taken.getAndIncrement())));
    assertThat(most.get()).isLessThanOrEqualTo(8);
  }

  @Test
  void whatGoesWrongInABatchComesOut() {
    assertThatThrownBy(
            () ->
                OrderedBatches.run(
                    10,
                    2,
                    "test",
                    batch -> {
                      throw new IllegalArgumentException("batch " + batch);
                    },
                    done -> {}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("batch 0");
  }
}
