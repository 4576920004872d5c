package reseat.verification;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * Check values that belong together.
 *
 * @param title what they are about
 * @param values the values, in the order of their source
 */
public record Topic(String title, List<CheckValue> values) {

  /** Copies the list. */
  public Topic {
    values = List.copyOf(values);
  }

  /** Gathers the values of a topic; each call states the standing of one source. */
  static final class Gatherer {

    private final List<CheckValue> values = new ArrayList<>();

    /** Adds values that share a source, a standing and a tolerance. */
    From from(String source, Standing standing, double tolerance) {
      return new From(source, standing, tolerance);
    }

    Topic topic(String title) {
      return new Topic(title, values);
    }

    /** One source. */
    final class From {

      private final String source;
      private final Standing standing;
      private final double tolerance;

      private From(String source, Standing standing, double tolerance) {
        this.source = source;
        this.standing = standing;
        this.tolerance = tolerance;
      }

      From add(
          String id, String quantity, double printed, String unit, DoubleSupplier computation) {
        values.add(
            new CheckValue(id, quantity, source, standing, printed, unit, tolerance, computation));
        return this;
      }
    }
  }
}
