package reseat.search;

import reseat.designfile.SizeTargets;
import reseat.numerics.OnThreads;
import reseat.numerics.OrderedBatches;

/**
 * A search, or a part of one.
 *
 * @param space the combinations
 * @param wish limits and order
 * @param part which part, from 1
 * @param parts number of parts
 * @param way how the blocks are run; the result does not depend on it
 */
public record SizingPlan(
    SizingSpace space, SizeTargets wish, int part, int parts, OrderedBatches way) {

  /** Refuses a part that there is not. */
  public SizingPlan {
    if (part < 1 || part > parts) {
      throw new IllegalArgumentException("part " + part + " of " + parts + " does not exist");
    }
  }

  /**
   * Plans a search on threads.
   *
   * @param space the combinations
   * @param wish limits and order
   * @param part which part, from 1
   * @param parts number of parts
   * @param threads number of threads
   */
  public SizingPlan(SizingSpace space, SizeTargets wish, int part, int parts, int threads) {
    this(space, wish, part, parts, new OnThreads(threads));
  }

  /** Blocks of combinations in this part. */
  long blocks() {
    long all = space.count() / space.blockSize();
    return all / parts + (part <= all % parts ? 1 : 0);
  }

  /**
   * Returns how many combinations this part has.
   *
   * @return their number
   */
  public long count() {
    return blocks() * space.blockSize();
  }

  /** Number of a block of this part among all. */
  long block(long own) {
    return own * parts + part - 1;
  }
}
