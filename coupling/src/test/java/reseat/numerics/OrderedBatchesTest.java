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
    new OnThreads(5)
        .run(
            200,
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
    new OnThreads(2)
        .run(
            1000,
            "test",
            batch -> started.incrementAndGet(),
            done -> most.set(Math.max(most.get(), started.get() - taken.getAndIncrement())));
    assertThat(most.get()).isLessThanOrEqualTo(8);
  }

  @Test
  void whatGoesWrongInABatchComesOut() {
    assertThatThrownBy(
            () ->
                new OnThreads(2)
                    .run(
                        10,
                        "test",
                        batch -> {
                          throw new IllegalArgumentException("batch " + batch);
                        },
                        done -> {}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("batch 0");
  }

  @Test
  void withoutThreadsTheCallerDoesAllTheWorkInOrder() throws InterruptedException {
    List<String> seen = new ArrayList<>();
    Thread caller = Thread.currentThread();
    new OneAfterAnother()
        .run(
            3,
            "test",
            batch -> {
              assertThat(Thread.currentThread()).isSameAs(caller);
              seen.add("made " + batch);
              return batch;
            },
            batch -> seen.add("taken " + batch));
    assertThat(seen).containsExactly("made 0", "taken 0", "made 1", "taken 1", "made 2", "taken 2");
    assertThatThrownBy(() -> new OnThreads(0)).hasMessageContaining("at least 1 thread");
  }

  @Test
  void aRowGivesBackWhatWasPutInAndRefusesMore() {
    NumberRow row = new NumberRow();
    double[] numbers = {0.1, -0.0, Double.NEGATIVE_INFINITY, 3};
    for (double number : numbers) {
      row.put(number);
    }
    row.putCount(1L << 53);
    NumberRow back = NumberRow.of(row.toArray());
    for (double number : numbers) {
      assertThat(back.next()).isEqualTo(number);
    }
    assertThatThrownBy(back::end).hasMessageContaining("1 are left");
    assertThat(back.nextCount()).isEqualTo(1L << 53);
    back.end();
    assertThatThrownBy(back::next).hasMessageContaining("ends too soon, after 5");
    assertThatThrownBy(() -> NumberRow.of(numbers).nextCount()).hasMessageContaining("count");
    assertThatThrownBy(() -> row.putCount(Long.MAX_VALUE)).hasMessageContaining("2^53");
  }
}
