package reseat.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Repeatability of an axis or a mount that is approached from two sides, in the form of ISO 230-2.
 *
 * <p>At each position the mean and s of the two directions give the reversal B = up - down, the
 * unidirectional repeatability 4 s, and the bidirectional one max(2 s_up + 2 s_down + |B|, 4 s_up,
 * 4 s_down). Over all positions: M is the range of the averaged means, E the range of all means, A
 * the range of all mean plus and minus 2 s. The formulas are recalled from memory; the standard was
 * not opened. For a mount each holder is a position, so one holder is a single one, and the
 * directions are the two ways it is pushed home.
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
   * Compares two ways of approach; each holder counts as a position, since its place is its own.
   *
   * @param ways name of the way of each mount; the one met first counts as up
   * @param holders holder of each mount; an empty list for one holder
   * @param readings reading of each mount
   * @return the figures of the holders that were mounted twice each way; empty if there are none,
   *     or not two ways
   */
  public static Optional<BidirectionalRepeatability> ofTwoWays(
      List<String> ways, List<String> holders, double[] readings) {
    Groups way = Groups.of(ways, readings.length);
    if (way.count() != 2) {
      return Optional.empty();
    }
    Groups holder = Groups.of(holders, readings.length);
    List<Position> positions = new ArrayList<>();
    for (int h = 0; h < holder.count(); h++) {
      double[] up = readings(readings, way, 0, holder, h);
      double[] down = readings(readings, way, 1, holder, h);
      if (up.length > 1 && down.length > 1) {
        positions.add(Position.of(up, down));
      }
    }
    return positions.isEmpty()
        ? Optional.empty()
        : Optional.of(new BidirectionalRepeatability(positions));
  }

  private static double[] readings(double[] all, Groups way, int w, Groups holder, int h) {
    return IntStream.range(0, all.length)
        .filter(i -> way.groupOf(i) == w && holder.groupOf(i) == h)
        .mapToDouble(i -> all[i])
        .toArray();
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
