package reseat.report.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import reseat.csv.DecimalMark;
import reseat.readings.MeasuredSeries;
import reseat.readings.ReadingColumn;
import reseat.readings.ReadingForm;

/**
 * What was understood of a file of readings, in two lines: what it holds, and what of it is left
 * out or was missed.
 */
public final class UnderstoodText {

  /** Mounts named one by one; of more only the number is told. */
  private static final int NAMED = 3;

  private final MeasuredSeries series;
  private final ReadingForm form;

  private UnderstoodText(MeasuredSeries series) {
    this.series = series;
    this.form = series.form();
  }

  /**
   * Tells what was understood.
   *
   * @param series as read
   * @return one sentence, and one or two more where something is left out or was missed
   */
  public static List<String> of(MeasuredSeries series) {
    UnderstoodText text = new UnderstoodText(series);
    List<String> out = new ArrayList<>(List.of(text.holds()));
    List<String> odd = new ArrayList<>();
    text.titles(odd);
    text.missed(odd);
    text.takenOut(odd);
    text.passedOver(odd);
    if (!odd.isEmpty()) {
      out.add(String.join(" ", odd));
    }
    return out;
  }

  private String holds() {
    long holders = series.holders().stream().distinct().count();
    Map<String, List<String>> byUnit = new LinkedHashMap<>();
    for (ReadingColumn c : series.columns()) {
      byUnit.computeIfAbsent(c.written().symbol(), u -> new ArrayList<>()).add(c.name());
    }
    String probes =
        byUnit.entrySet().stream()
            .map(e -> String.join(", ", e.getValue()) + " in " + e.getKey())
            .collect(Collectors.joining("; "));
    return series.source()
        + ": "
        + ReadingsText.counted(series.mounts(), "mount")
        + (holders > 1 ? " of " + holders + " holders" : "")
        + "; "
        + probes
        + (form.unitFromElsewhere().isEmpty() ? "" : " (unit not in the head)")
        + (form.mark() == DecimalMark.COMMA ? "; decimals with a comma" : "")
        + (form.counterByLooks() ? "; column " + form.counter() + " counts the mounts" : "")
        + ".";
  }

  private void titles(List<String> odd) {
    List<Integer> titles = form.titles();
    if (titles.size() == 1) {
      odd.add("Line " + titles.get(0) + " looks like a title; skipped.");
    } else if (titles.size() > 1) {
      odd.add(
          "Lines "
              + titles.get(0)
              + " to "
              + titles.get(titles.size() - 1)
              + " look like titles; skipped.");
    }
  }

  private void missed(List<String> odd) {
    Map<String, List<String>> byMounts = new LinkedHashMap<>();
    for (ReadingColumn c : series.columns()) {
      int[] missed = c.missed();
      if (missed.length > 0) {
        byMounts.computeIfAbsent(mounts(missed), m -> new ArrayList<>()).add(c.name());
      }
    }
    byMounts.forEach(
        (mounts, names) ->
            odd.add(
                String.join(", ", names) + " not read at " + mounts + ": counts for the others."));
  }

  private String mounts(int[] places) {
    return mounts(Arrays.stream(places).mapToObj(i -> String.valueOf(series.cycle(i))).toList());
  }

  private static String mounts(List<String> names) {
    return names.size() > NAMED
        ? names.size() + " mounts"
        : (names.size() == 1 ? "mount " : "mounts ") + String.join(", ", names);
  }

  private void takenOut(List<String> odd) {
    List<ReadingForm.TakenOut> out = form.takenOut();
    if (!out.isEmpty()) {
      odd.add(
          "Left out: "
              + (out.size() > NAMED
                  ? out.size() + " mounts (" + named(out.get(0)) + " and others)"
                  : out.stream().map(UnderstoodText::named).collect(Collectors.joining(", ")))
              + ".");
    }
    int unmade = series.notMade();
    if (unmade > 0) {
      odd.add(ReadingsText.counted(unmade, "row") + " without readings passed over.");
    }
  }

  private static String named(ReadingForm.TakenOut t) {
    String mount = t.mount().isEmpty() ? "line " + t.line() : "mount " + t.mount();
    return switch (t.why()) {
      case HASH -> mount + (t.mount().isEmpty() ? " (#)" : " (#, line " + t.line() + ")");
      case EMPTY -> mount + " (no reading)";
      case NO_ROW -> mount + " (no row)";
      case FIGURE -> "row " + t.mount() + " (line " + t.line() + ")";
    };
  }

  private void passedOver(List<String> odd) {
    List<String> names = new ArrayList<>(form.passedOver());
    if (!names.isEmpty()) {
      odd.add(
          (names.size() == 1 ? "Column " : "Columns ") + String.join(", ", names) + " not read.");
    }
    if (!form.emptyColumns().isEmpty()) {
      odd.add("No reading at all in " + String.join(", ", form.emptyColumns()) + ".");
    }
  }
}
