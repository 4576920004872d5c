package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.csv.PlainCell;
import reseat.readings.OffsetTable;
import reseat.readings.OffsetTable.AxisRule;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** The tool-offset table as plain text and as CSV. */
public final class OffsetTableText {

  private OffsetTableText() {}

  /**
   * Writes the table for people.
   *
   * @param table the offsets
   * @param figures how numbers are written
   * @return lines of text, offsets in mm with four decimals or in inches with five
   */
  public static String of(OffsetTable table, FigureText figures) {
    return Paragraph.of("", explanation(table, figures)) + table(table, figures).text();
  }

  /**
   * Makes the table alone.
   *
   * @param table the offsets
   * @param figures how numbers are written
   * @return a row for each holder
   */
  public static TextTable table(OffsetTable table, FigureText figures) {
    Unit unit = unit(figures);
    List<String> head = new ArrayList<>(List.of(unit.symbol(), "mounts"));
    for (AxisRule axis : table.axes()) {
      head.add(axis.axis());
      head.add("±");
      head.add("next");
    }
    TextTable text = new TextTable("l" + "r".repeat(head.size() - 1), head.toArray(String[]::new));
    for (OffsetTable.Row row : table.rows()) {
      List<String> cells = new ArrayList<>(List.of(row.holder(), String.valueOf(row.mounts())));
      for (OffsetTable.Entry e : row.entries()) {
        for (double metres : new double[] {e.offset(), e.uncertainty(), e.nextMount()}) {
          cells.add(QuantityFormat.fixedNumber(metres, unit, decimals(unit)));
        }
      }
      text.row(cells.toArray(String[]::new));
    }
    return text;
  }

  /**
   * Says how the offsets are meant.
   *
   * @param table the offsets
   * @param figures how numbers are written
   * @return sentences
   */
  public static String explanation(OffsetTable table, FigureText figures) {
    return explanation(table, unit(figures));
  }

  private static String explanation(OffsetTable table, Unit unit) {
    StringBuilder s = new StringBuilder("Offsets: ");
    s.append(
        table.reference().isEmpty()
            ? "reading of the holder, from the zero of the gauges"
            : "reading of the holder minus reading of the master (" + table.reference() + ")");
    for (AxisRule axis : table.axes()) {
      s.append("; ").append(axis.axis());
      s.append(axis.diameter() ? " as a diameter" : " as read");
      s.append(axis.sign() < 0 ? ", sign turned" : "");
    }
    s.append(". ± is the ")
        .append(ReadingsRemarks.percent(table.confidence()))
        .append(" uncertainty of the offset; the next change will land within ± next.");
    example(table, unit).ifPresent(e -> s.append(' ').append(e));
    if (!table.conditions().date().isEmpty()) {
      s.append(" Read ").append(table.conditions().date()).append('.');
    }
    if (table.conditions().hasTemperature()) {
      s.append(" Mean temperature ")
          .append(QuantityFormat.fixed(table.conditions().temperature(), UnitCatalog.CELSIUS, 1))
          .append('.');
    }
    return s.toString();
  }

  private static Unit unit(FigureText figures) {
    return figures.system() == UnitSystem.INCH ? UnitCatalog.INCH : UnitCatalog.MM;
  }

  private static int decimals(Unit unit) {
    return unit.equals(UnitCatalog.INCH) ? 5 : 4;
  }

  /** One offset told at length, so that its sign can be compared with the table of the machine. */
  private static Optional<String> example(OffsetTable table, Unit unit) {
    for (OffsetTable.Row row : table.rows()) {
      if (!row.holder().equals(table.reference()) && !table.reference().isEmpty()) {
        AxisRule axis = table.axes().get(0);
        double offset = row.entries().get(0).offset();
        double read = axis.sign() * offset / (axis.diameter() ? 2 : 1);
        return Optional.of(
            "For instance holder "
                + row.holder()
                + " read "
                + QuantityFormat.fixed(Math.abs(read), unit, decimals(unit))
                + (read < 0 ? " less" : " more")
                + " than the master in "
                + axis.axis()
                + ": enter "
                + (offset > 0 ? "+" : "")
                + QuantityFormat.fixedNumber(offset, unit, decimals(unit))
                + "; a machine whose table wants the other sign takes it turned (--turn-sign "
                + axis.axis()
                + ").");
      }
    }
    return Optional.empty();
  }

  /**
   * Writes the table as CSV (RFC 4180), lengths in mm.
   *
   * @param table the offsets
   * @return a head line and a line for each holder, each ended by a line feed
   */
  public static String csv(OffsetTable table) {
    StringBuilder out =
        new StringBuilder("# ")
            .append(PlainCell.remark(explanation(table, UnitCatalog.MM)))
            .append('\n');
    out.append("holder,mounts");
    for (AxisRule axis : table.axes()) {
      String name = PlainCell.quoted(axis.axis() + (axis.diameter() ? " diameter" : ""));
      out.append(',').append(name).append(" [mm]");
      out.append(',').append(name).append(" uncertainty [mm]");
      out.append(',').append(name).append(" next mount [mm]");
    }
    out.append(",date,temperature [degC]\n");
    for (OffsetTable.Row row : table.rows()) {
      out.append(PlainCell.quoted(row.holder())).append(',').append(row.mounts());
      for (OffsetTable.Entry e : row.entries()) {
        out.append(',').append(sixDecimals(e.offset()));
        out.append(',').append(sixDecimals(e.uncertainty()));
        out.append(',').append(sixDecimals(e.nextMount()));
      }
      out.append(',').append(PlainCell.quoted(table.conditions().date())).append(',');
      if (table.conditions().hasTemperature()) {
        out.append(
            QuantityFormat.fixedNumber(table.conditions().temperature(), UnitCatalog.CELSIUS, 2));
      }
      out.append('\n');
    }
    return out.toString();
  }

  private static String sixDecimals(double metres) {
    return QuantityFormat.fixedNumber(metres, UnitCatalog.MM, 6);
  }
}
