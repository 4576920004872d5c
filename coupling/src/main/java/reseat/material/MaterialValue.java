package reseat.material;

import reseat.units.PrintedNumber;
import java.util.Objects;

/**
 * One value of a material with the range it was printed in and where it comes from.
 *
 * @param nominal the value the program calculates with, SI
 * @param low lower end of the printed range, SI; equal to the nominal value where one value is
 *     printed
 * @param high upper end of the printed range, SI
 * @param provenance how far the nominal value can be trusted
 * @param source where it comes from, for a reader
 */
public record MaterialValue(
    double nominal, double low, double high, Provenance provenance, String source) {

  /** Refuses values that are not positive or out of order. */
  public MaterialValue {
    Objects.requireNonNull(provenance, "provenance of a material value must be given, found null");
    Objects.requireNonNull(source, "source of a material value must be given, found null");
    // Poisson's ratio may be zero; the material checks what each property allows
    if (!(low >= 0 && low <= nominal && nominal <= high && Double.isFinite(high))) {
      throw new IllegalArgumentException(
          "a material value and its range must be in rising order and not negative, found "
              + PrintedNumber.shortest(low)
              + ", "
              + PrintedNumber.shortest(nominal)
              + ", "
              + PrintedNumber.shortest(high));
    }
  }

  /**
   * Returns a value the user gave.
   *
   * @param value the value, SI
   * @return the value, without a range
   */
  public static MaterialValue given(double value) {
    return new MaterialValue(value, value, value, Provenance.GIVEN, "given by the user");
  }
}
