package reseat.designfile;

import java.math.BigInteger;
import java.util.Map;
import reseat.units.Quantity;
import reseat.units.QuantityKind;

/** In which units of length a file is written. */
final class PrevailingUnits {

  private static final BigInteger INCH = BigInteger.valueOf(254);

  private PrevailingUnits() {}

  /**
   * Says whether more lengths of a file are in inches, or parts of one, than in metric units.
   *
   * @param written the quantities that its readers met, by their keys
   * @return true if inches prevail
   */
  static boolean inch(Map<String, Written> written) {
    int inches = 0;
    int metric = 0;
    for (Written w : written.values()) {
      Quantity q = w.quantity();
      if (q.unit().dimension().equals(QuantityKind.LENGTH.dimension())) {
        // a unit of the inch family is some multiple of 25.4 mm
        BigInteger digits = q.unit().scale().stripTrailingZeros().unscaledValue();
        if (digits.mod(INCH).signum() == 0) {
          inches++;
        } else {
          metric++;
        }
      }
    }
    return inches > metric;
  }
}
