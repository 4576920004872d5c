package reseat.report.readings;

import java.util.List;
import java.util.Map;
import reseat.readings.Freedom;
import reseat.readings.PoseScatter;
import reseat.readings.PoseScatter.Figure;
import reseat.readings.ProbeLayout;
import reseat.report.form.Paragraph;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;
import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** Motions of the holder as a whole, and of points that move with it. */
public final class PoseText {

  private PoseText() {}

  /**
   * Writes the table.
   *
   * @param scatter the motions
   * @param points points, m
   * @return lines of text
   */
  public static String of(PoseScatter scatter, List<Vec3> points) {
    return Paragraph.of("", head(scatter)) + table(scatter, points).text();
  }

  /** How well the probes tell the motions. */
  public static String head(PoseScatter scatter) {
    ProbeLayout layout = scatter.layout();
    double condition = layout.condition();
    StringBuilder head = new StringBuilder();
    head.append("Holder as a rigid body from ")
        .append(ReadingsText.counted(layout.probes().size(), "probe"))
        .append(", told at the origin; condition ")
        .append(Shown.plain(condition, 3))
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

  /** The motions, and those of points. */
  public static TextTable table(PoseScatter scatter, List<Vec3> points) {
    TextTable table = new TextTable("lrr", "motion from mount to mount", "s", "of it probe noise");
    for (Map.Entry<Freedom, Figure> entry : scatter.motions().entrySet()) {
      boolean turn = entry.getKey().isRotation();
      row(table, entry.getKey().words() + (turn ? ", µrad" : ", µm"), entry.getValue(), turn);
    }
    for (Vec3 p : points) {
      String name =
          FilledText.of(
              "point (%.2f, %.2f, %.2f) mm along ", 1e3 * p.x(), 1e3 * p.y(), 1e3 * p.z());
      row(table, name + "x, µm", scatter.scatterOf(p, Vec3.X), false);
      row(table, name + "y, µm", scatter.scatterOf(p, Vec3.Y), false);
      row(table, name + "z, µm", scatter.scatterOf(p, Vec3.Z), false);
    }
    return table;
  }

  private static void row(TextTable table, String name, Figure figure, boolean turn) {
    table.row(name, number(figure.s(), turn), number(figure.probeNoise(), turn));
  }

  private static String number(double si, boolean turn) {
    return QuantityFormat.significantNumber(si, turn ? UnitCatalog.URAD : UnitCatalog.UM, 2);
  }
}
