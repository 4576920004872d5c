package reseat.interchange;

import reseat.numerics.OnThreads;
import reseat.numerics.OrderedBatches;

/**
 * How many posts and holders to simulate.
 *
 * <p>A post is drawn once and all its holders are tried on it.
 *
 * @param posts number of posts
 * @param holders number of holders on each post
 * @param seed seed of all luck
 * @param way how the batches are run; the result does not depend on it
 */
public record InterchangePlan(long posts, long holders, long seed, OrderedBatches way) {

  /** Refuses runs without holders and runs whose holders cannot be numbered. */
  public InterchangePlan {
    if (posts < 1) {
      throw new IllegalArgumentException("at least 1 post is needed, found " + posts);
    }
    if (holders < 2) {
      throw new IllegalArgumentException(
          "at least 2 holders are needed to speak of scatter, found " + holders);
    }
    if (holders > Long.MAX_VALUE / posts) {
      throw new IllegalArgumentException(
          "the number of posts times holders must be under 2^63, found "
              + posts
              + " times "
              + holders);
    }
  }

  /**
   * Plans holders on threads.
   *
   * @param posts number of posts
   * @param holders number of holders on each post
   * @param seed seed of all luck
   * @param threads number of threads
   */
  public InterchangePlan(long posts, long holders, long seed, int threads) {
    this(posts, holders, seed, new OnThreads(threads));
  }

  /**
   * Returns a plan with one post, drawn once.
   *
   * @param holders number of holders on it
   * @param seed seed of all luck
   * @param threads number of threads
   * @return the plan
   */
  public static InterchangePlan onePost(long holders, long seed, int threads) {
    return new InterchangePlan(1, holders, seed, threads);
  }
}
