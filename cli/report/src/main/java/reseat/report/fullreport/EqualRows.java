package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.report.page.Page;

/** Rows of a table that differ in their first cell only, told once with all those names. */
final class EqualRows {

  /** What rows share. */
  private record Rest(List<String> cells, Page.Tone tone) {}

  private final Map<Rest, List<String>> names = new LinkedHashMap<>();

  EqualRows add(Page.Tone tone, String name, String... cells) {
    List<String> of = names.computeIfAbsent(new Rest(List.of(cells), tone), r -> new ArrayList<>());
    if (!of.contains(name)) {
      of.add(name);
    }
    return this;
  }

  /** The rows, in the order in which the first of each came. */
  List<Page.Row> rows() {
    List<Page.Row> rows = new ArrayList<>();
    names.forEach(
        (rest, of) -> {
          List<String> cells = new ArrayList<>(List.of(seats(of)));
          cells.addAll(rest.cells());
          rows.add(new Page.Row(cells, rest.tone()));
        });
    return rows;
  }

  /** Both flanks of a seat as the seat: {@code front (left), front (right)} is {@code front}. */
  static String seats(List<String> names) {
    List<String> told = new ArrayList<>();
    for (String name : names) {
      int bracket = name.indexOf(" (");
      String seat = bracket < 0 ? name : name.substring(0, bracket);
      long flanks = names.stream().filter(n -> n.startsWith(seat + " (")).count();
      String word = flanks < 2 ? name : seat;
      if (!told.contains(word)) {
        told.add(word);
      }
    }
    return String.join(", ", told);
  }
}
