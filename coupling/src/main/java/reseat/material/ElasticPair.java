package reseat.material;

import java.util.Objects;

/**
 * The elastic constants of two bodies in contact, in the sums that a contact sees.
 *
 * <p>Normal load sees only E*; a tangential load on an ellipse needs two sums, because Poisson's
 * ratio weighs differently along the two axes of the ellipse; on a circle they combine to G*.
 *
 * @param first one body
 * @param second the other; the order does not matter
 */
public record ElasticPair(ElasticConstants first, ElasticConstants second) {

  /** Refuses what is missing. */
  public ElasticPair {
    Objects.requireNonNull(first, "first of an elastic pair must be given, found null");
    Objects.requireNonNull(second, "second of an elastic pair must be given, found null");
  }

  /**
   * Returns the pair of two bodies of one material.
   *
   * @param both constants of either body
   * @return the pair
   */
  public static ElasticPair ofEqual(ElasticConstants both) {
    return new ElasticPair(both, both);
  }

  /**
   * Returns the reduced modulus of the pair.
   *
   * @return E*, 1/E* = (1 - nu1^2)/E1 + (1 - nu2^2)/E2, Pa
   */
  public double reducedModulus() {
    return 1 / (planeCompliance(first) + planeCompliance(second));
  }

  /**
   * Returns the shear modulus of the pair for a circular contact that sticks.
   *
   * @return G*, 1/G* = (2 - nu1)/G1 + (2 - nu2)/G2, Pa
   */
  public double reducedShearModulus() {
    return 1
        / ((2 - first.poisson()) / first.shearModulus()
            + (2 - second.poisson()) / second.shearModulus());
  }

  /**
   * Returns the sum over both bodies of 1/G.
   *
   * @return sum of shear compliances, 1/Pa
   */
  public double shearCompliance() {
    return 1 / first.shearModulus() + 1 / second.shearModulus();
  }

  /**
   * Returns the sum over both bodies of nu/G.
   *
   * @return sum of shear compliances weighed with Poisson's ratio, 1/Pa
   */
  public double poissonCompliance() {
    return first.poisson() / first.shearModulus() + second.poisson() / second.shearModulus();
  }

  private static double planeCompliance(ElasticConstants body) {
    return (1 - body.poisson()) * (1 + body.poisson()) / body.modulus();
  }
}
