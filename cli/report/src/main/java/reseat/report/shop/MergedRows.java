package reseat.report.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.report.page.Page;

/** Rows of a table in which what is the same for several supports is told once. */
public final class MergedRows {

  private final Map<List<String>, List<String>> names = new LinkedHashMap<>();

  /** Adds what is told of one support. */
  public MergedRows add(String name, String... cells) {
    names.computeIfAbsent(List.of(cells), c -> new ArrayList<>()).add(name);
    return this;
  }

  /** One row for all supports that share their cells, in the order in which they came. */
  public List<Page.Row> rows() {
    List<Page.Row> rows = new ArrayList<>();
    names.forEach(
        (cells, shared) -> {
          List<String> row = new ArrayList<>();
          row.add(String.join(", ", shared));
          row.addAll(cells);
          rows.add(Page.Row.of(row.toArray(new String[0])));
        });
    return rows;
  }

  /** The rows as a table, without the columns in which nothing is told. */
  public Page.Table table(String caption, String... heads) {
    List<Integer> told = new ArrayList<>(List.of(0));
    for (int c = 1; c < heads.length; c++) {
      for (List<String> cells : names.keySet()) {
        if (!cells.get(c - 1).isEmpty()) {
          told.add(c);
          break;
        }
      }
    }
    List<Page.Row> rows = new ArrayList<>();
    for (Page.Row row : rows()) {
      rows.add(Page.Row.of(told.stream().map(row.cells()::get).toArray(String[]::new)));
    }
    return new Page.Table(caption, told.stream().map(c -> heads[c]).toList(), rows);
  }
}
