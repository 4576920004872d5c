package reseat.interchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.csv.CsvProblem;
import reseat.csv.CsvTable;
import reseat.csv.CsvTable.Column;
import reseat.csv.UnreadableCsv;
import reseat.space.Vec3;
import reseat.units.NearestWord;

/**
 * What a measuring machine found of a post and its holders.
 *
 * <p>Read from a CSV file with one row for each ball, seat or tool point: {@code part, feature, x
 * [mm], y [mm], z [mm], diameter [mm], uncertainty [um]}. The part called {@code post} is the post,
 * all others are holders. The feature is the name of a support, or {@code tool point}. Coordinates
 * are in the coupling frame of the part; what they mean for a seat is said at {@link
 * MeasuredPoint}. The diameter may be left out. The uncertainty is standard (one standard
 * deviation), for every coordinate and the diameter.
 *
 * @param post the post; as drawn if no row is about it
 * @param holders the holders in the order of the file, at least one
 */
public record MeasuredParts(MeasuredPart post, List<MeasuredPart> holders) {

  private static final String POST = "post";
  private static final String TOOL_POINT = "tool point";
  private static final String HEAD =
      "part, feature, x [mm], y [mm], z [mm], diameter [mm], uncertainty [um]";

  private static final List<Column> COLUMNS =
      List.of(
          Column.word("part"),
          Column.word("feature"),
          Column.length("x"),
          Column.length("y"),
          Column.length("z"),
          Column.length("diameter").orNothing(),
          Column.length("uncertainty"));

  /** Copies the list. */
  public MeasuredParts {
    holders = List.copyOf(holders);
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param supports names of the supports of the coupling
   * @return the parts
   * @throws IOException if the file cannot be read
   * @throws UnreadableCsv if it is not such a file; holds every problem found
   */
  public static MeasuredParts read(Path file, List<String> supports)
      throws IOException, UnreadableCsv {
    List<CsvProblem> problems = new ArrayList<>();
    Map<String, List<MeasuredPoint>> points = new LinkedHashMap<>();
    Map<String, MeasuredPoint> toolPoints = new HashMap<>();
    for (CsvTable.Row row : CsvTable.read(file, HEAD, COLUMNS, problems)) {
      List<MeasuredPoint> ofPart =
          points.computeIfAbsent(row.word("part"), part -> new ArrayList<>());
      read(row, supports, ofPart, toolPoints);
    }
    if (problems.isEmpty() && points.keySet().stream().allMatch(POST::equals)) {
      problems.add(
          new CsvProblem(
              file.toString(), 0, 0, "only the post was measured; add rows for the holders"));
    }
    if (!problems.isEmpty()) {
      throw new UnreadableCsv(problems);
    }
    List<MeasuredPart> holders = new ArrayList<>();
    MeasuredPart post = MeasuredPart.asDrawn(POST);
    for (Map.Entry<String, List<MeasuredPoint>> e : points.entrySet()) {
      MeasuredPart part =
          new MeasuredPart(
              e.getKey(), e.getValue(), Optional.ofNullable(toolPoints.get(e.getKey())));
      if (e.getKey().equals(POST)) {
        post = part;
      } else {
        holders.add(part);
      }
    }
    return new MeasuredParts(post, holders);
  }

  private static void read(
      CsvTable.Row row,
      List<String> supports,
      List<MeasuredPoint> points,
      Map<String, MeasuredPoint> toolPoints) {
    String part = row.word("part");
    String feature = row.word("feature");
    double uncertainty = row.value("uncertainty").orElse(0);
    double diameter = row.value("diameter").orElse(0);
    if (uncertainty < 0) {
      row.problem("uncertainty", "the uncertainty must not be negative");
      return;
    }
    if (diameter < 0) {
      row.problem("diameter", "the diameter must not be negative");
      return;
    }
    Vec3 centre =
        new Vec3(row.value("x").orElse(0), row.value("y").orElse(0), row.value("z").orElse(0));
    MeasuredPoint point = new MeasuredPoint(feature, centre, diameter, uncertainty);
    if (feature.equals(TOOL_POINT)) {
      if (part.equals(POST)) {
        row.problem("feature", "the post has no tool point; it belongs to a holder");
      } else if (toolPoints.putIfAbsent(part, point) != null) {
        row.problem("feature", "the tool point of " + part + " is there twice");
      }
      return;
    }
    if (!supports.contains(feature)) {
      List<String> known = new ArrayList<>(supports);
      known.add(TOOL_POINT);
      row.problem(
          "feature",
          "no support is called \""
              + feature
              + "\""
              + NearestWord.to(feature, known).map(n -> "; did you mean " + n + "?").orElse("")
              + "; known are "
              + String.join(", ", known));
    } else if (points.stream().anyMatch(p -> p.support().equals(feature))) {
      row.problem("feature", feature + " of " + part + " is there twice");
    } else {
      points.add(point);
    }
  }
}
