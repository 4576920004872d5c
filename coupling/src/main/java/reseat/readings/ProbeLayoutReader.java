package reseat.readings;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import reseat.csv.CsvProblem;
import reseat.csv.CsvTable;
import reseat.csv.CsvTable.Column;
import reseat.csv.UnreadableCsv;
import reseat.space.Vec3;

/**
 * Reads where probes stand from a CSV file with the columns {@code probe, x [mm], y [mm], z [mm],
 * dx, dy, dz, noise [um]}: the point of the holder that the probe touches, the direction in which
 * that point must move to make the reading grow (any length), and the standard deviation of a
 * reading.
 */
public final class ProbeLayoutReader {

  private static final List<Column> COLUMNS =
      List.of(
          Column.word("probe"),
          Column.length("x"),
          Column.length("y"),
          Column.length("z"),
          Column.number("dx"),
          Column.number("dy"),
          Column.number("dz"),
          Column.length("noise"));

  private static final String EXAMPLE = "probe, x [mm], y [mm], z [mm], dx, dy, dz, noise [um]";

  private ProbeLayoutReader() {}

  /**
   * Reads a file.
   *
   * @param file the file, UTF-8
   * @return the probes in the order of the file, at least one
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if it is not such a file; holds every problem found
   */
  public static List<Probe> read(Path file) throws IOException, UnreadableCsv {
    List<CsvProblem> problems = new ArrayList<>();
    List<Probe> probes = new ArrayList<>();
    for (CsvTable.Row row : CsvTable.read(file, EXAMPLE, COLUMNS, problems)) {
      add(row, probes);
    }
    if (!problems.isEmpty()) {
      throw new UnreadableCsv(problems);
    }
    return probes;
  }

  private static void add(CsvTable.Row row, List<Probe> probes) {
    String name = row.word("probe");
    Vec3 direction = vector(row, "dx", "dy", "dz");
    double noise = row.value("noise").orElse(0);
    if (direction.norm() == 0) {
      row.problem("dx", "probe " + name + " has no direction: dx, dy, dz are all 0");
    } else if (!(noise > 0)) {
      row.problem("noise", "probe " + name + ": the noise must be above 0");
    } else {
      probes.add(new Probe(name, vector(row, "x", "y", "z"), direction, noise));
    }
  }

  private static Vec3 vector(CsvTable.Row row, String x, String y, String z) {
    return new Vec3(row.value(x).orElse(0), row.value(y).orElse(0), row.value(z).orElse(0));
  }
}
