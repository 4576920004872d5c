package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import reseat.readings.OffsetTable;
import reseat.readings.OffsetTable.AxisRule;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The tool-offset table as plain text and as CSV. */
public final class OffsetTableText {

  private OffsetTableText() {}

  /**
   * Writes the table for people.
   *
   * @param table the offsets
   * @return lines of text, offsets in mm with four decimals
   */
  public static String of(OffsetTable table) {
    return Paragraph.of("", explanation(table)) + table(table).text();
  }

  /** The table alone. */
  public static TextTable table(OffsetTable table) {
    List<String> head = new ArrayList<>(List.of("holder", "mounts"));
    for (AxisRule axis : table.axes()) {
      head.add(axis.axis() + ", mm");
      head.add("±");
      head.add("next ±");
    }
    TextTable text = new TextTable("l" + "r".repeat(head.size() - 1), head.toArray(String[]::new));
    for (OffsetTable.Row row : table.rows()) {
      List<String> cells = new ArrayList<>(List.of(row.holder(), String.valueOf(row.mounts())));
      for (OffsetTable.Entry e : row.entries()) {
        cells.add(mm(e.offset()));
        cells.add(mm(e.uncertainty()));
        cells.add(mm(e.nextMount()));
      }
      text.row(cells.toArray(String[]::new));
    }
    return text;
  }

  private static String mm(double metres) {
    return QuantityFormat.fixedNumber(metres, UnitCatalog.MM, 4);
  }

  /**
   * Says how the offsets are meant.
   *
   * @param table the offsets
   * @return sentences
   */
  public static String explanation(OffsetTable table) {
    StringBuilder s = new StringBuilder("Offsets: ");
    s.append(
        table.reference().isEmpty()
            ? "where the tool point of a holder stands, from the zero of the gauges (absolute)"
            : "where the tool point of a holder stands less where that of holder "
                + table.reference()
                + " stands (that holder is the master)");
    for (AxisRule axis : table.axes()) {
      s.append("; ").append(axis.axis());
      s.append(axis.diameter() ? " as a diameter" : " as read");
      s.append(axis.sign() < 0 ? ", sign turned" : "");
    }
    s.append(". ± is the ")
        .append(ReadingsRemarks.percent(table.confidence()))
        .append(" uncertainty of the offset, next ± that of the next single mount.");
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

  /**
   * Writes the table as CSV (RFC 4180), lengths in mm.
   *
   * @param table the offsets
   * @return a head line and a line for each holder, each ended by a line feed
   */
  public static String csv(OffsetTable table) {
    StringBuilder out = new StringBuilder("# ").append(explanation(table)).append('\n');
    out.append("holder,mounts");
    for (AxisRule axis : table.axes()) {
      String name = cell(axis.axis() + (axis.diameter() ? " diameter" : ""));
      out.append(',').append(name).append(" [mm]");
      out.append(',').append(name).append(" uncertainty [mm]");
      out.append(',').append(name).append(" next mount [mm]");
    }
    out.append(",date,temperature [degC]\n");
    for (OffsetTable.Row row : table.rows()) {
      out.append(cell(row.holder())).append(',').append(row.mounts());
      for (OffsetTable.Entry e : row.entries()) {
        out.append(',').append(sixDecimals(e.offset()));
        out.append(',').append(sixDecimals(e.uncertainty()));
        out.append(',').append(sixDecimals(e.nextMount()));
      }
      out.append(',').append(cell(table.conditions().date())).append(',');
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

  private static String cell(String text) {
    return text.matches("[^\",\r\n]*")
        ? text
        : '"' + text.replace("\"", "\"\"").replaceAll("[\r\n]+", " ") + '"';
  }
}
