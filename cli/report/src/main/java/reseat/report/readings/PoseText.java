package reseat.report.readings;

import java.util.List;
import java.util.Map;
import reseat.readings.PoseScatter;
import reseat.readings.PoseScatter.Figure;
import reseat.readings.ProbeLayout;
import reseat.readings.RigidMotion;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** Motions of the holder as a whole, and of points that move with it. */
public final class PoseText {

  private PoseText() {}

  /**
   * Writes the table.
   *
   * @param scatter the motions
   * @param points points, m
   * @param figures how numbers are written
   * @param all whether the motions of the holder are told beside those of points
   * @return lines of text
   */
  public static String of(PoseScatter scatter, List<Vec3> points, FigureText figures, boolean all) {
    return Paragraph.of("", head(scatter))
        + table(scatter, points, figures, all || points.isEmpty()).text();
  }

  /** How well the probes tell the motions. */
  public static String head(PoseScatter scatter) {
    ProbeLayout layout = scatter.layout();
    double condition = layout.condition();
    StringBuilder head = new StringBuilder();
    head.append("Holder as a rigid body from ")
        .append(ReadingsText.counted(layout.probes().size(), "probe"))
        .append(", told at the origin; condition ")
        .append(PageNumbers.plain(condition, 3))
        .append(
            condition > ProbeLayout.WEAK
                ? " (weak: mostly " + layout.weakestFreedom().words() + ")"
                : "");
    scatter
        .misfit()
        .ifPresent(
            m ->
                head.append("; the probes disagree by ")
                    .append(FilledText.of("%.2f", m))
                    .append(" times their noise"));
    return head.append('.').toString();
  }

  /**
   * Makes the table.
   *
   * @param scatter the motions
   * @param points points, m
   * @param figures how numbers are written
   * @return a row for each motion of the holder, and for each axis of each point
   */
  public static TextTable table(PoseScatter scatter, List<Vec3> points, FigureText figures) {
    return table(scatter, points, figures, true);
  }

  private static TextTable table(
      PoseScatter scatter, List<Vec3> points, FigureText figures, boolean motions) {
    TextTable table = new TextTable("lrr", "motion from mount to mount", "s", "of it probe noise");
    for (Map.Entry<RigidMotion, Figure> entry : scatter.motions().entrySet()) {
      Unit unit =
          entry.getKey().isRotation() ? UnitCatalog.URAD : figures.column(QuantityKind.LENGTH);
      if (motions) {
        row(table, entry.getKey().words(), entry.getValue(), unit);
      }
    }
    for (Vec3 p : points) {
      String name = "point " + place(p, figures) + " along ";
      row(table, name + "x", scatter.scatterOf(p, Vec3.X), figures.column(QuantityKind.LENGTH));
      row(table, name + "y", scatter.scatterOf(p, Vec3.Y), figures.column(QuantityKind.LENGTH));
      row(table, name + "z", scatter.scatterOf(p, Vec3.Z), figures.column(QuantityKind.LENGTH));
    }
    return table;
  }

  private static String place(Vec3 p, FigureText figures) {
    Unit unit = figures.system() == UnitSystem.INCH ? UnitCatalog.INCH : UnitCatalog.MM;
    String[] at = new String[3];
    for (int k = 0; k < 3; k++) {
      at[k] = QuantityFormat.fixedNumber(p.component(k), unit, 2);
    }
    return "(" + String.join(", ", at) + ") " + unit.symbol();
  }

  private static void row(TextTable table, String name, Figure figure, Unit unit) {
    table.row(
        name + ", " + unit.symbol(),
        QuantityFormat.significantNumber(figure.s(), unit, 2),
        QuantityFormat.significantNumber(figure.probeNoise(), unit, 2));
  }
}
