package reseat.designfile;

import java.util.Map;
import reseat.units.Quantity;
import reseat.units.QuantityKind;

/** In which units of length a file is written. */
final class PrevailingUnits {

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
        if (q.unit().isInch()) {
          inches++;
        } else {
          metric++;
        }
      }
    }
    return inches > metric;
  }
}
