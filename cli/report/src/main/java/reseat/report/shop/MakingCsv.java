package reseat.report.shop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import reseat.csv.PlainCell;
import reseat.elementary.Elementary;
import reseat.making.MadeDimension;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.making.PlaceTolerance;
import reseat.plots.drawing.ShopFigures;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * Coordinates and sizes of one half as tables for a spreadsheet or a machine's memory: both unit
 * systems, units in the head, a comment above that says how the maker sees the half.
 *
 * <p>Millimetres to four decimals and inches to five, so that rounding stays far below any
 * tolerance that a design states; degrees to four decimals beside whole degrees and tenths of a
 * minute.
 */
public final class MakingCsv {

  private static final int MM = 4;
  private static final int INCH = 5;
  private static final int DEGREES = 4;

  private final MadeHalf half;
  private final List<String> stamp;

  /**
   * Prepares the tables.
   *
   * @param half the half
   * @param stamp where the tables come from, written above them
   */
  public MakingCsv(MadeHalf half, List<String> stamp) {
    this.half = half;
    this.stamp = List.copyOf(stamp);
  }

  /** Points, directions and tolerances of place, a row for each feature. */
  public String coordinates() {
    List<String> heads =
        List.of(
            "feature",
            "of",
            "x (mm)",
            "y (mm)",
            "z (mm)",
            "x (in)",
            "y (in)",
            "z (in)",
            "direction (deg)",
            "direction",
            "across +- (mm)",
            "along +- (mm)",
            "height +- (mm)",
            "across +- (in)",
            "along +- (in)",
            "height +- (in)",
            "direction +- (deg)",
            "slope along +- (deg)",
            "slope across +- (deg)",
            "remark");
    List<List<String>> rows = new ArrayList<>();
    for (MadeFeature f : half.features()) {
      rows.add(row(f));
    }
    return table(heads, rows);
  }

  private static List<String> row(MadeFeature f) {
    List<String> row = new ArrayList<>(List.of(f.kind().words(), f.name()));
    for (boolean inch : new boolean[] {false, true}) {
      for (int k = 0; k < 3; k++) {
        row.add(length(f.at().component(k), inch));
      }
    }
    boolean runs = f.direction().isPresent() && f.kind() != MadeFeature.Kind.BALL;
    row.add(runs ? degrees(f.direction().getAsDouble()) : "");
    row.add(runs ? degreesMinutes(f.direction().getAsDouble()) : "");
    PlaceTolerance p = f.place();
    for (boolean inch : new boolean[] {false, true}) {
      row.add(tolerance(p.across(), inch));
      row.add(tolerance(p.along(), inch));
      row.add(tolerance(p.height(), inch));
    }
    row.add(angleTolerance(p.direction()));
    row.add(angleTolerance(p.slopeAlong()));
    row.add(angleTolerance(p.slopeAcross()));
    row.add(f.note());
    return row;
  }

  /** Sizes and their tolerances, a row for each size. */
  public String sizes() {
    List<String> heads =
        List.of(
            "feature",
            "of",
            "part",
            "size",
            "value (mm)",
            "+- (mm)",
            "value (in)",
            "+- (in)",
            "value (deg)",
            "value",
            "+- (deg)");
    List<List<String>> rows = new ArrayList<>();
    for (MadeFeature f : half.features()) {
      for (MadeDimension d : f.sizes()) {
        List<String> row =
            new ArrayList<>(List.of(f.kind().words(), f.name(), d.part(), d.kind().words()));
        if (d.kind().isAngle()) {
          row.addAll(List.of("", "", "", "", degrees(d.value()), degreesMinutes(d.value())));
          row.add(angleTolerance(d.tolerance()));
        } else {
          for (boolean inch : new boolean[] {false, true}) {
            row.add(length(d.value(), inch));
            row.add(tolerance(d.tolerance(), inch));
          }
          row.addAll(List.of("", "", ""));
        }
        rows.add(row);
      }
    }
    return table(heads, rows);
  }

  private String table(List<String> heads, List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    stamp.forEach(line -> text.append("# ").append(PlainCell.remark(line)).append('\n'));
    text.append("# ").append(half.view().words()).append('\n');
    text.append("# z from the plane of the ball centres, out of the worked face;");
    text.append(" directions run from x toward y\n");
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(heads.toArray(new String[0]))
            .setRecordSeparator("\n")
            .get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      for (List<String> row : rows) {
        printer.printRecord(PlainCell.row(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return text.toString();
  }

  private static String length(double metres, boolean inch) {
    // dust of binary fractions would round equal sizes differently, and write a minus before zero
    double clean = Elementary.rint(metres * 1e12) / 1e12;
    return number(clean, inch ? UnitCatalog.INCH : UnitCatalog.MM, inch ? INCH : MM);
  }

  /** Empty if not stated. */
  private static String tolerance(double metres, boolean inch) {
    return Double.isFinite(metres)
        ? ShopFigures.cut(metres, inch ? UnitCatalog.INCH : UnitCatalog.MM, inch ? INCH : MM)
        : "";
  }

  private static String angleTolerance(double rad) {
    return Double.isFinite(rad) ? ShopFigures.cut(rad, UnitCatalog.DEGREE, DEGREES) : "";
  }

  private static String degrees(double rad) {
    return number(rad, UnitCatalog.DEGREE, DEGREES);
  }

  private static String number(double si, Unit unit, int decimals) {
    String number = QuantityFormat.fixedNumber(si, unit, decimals);
    return number.matches("-0\\.0*") ? number.substring(1) : number;
  }

  /** For instance {@code 30 deg 57.6 min}: plain characters, and readable as a design's angle. */
  private static String degreesMinutes(double rad) {
    long tenths = Elementary.round(Math.abs(Elementary.toDegrees(rad)) * 600);
    String sign = rad < 0 && tenths > 0 ? "-" : "";
    long minutes = tenths % 600;
    return sign + tenths / 600 + " deg " + minutes / 10 + "." + minutes % 10 + " min";
  }
}
