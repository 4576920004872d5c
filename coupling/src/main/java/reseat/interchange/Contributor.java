package reseat.interchange;

import reseat.design.ToleranceKind;
import reseat.numerics.Distribution;

/**
 * One independent source of error: a dimension, or several that depart together.
 *
 * <p>Its deviation is told in the unit of its kind (m, rad or K) and with the sign that {@link
 * ToleranceKind} gives.
 */
public final class Contributor {

  private final String name;
  private final ToleranceKind kind;
  private final Owner owner;
  private final Distribution spread;
  private final int[] places;

  Contributor(String name, ToleranceKind kind, Owner owner, Distribution spread, int[] places) {
    this.name = name;
    this.kind = kind;
    this.owner = owner;
    this.spread = spread;
    this.places = places.clone();
  }

  /**
   * Returns the name.
   *
   * @return where and what, for instance {@code front left flank angle}; different for all
   *     contributors of a model
   */
  public String name() {
    return name;
  }

  /**
   * Returns the kind of dimension.
   *
   * @return the kind
   */
  public ToleranceKind kind() {
    return kind;
  }

  /**
   * Returns what the error belongs to.
   *
   * @return post, holder or occasion
   */
  public Owner owner() {
    return owner;
  }

  /**
   * Returns limits and shape.
   *
   * @return the tolerance, m, rad or K
   */
  public Distribution spread() {
    return spread;
  }

  /** How many dimensions depart together. */
  int count() {
    return places.length;
  }

  /** Index in the state of the dimension at a place in this contributor's list. */
  int place(int index) {
    return places[index];
  }

  /** Adds a deviation to a state. */
  void add(double deviation, double[] state) {
    for (int p : places) {
      state[p] += deviation;
    }
  }

  @Override
  public String toString() {
    return name;
  }
}
