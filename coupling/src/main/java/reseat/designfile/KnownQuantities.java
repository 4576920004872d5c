package reseat.designfile;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;

/**
 * What quantities mean as text, kept for a file that is read again and again with a few values
 * changed. At most {@value #MOST} texts of a kind are kept. For use by several threads.
 */
final class KnownQuantities {

  private static final int MOST = 5000;

  private final Map<QuantityKind, Map<String, QuantityReading>> known =
      new EnumMap<>(QuantityKind.class);

  KnownQuantities() {
    for (QuantityKind kind : QuantityKind.values()) {
      known.put(kind, new ConcurrentHashMap<>());
    }
  }

  /** Reads a text, as {@link QuantityText#read} does. */
  QuantityReading read(String text, QuantityKind kind) {
    Map<String, QuantityReading> ofKind = known.get(kind);
    QuantityReading reading = ofKind.get(text);
    if (reading == null) {
      reading = QuantityText.read(text, kind);
      if (ofKind.size() < MOST) {
        ofKind.put(text, reading);
      }
    }
    return reading;
  }
}
