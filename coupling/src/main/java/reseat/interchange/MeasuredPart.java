package reseat.interchange;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A post or a holder as measured.
 *
 * @param name what the user calls it
 * @param points balls or seats that were measured, each support at most once; those left out are
 *     taken as drawn
 * @param toolPoint the tool point as measured, in the coupling frame of the holder; its support
 *     name and diameter are not used
 */
public record MeasuredPart(
    String name, List<MeasuredPoint> points, Optional<MeasuredPoint> toolPoint) {

  /** Copies the list and refuses points given twice. */
  public MeasuredPart {
    points = List.copyOf(points);
    Set<String> seen = new HashSet<>();
    for (MeasuredPoint p : points) {
      if (!seen.add(p.support())) {
        throw new IllegalArgumentException(name + ": " + p.support() + " was measured twice");
      }
    }
  }

  /**
   * Returns a part as drawn, of which nothing was measured.
   *
   * @param name what the user calls it
   * @return the part
   */
  public static MeasuredPart asDrawn(String name) {
    return new MeasuredPart(name, List.of(), Optional.empty());
  }

  /**
   * Finds a measured ball or seat.
   *
   * @param support name of the support
   * @return the point, if it was measured
   */
  public Optional<MeasuredPoint> at(String support) {
    return points.stream().filter(p -> p.support().equals(support)).findFirst();
  }
}
