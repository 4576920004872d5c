package reseat.designfile;

import reseat.units.Quantity;

/**
 * A quantity as it stands in a file.
 *
 * @param key path of its key, with the number of each table of a list and the axis of a vector
 * @param quantity what was read
 * @param line line of the value, counted from 1
 * @param column column of the value, counted from 1
 */
record Written(String key, Quantity quantity, int line, int column) {

  /** Value in SI. */
  double value() {
    return quantity.value();
  }

  /** Size in SI, whatever the sign. */
  double size() {
    return Math.abs(quantity.value());
  }

  /** The text without blanks at its ends. */
  String text() {
    return quantity.text().strip();
  }
}
