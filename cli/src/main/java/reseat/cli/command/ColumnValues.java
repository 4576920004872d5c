package reseat.cli.command;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.readings.MeasuredSeries;
import reseat.readings.ReadingColumn;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;
import reseat.units.UnitProblem;

/**
 * Values of an option that may be given for every probe or for one: {@code "0.5 um"} or {@code
 * "X=0.5 um"}. A value for one probe counts before one for every probe, which is meant for those
 * that read lengths.
 */
final class ColumnValues {

  private final String option;
  private final Map<String, String> texts = new HashMap<>();

  /**
   * Takes the words of an option.
   *
   * @param option name of the option, for messages
   * @param words as typed, one for each time the option was given
   * @param series the series whose probes may be named
   * @throws IllegalArgumentException if a probe is named twice or not in the series
   */
  ColumnValues(String option, List<String> words, MeasuredSeries series) {
    this.option = option;
    for (String word : words) {
      int equals = word.indexOf('=');
      String name = equals < 0 ? "" : word.substring(0, equals).strip();
      if (equals >= 0) {
        require(option, name, series);
      }
      String before = texts.put(name.toLowerCase(Locale.ROOT), word.substring(equals + 1).strip());
      if (before != null) {
        throw new IllegalArgumentException(
            option + " is given twice for " + (name.isEmpty() ? "every probe" : "probe " + name));
      }
    }
  }

  /**
   * Refuses a name that is no probe of a series.
   *
   * @param option name of the option, for the message
   * @param name the name
   * @param series the series
   * @throws IllegalArgumentException if there is no such probe; the message lists those there are
   */
  static void require(String option, String name, MeasuredSeries series) {
    if (series.column(name).isEmpty()) {
      throw new IllegalArgumentException(
          option
              + ": no probe is named \""
              + name
              + "\"; the file has "
              + String.join(", ", series.columns().stream().map(ReadingColumn::name).toList()));
    }
  }

  /**
   * Returns the value for a probe.
   *
   * @param column the probe
   * @return value in SI; 0 if none was given
   * @throws IllegalArgumentException if the text is not such a quantity, or not positive
   */
  double of(ReadingColumn column) {
    String text = texts.get(column.name().toLowerCase(Locale.ROOT));
    if (text == null && column.quantity() == QuantityKind.LENGTH) {
      text = texts.get("");
    }
    if (text == null) {
      return 0;
    }
    QuantityReading reading = QuantityText.read(text, column.quantity());
    if (reading instanceof UnitProblem problem) {
      throw new IllegalArgumentException(option + ": " + problem.message());
    }
    double value = ((Quantity) reading).value();
    if (!(value > 0)) {
      throw new IllegalArgumentException(option + ": \"" + text + "\" must be above 0");
    }
    return value;
  }
}
