package reseat.report.shop;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.making.MadeHalf;
import reseat.plots.drawing.ShopSheet;

/** The drawings and tables with which both halves of a coupling are made. */
public final class ShopDrawings {

  private ShopDrawings() {}

  /**
   * Draws both halves.
   *
   * @param design the coupling
   * @param stamp where the papers come from in two lines: file, date and digest; version of the
   *     program; and a third, set off on the drawings, if there is something to warn of
   * @param inchFirst whether the user's unit is the inch
   * @return content by file name, for each half: drawing (SVG), the same in true size (DXF, its
   *     unit in its name), coordinates and sizes (CSV)
   */
  public static Map<String, byte[]> of(
      CouplingDesign design, List<String> stamp, boolean inchFirst) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Half half : Half.values()) {
      String name = half.name().toLowerCase(Locale.ROOT);
      ShopSheet sheet = ShopSheet.of(design, half, stamp, inchFirst);
      files.put(name + "-drawing.svg", sheet.svg());
      files.put(name + "-drawing-" + (inchFirst ? "inch" : "mm") + ".dxf", sheet.dxf());
      MakingCsv tables = new MakingCsv(MadeHalf.of(design, half), stamp);
      files.put(name + "-coordinates.csv", bytes(tables.coordinates()));
      files.put(name + "-sizes.csv", bytes(tables.sizes()));
    }
    return files;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
