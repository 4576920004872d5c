package reseat.verification;

import java.util.function.DoubleSupplier;
import reseat.numerics.Bounds;

/**
 * A number from outside the program and the computation that must reproduce it.
 *
 * @param id identifier, such as {@code CV-001}; several quantities of one case share it
 * @param quantity what is compared, with the case it belongs to
 * @param source where the number comes from, or the formula it was computed from
 * @param standing what stands behind it
 * @param printed the number as printed, in {@code unit}
 * @param unit unit of both numbers, empty for a pure number
 * @param tolerance greatest difference allowed, as a part of the printed number; where that is
 *     zero, in {@code unit}
 * @param computation what the program makes of it, in {@code unit}
 */
public record CheckValue(
    String id,
    String quantity,
    String source,
    Standing standing,
    double printed,
    String unit,
    double tolerance,
    DoubleSupplier computation) {

  /** Refuses a value without a name or a tolerance. */
  public CheckValue {
    if (id.isBlank() || quantity.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a check value needs an id, a quantity and a source");
    }
    Bounds.between("tolerance of a check value", tolerance, "", 0, 1);
  }

  /**
   * Computes the quantity now.
   *
   * @return the program's number, in {@link #unit()}
   */
  public double computed() {
    return computation.getAsDouble();
  }

  /**
   * Compares the two numbers.
   *
   * @return computed less printed, as a part of the printed number; where that is zero, in {@link
   *     #unit()}
   */
  public double difference() {
    double difference = computed() - printed;
    return printed == 0 ? difference : difference / Math.abs(printed);
  }

  /**
   * Tells whether the computation reproduces the number.
   *
   * @return true if the difference is within the tolerance; false also for a result that is not a
   *     number
   */
  public boolean holds() {
    return Math.abs(difference()) <= tolerance;
  }
}
