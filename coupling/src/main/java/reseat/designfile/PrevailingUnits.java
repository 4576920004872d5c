package reseat.designfile;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import reseat.toml.TomlReader;
import reseat.toml.TomlValue;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/** In which units of length a file is written. */
public final class PrevailingUnits {

  private static final BigInteger INCH = BigInteger.valueOf(254);

  private int inches;
  private int metric;

  private PrevailingUnits() {}

  /**
   * Says whether more lengths of a file are in inches, or parts of one, than in metric units.
   *
   * @param file the file, whatever is wrong in it
   * @return true if inches prevail
   * @throws IOException if the file cannot be read
   */
  public static boolean inch(Path file) throws IOException {
    PrevailingUnits counted = new PrevailingUnits();
    counted.count(TomlReader.read(SourceText.of(file, new Problems())).root());
    return counted.inches > counted.metric;
  }

  private void count(TomlValue value) {
    if (value instanceof TomlValue.Table table) {
      table.entries().values().forEach(e -> count(e.value()));
    } else if (value instanceof TomlValue.Array array) {
      array.values().forEach(this::count);
    } else if (value instanceof TomlValue.Text text
        && QuantityText.read(text.text(), QuantityKind.LENGTH) instanceof Quantity q) {
      // a unit of the inch family is some multiple of 25.4 mm
      BigInteger digits = q.unit().scale().stripTrailingZeros().unscaledValue();
      if (digits.mod(INCH).signum() == 0) {
        inches++;
      } else {
        metric++;
      }
    }
  }
}
