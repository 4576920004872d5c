package reseat.plots.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What stands before the entities: header, line types, layers, the text style, no blocks. */
final class DxfHead {

  private DxfHead() {}

  /**
   * Writes it.
   *
   * @param file where to
   * @param left least x of the drawing, unit of the file
   * @param low least y
   * @param right greatest x
   * @param high greatest y
   * @param millimetre one millimetre in the unit of the file, for the dashes
   */
  static void write(
      DxfPairs file, String left, String low, String right, String high, double millimetre) {
    header(file, left, low, right, high);
    section(file, "TABLES");
    DxfLayer.LineType[] types = DxfLayer.LineType.values();
    table(file, "LTYPE", types.length);
    for (DxfLayer.LineType t : types) {
      lineType(file, t, millimetre);
    }
    file.add(0, "ENDTAB");
    table(file, "LAYER", DxfLayer.values().length + 1);
    layer(file, "0", 7, DxfLayer.LineType.CONTINUOUS);
    for (DxfLayer l : DxfLayer.values()) {
      layer(file, l.label(), l.colour(), l.lineType());
    }
    file.add(0, "ENDTAB");
    table(file, "STYLE", 1);
    style(file);
    file.add(0, "ENDTAB");
    file.add(0, "ENDSEC");
    section(file, "BLOCKS");
    file.add(0, "ENDSEC");
  }

  private static void header(DxfPairs file, String left, String low, String right, String high) {
    section(file, "HEADER");
    variable(file, "$ACADVER", 1, "AC1009");
    corner(file, "$INSBASE", "0.0", "0.0");
    corner(file, "$EXTMIN", left, low);
    corner(file, "$EXTMAX", right, high);
    variable(file, "$LTSCALE", 40, "1.0");
    variable(file, "$LUNITS", 70, "2");
    variable(file, "$LUPREC", 70, "4");
    variable(file, "$AUNITS", 70, "0");
    variable(file, "$AUPREC", 70, "4");
    file.add(0, "ENDSEC");
  }

  private static void section(DxfPairs file, String name) {
    file.add(0, "SECTION");
    file.add(2, name);
  }

  private static void variable(DxfPairs file, String name, int code, String value) {
    file.add(9, name);
    file.add(code, value);
  }

  private static void corner(DxfPairs file, String name, String x, String y) {
    file.add(9, name);
    file.add(10, x);
    file.add(20, y);
    file.add(30, "0.0");
  }

  private static void table(DxfPairs file, String name, int entries) {
    file.add(0, "TABLE");
    file.add(2, name);
    file.add(70, Integer.toString(entries));
  }

  private static void lineType(DxfPairs file, DxfLayer.LineType type, double millimetre) {
    List<Double> pattern = type.pattern();
    file.add(0, "LTYPE");
    file.add(2, type.name());
    file.add(70, "0");
    file.add(3, type.words());
    file.add(72, "65");
    file.add(73, Integer.toString(pattern.size()));
    file.add(40, number(pattern.stream().mapToDouble(Math::abs).sum() * millimetre));
    for (double part : pattern) {
      file.add(49, number(part * millimetre));
    }
  }

  private static void layer(DxfPairs file, String name, int colour, DxfLayer.LineType type) {
    file.add(0, "LAYER");
    file.add(2, name);
    file.add(70, "0");
    file.add(62, Integer.toString(colour));
    file.add(6, type.name());
  }

  private static void style(DxfPairs file) {
    file.add(0, "STYLE");
    file.add(2, "STANDARD");
    file.add(70, "0");
    file.add(40, "0.0");
    file.add(41, "1.0");
    file.add(50, "0.0");
    file.add(71, "0");
    file.add(42, "2.5");
    file.add(3, "txt");
    file.add(4, "");
  }

  private static String number(double value) {
    return new BigDecimal(value).setScale(6, RoundingMode.HALF_UP).toPlainString();
  }
}
