package reseat.report.ballmount;

import reseat.ballmount.IndexedSlotting;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.UnitCatalog;

/** How a trihedral seat is cut by indexed slots, and what errors of the settings do to the ball. */
public final class SlottingText {

  /** Less than this, m or rad, is not worth a row of zeros. */
  private static final double NOTHING = 5e-9;

  private SlottingText() {}

  /**
   * Tells how it is cut.
   *
   * @param s the slots
   * @param figures how numbers are written
   * @return lines with their ends
   */
  public static String of(IndexedSlotting s, FigureText figures) {
    StringBuilder out = new StringBuilder(1200);
    out.append('\n');
    out.append(
        Paragraph.of(
            "",
            "Cut by three slots: lean the spindle "
                + QuantityFormat.metric(s.flankAngle(), QuantityKind.ANGLE)
                + " from the seat's axis, cut with the end of the mill to the depth at which it meets"
                + " that axis, index by 120 deg (two steps of a 60 deg plate), cut, index, cut."));
    TextTable t =
        new TextTable("lrrrr", "off at worst", "by", "ball up", "ball aside", "its angle");
    for (IndexedSlotting.Source source : IndexedSlotting.Source.values()) {
      IndexedSlotting.Effect e = s.worst(source);
      t.row(
          source.words(),
          limit(s.limits(), source, figures),
          plusMinus(e.up(), figures),
          e.aside() < NOTHING ? "0" : figures.length(e.aside()),
          e.contactAngle() < NOTHING ? "0" : "\u00b1" + angle(e.contactAngle()));
    }
    out.append(t.text());
    IndexedSlotting.Effect all = s.worst(IndexedSlotting.Source.ALL);
    out.append(
        Paragraph.of(
            "  ",
            "Together they load one contact up to "
                + PageNumbers.percent(Math.max(0.01, all.force()))
                + " more than drawn. An index that is off does not move the ball. Measure where the"
                + " ball stands and take up what is read by the screw or a shim."));
    return out.toString();
  }

  private static String plusMinus(double length, FigureText figures) {
    return length < NOTHING ? "0" : "\u00b1" + figures.length(length);
  }

  private static String limit(
      IndexedSlotting.Limits l, IndexedSlotting.Source source, FigureText figures) {
    return switch (source) {
      case SPINDLE -> "\u00b1" + angle(l.spindle());
      case INDEX -> "\u00b1" + angle(l.index());
      case AXIS -> angle(l.axis());
      case DEPTH -> "\u00b1" + figures.length(l.depth());
      case ALL -> "";
    };
  }

  private static String angle(double radians) {
    return QuantityFormat.fixed(radians, UnitCatalog.ARC_MINUTE, 1);
  }
}
