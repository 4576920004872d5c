package reseat.design;

import java.util.Optional;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/**
 * A value that a result rests on and that the file does not state.
 *
 * @param key path of the key that would state it, for instance {@code remount.film_scatter}
 * @param words the value where it is no quantity, else what to say after it; may be empty beside a
 *     quantity
 * @param value the value in SI; not a number where it is no quantity
 * @param kind what the value is; empty where it is no quantity
 * @param source where it comes from
 */
public record AssumedValue(
    String key, String words, double value, Optional<QuantityKind> kind, String source) {

  /** Refuses an assumption without a key, a value or a source. */
  public AssumedValue {
    if (key.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("an assumption needs a key and a source");
    }
    if (kind.isPresent() ? !Double.isFinite(value) : words.isBlank()) {
      throw new IllegalArgumentException("an assumption needs a value: " + key);
    }
  }

  /**
   * An assumption that is no quantity.
   *
   * @param key path of the key
   * @param words the value in words
   * @param source where it comes from
   * @return the assumption
   */
  public static AssumedValue of(String key, String words, String source) {
    return new AssumedValue(key, words, Double.NaN, Optional.empty(), source);
  }

  /**
   * A quantity that is assumed.
   *
   * @param key path of the key
   * @param value the value in SI
   * @param kind what it is
   * @param words what to say after it; may be empty
   * @param source where it comes from
   * @return the assumption
   */
  public static AssumedValue of(
      String key, double value, QuantityKind kind, String words, String source) {
    return new AssumedValue(key, words, value, Optional.of(kind), source);
  }

  /**
   * Returns the value for people.
   *
   * @return in words, or with metric and inch unit
   */
  public String text() {
    if (kind.isEmpty()) {
      return words;
    }
    String shown = QuantityFormat.both(value, kind.get());
    return words.isEmpty() ? shown : shown + ", " + words;
  }
}
