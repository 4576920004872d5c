package reseat.report.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.making.MadeDimension;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/** The files for the shop floor, read back. */
class ShopDrawingsTest {

  private static final List<String> STAMP = List.of("Design file x.toml.", "Made by reseat 0.1.0.");

  private static CouplingDesign design(Starter kind) {
    return DesignFile.read(kind.text()).design().orElseThrow();
  }

  private static List<CSVRecord> rows(byte[] file) throws IOException {
    String text = new String(file, StandardCharsets.UTF_8);
    assertThat(text).isASCII().startsWith("# Design file x.toml.\n# Made by reseat 0.1.0.\n# view");
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.getRecords();
    }
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  @ParameterizedTest
  @EnumSource(
      value = Starter.class,
      names = {"TOOL_POST", "PALLET", "SENSOR_MOUNT"})
  void coordinatesAndDirectionsReadBackAreTheDesign(Starter kind) throws IOException {
    CouplingDesign design = design(kind);
    Map<String, byte[]> files = ShopDrawings.of(design, STAMP, false);
    for (Half half : Half.values()) {
      List<MadeFeature> features = MadeHalf.of(design, half).features();
      List<CSVRecord> rows =
          rows(files.get(half == Half.BASE ? "base-coordinates.csv" : "holder-coordinates.csv"));
      assertThat(rows).hasSameSizeAs(features);
      for (int i = 0; i < rows.size(); i++) {
        MadeFeature f = features.get(i);
        CSVRecord row = rows.get(i);
        assertThat(row.get("feature")).isEqualTo(f.kind().words());
        assertThat(row.get("of")).isEqualTo(f.name());
        assertThat(number(row, "x (mm)") / 1e3).isCloseTo(f.at().x(), within(0.051e-6));
        assertThat(number(row, "y (mm)") / 1e3).isCloseTo(f.at().y(), within(0.051e-6));
        assertThat(number(row, "z (mm)") / 1e3).isCloseTo(f.at().z(), within(0.051e-6));
        assertThat(number(row, "x (in)") * 0.0254).isCloseTo(f.at().x(), within(0.13e-6));
        if (f.direction().isPresent() && f.kind() != MadeFeature.Kind.BALL) {
          double direction = f.direction().getAsDouble();
          assertThat(Math.toRadians(number(row, "direction (deg)")))
              .isCloseTo(direction, within(1e-6));
          Quantity minutes = (Quantity) QuantityText.read(row.get("direction"), QuantityKind.ANGLE);
          assertThat(minutes.value()).isCloseTo(direction, within(Math.toRadians(0.051 / 60)));
        }
        boolean stated = Double.isFinite(f.place().height());
        assertThat(row.get("height +- (mm)").isEmpty()).isEqualTo(!stated);
        if (stated) {
          assertThat(number(row, "height +- (mm)"))
              .isCloseTo(1e3 * f.place().height(), within(1e-5));
          assertThat(number(row, "height +- (in)") * 25.4)
              .isLessThanOrEqualTo(1e3 * f.place().height() * (1 + 1e-9))
              .isCloseTo(1e3 * f.place().height(), within(3e-4));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Starter.class,
      names = {"TOOL_POST", "PALLET", "SENSOR_MOUNT"})
  void sizesReadBackAreTheDesign(Starter kind) throws IOException {
    CouplingDesign design = design(kind);
    Map<String, byte[]> files = ShopDrawings.of(design, STAMP, true);
    List<MadeDimension> sizes =
        MadeHalf.of(design, Half.BASE).features().stream()
            .flatMap(f -> f.sizes().stream())
            .toList();
    List<CSVRecord> rows = rows(files.get("base-sizes.csv"));
    assertThat(rows).hasSameSizeAs(sizes);
    for (int i = 0; i < rows.size(); i++) {
      MadeDimension d = sizes.get(i);
      CSVRecord row = rows.get(i);
      assertThat(row.get("size")).isEqualTo(d.kind().words());
      if (d.kind().isAngle()) {
        assertThat(Math.toRadians(number(row, "value (deg)"))).isCloseTo(d.value(), within(1e-6));
      } else {
        assertThat(number(row, "value (mm)")).isCloseTo(1e3 * d.value(), within(0.51e-4));
        assertThat(number(row, "value (in)") * 25.4).isCloseTo(1e3 * d.value(), within(1.3e-4));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Half.class)
  void eachHalfHasItsDrawingInBothFormsAndItsTables(Half half) {
    String name = half == Half.BASE ? "base" : "holder";
    CouplingDesign design = design(Starter.TOOL_POST);
    assertThat(ShopDrawings.of(design, STAMP, true))
        .containsKeys(
            name + "-drawing.svg",
            name + "-drawing-inch.dxf",
            name + "-coordinates.csv",
            name + "-sizes.csv")
        .hasSize(8);
    assertThat(ShopDrawings.of(design, STAMP, false)).containsKey(name + "-drawing-mm.dxf");
  }
}
