package reseat.readings;

import java.util.List;
import java.util.Optional;

/**
 * Repeatability of an axis or a mount that is approached from two sides, in the form of ISO 230-2.
 *
 * <p>At each position the mean and s of the two directions give the reversal B = up - down, the
 * unidirectional repeatability 4 s, and the bidirectional one max(2 s_up + 2 s_down + |B|, 4 s_up,
 * 4 s_down). Over all positions: M is the range of the averaged means, E the range of all means, A
 * the range of all mean plus and minus 2 s. The formulas are recalled from memory; the standard was
 * not opened. For a mount, "position" may be a single one and the directions the two ways it is
 * pushed home.
 *
 * @param positions figures of each position, at least one
 */
public record BidirectionalRepeatability(List<Position> positions) {

  /** Refuses an empty list. */
  public BidirectionalRepeatability {
    positions = List.copyOf(positions);
    if (positions.isEmpty()) {
      throw new IllegalArgumentException("at least one position is needed");
    }
  }

  /**
   * Figures of one position.
   *
   * @param up series approached from below, as deviations from the target position
   * @param down series approached from above, as deviations from the target position
   */
  public record Position(Repeatability up, Repeatability down) {

    /**
     * Returns the figures of the readings of one position.
     *
     * @param up readings approached from below
     * @param down readings approached from above, in the same unit
     * @return the figures
     */
    public static Position of(double[] up, double[] down) {
      return new Position(Repeatability.of(up), Repeatability.of(down));
    }

    /**
     * Returns the reversal.
     *
     * @return mean of the up readings less mean of the down readings
     */
    public double reversal() {
      return up.mean() - down.mean();
    }

    /**
     * Returns the bidirectional repeatability at this position.
     *
     * @return max(2 s_up + 2 s_down + |B|, 4 s_up, 4 s_down)
     */
    public double repeatability() {
      double both = 2 * up.s() + 2 * down.s() + Math.abs(reversal());
      return Math.max(both, Math.max(up.iso230(), down.iso230()));
    }

    private double mid() {
      return (up.mean() + down.mean()) / 2;
    }

    private double highest() {
      return Math.max(up.mean() + 2 * up.s(), down.mean() + 2 * down.s());
    }

    private double lowest() {
      return Math.min(up.mean() - 2 * up.s(), down.mean() - 2 * down.s());
    }
  }

  /**
   * Compares two ways of approach at one position.
   *
   * @param ways name of the way of each mount; the one met first counts as up
   * @param readings reading of each mount
   * @return the figures; empty unless there are two ways with two mounts each
   */
  public static Optional<BidirectionalRepeatability> ofTwoWays(
      List<String> ways, double[] readings) {
    Groups groups = Groups.of(ways, readings.length);
    if (groups.count() != 2 || groups.smallest() < 2) {
      return Optional.empty();
    }
    List<double[]> parts = groups.split(readings);
    return Optional.of(
        new BidirectionalRepeatability(List.of(Position.of(parts.get(0), parts.get(1)))));
  }

  /**
   * Returns the bidirectional repeatability.
   *
   * @return the greatest over the positions
   */
  public double repeatability() {
    return positions.stream().mapToDouble(Position::repeatability).max().orElseThrow();
  }

  /**
   * Returns the unidirectional repeatability, worse of the two directions.
   *
   * @return the greatest 4 s over positions and directions
   */
  public double unidirectional() {
    return positions.stream()
        .mapToDouble(p -> Math.max(p.up().iso230(), p.down().iso230()))
        .max()
        .orElseThrow();
  }

  /**
   * Returns the mean reversal.
   *
   * @return mean of B over the positions, with its sign
   */
  public double meanReversal() {
    return positions.stream().mapToDouble(Position::reversal).average().orElseThrow();
  }

  /**
   * Returns the systematic deviation.
   *
   * @return range of all means, up and down (E)
   */
  public double systematic() {
    double high =
        positions.stream()
            .mapToDouble(p -> Math.max(p.up().mean(), p.down().mean()))
            .max()
            .orElseThrow();
    double low =
        positions.stream()
            .mapToDouble(p -> Math.min(p.up().mean(), p.down().mean()))
            .min()
            .orElseThrow();
    return high - low;
  }

  /**
   * Returns the mean bidirectional deviation.
   *
   * @return range of the averages of up and down (M)
   */
  public double meanDeviation() {
    return positions.stream().mapToDouble(Position::mid).max().orElseThrow()
        - positions.stream().mapToDouble(Position::mid).min().orElseThrow();
  }

  /**
   * Returns the accuracy.
   *
   * @return range of all means plus and minus 2 s (A)
   */
  public double accuracy() {
    return positions.stream().mapToDouble(Position::highest).max().orElseThrow()
        - positions.stream().mapToDouble(Position::lowest).min().orElseThrow();
  }
}
