package reseat.readings;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/**
 * Reads where probes stand from a CSV file with the columns {@code probe, x [mm], y [mm], z [mm],
 * dx, dy, dz, noise [um]}: the point of the holder that the probe touches, the direction in which
 * that point must move to make the reading grow (any length), and the standard deviation of a
 * reading.
 */
public final class ProbeLayoutReader {

  private static final List<String> COLUMNS =
      List.of("probe", "x", "y", "z", "dx", "dy", "dz", "noise");

  private static final String EXAMPLE = "probe, x [mm], y [mm], z [mm], dx, dy, dz, noise [um]";

  private final String source;
  private final List<ReadingsProblem> problems = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, HeadUnit> units = new HashMap<>();

  private ProbeLayoutReader(String source) {
    this.source = source;
  }

  /**
   * Reads a file.
   *
   * @param file the file, UTF-8
   * @return the probes in the order of the file, at least one
   * @throws IOException if the file cannot be read
   * @throws UnreadableReadings if it is not such a file; holds every problem found
   */
  public static List<Probe> read(Path file) throws IOException, UnreadableReadings {
    try (BufferedReader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return new ProbeLayoutReader(file.toString()).read(new LineFeed(text));
    } catch (CharacterCodingException e) {
      UnreadableReadings wrong =
          new UnreadableReadings(
              List.of(
                  new ReadingsProblem(
                      file.toString(), 0, 0, "the file is not UTF-8 text; save it as CSV UTF-8")));
      wrong.initCause(e);
      throw wrong;
    }
  }

  private List<Probe> read(LineFeed feed) throws IOException, UnreadableReadings {
    List<Probe> probes = new ArrayList<>();
    try (CSVParser parser =
        CSVParser.builder().setReader(feed).setFormat(CSVFormat.DEFAULT).get()) {
      for (CSVRecord row : parser) {
        LineFeed.Line line = feed.lineOf(row.getRecordNumber());
        if (places.isEmpty()) {
          head(row, line);
          if (!problems.isEmpty()) {
            break;
          }
        } else {
          probe(row, line, probes);
        }
      }
    }
    if (problems.isEmpty() && probes.isEmpty()) {
      problems.add(
          new ReadingsProblem(source, 0, 0, "no probes in the file; its head line is " + EXAMPLE));
    }
    if (!problems.isEmpty()) {
      throw new UnreadableReadings(problems);
    }
    return probes;
  }

  private void problem(LineFeed.Line line, int cell, String message) {
    int column = cell < 0 ? 0 : line.columnOf(cell, ',');
    problems.add(new ReadingsProblem(source, line.number(), column, message));
  }

  private void head(CSVRecord row, LineFeed.Line line) {
    for (int i = 0; i < row.size(); i++) {
      ColumnHead head = ColumnHead.of(row.get(i));
      String name = head.name().toLowerCase(Locale.ROOT);
      places.putIfAbsent(name, i);
      if (List.of("x", "y", "z", "noise").contains(name)) {
        HeadUnit unit = HeadUnit.of(head.unit(), ColumnHead.Kind.PROBE);
        if (unit.problem().isEmpty() && unit.quantity() == QuantityKind.LENGTH) {
          units.put(name, unit);
        } else {
          problem(line, i, "column " + name + " needs a unit of length, for instance " + EXAMPLE);
        }
      }
    }
    for (String name : COLUMNS) {
      if (!places.containsKey(name)) {
        problem(line, -1, "column " + name + " is missing; the head line is " + EXAMPLE);
      }
    }
  }

  private void probe(CSVRecord row, LineFeed.Line line, List<Probe> probes) {
    int before = problems.size();
    String name = places.get("probe") < row.size() ? row.get(places.get("probe")).strip() : "";
    if (name.isEmpty()) {
      problem(line, places.get("probe"), "the probe has no name");
    }
    Vec3 position = vector(row, line, "x", "y", "z");
    Vec3 direction = vector(row, line, "dx", "dy", "dz");
    double noise = number(row, line, "noise");
    if (problems.size() > before) {
      return;
    }
    if (direction.norm() == 0) {
      problem(line, places.get("dx"), "probe " + name + " has no direction: dx, dy, dz are all 0");
    } else if (!(noise > 0)) {
      problem(line, places.get("noise"), "probe " + name + ": the noise must be above 0");
    } else {
      probes.add(new Probe(name, position, direction, noise));
    }
  }

  private Vec3 vector(CSVRecord row, LineFeed.Line line, String x, String y, String z) {
    return new Vec3(number(row, line, x), number(row, line, y), number(row, line, z));
  }

  private double number(CSVRecord row, LineFeed.Line line, String name) {
    int place = places.get(name);
    String text = place < row.size() ? CellNumber.tidy(row.get(place)) : "";
    HeadUnit unit = units.getOrDefault(name, HeadUnit.NONE);
    double value = CellNumber.isPlain(text) ? unit.toSi(Double.parseDouble(text)) : Double.NaN;
    if (!(Math.abs(value) <= HeadUnit.LARGEST)) {
      problem(
          line, place, "column " + name + ": " + CellNumber.explain(text, unit.unit().symbol()));
      return 0;
    }
    return value;
  }
}
