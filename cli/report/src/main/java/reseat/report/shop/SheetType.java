package reseat.report.shop;

import java.util.List;
import reseat.report.page.Page;
import reseat.report.page.Sheet;

/** Which size of type keeps a sheet on one page, from an estimate of its lines. */
public final class SheetType {

  /** Letters of running text in a line of a page. */
  private static final int LINE = 100;

  /** Lines of a page by size of type; a line of a table counts more for its frame. */
  private static final double LARGE = 40;

  private static final double MEDIUM = 53;

  private static final double SMALL = 70;

  private static final double FRAME = 1.3;

  private SheetType() {}

  public static Sheet.Type of(List<Page.Section> sections) {
    double lines = 0;
    for (Page.Section s : sections) {
      lines += s.title().isEmpty() ? 0 : 1.8;
      for (Page.Block b : s.blocks()) {
        lines += lines(b);
      }
    }
    return lines <= LARGE
        ? Sheet.Type.LARGE
        : lines <= MEDIUM ? Sheet.Type.MEDIUM : lines <= SMALL ? Sheet.Type.SMALL : Sheet.Type.TINY;
  }

  private static double lines(Page.Block block) {
    if (block instanceof Page.Table t) {
      double lines = broken(t.caption(), LINE) + FRAME * cells(t.heads(), t.heads().size());
      for (Page.Row r : t.rows()) {
        lines += FRAME * cells(r.cells(), t.heads().size());
      }
      return lines;
    }
    if (block instanceof Page.Steps steps) {
      return items(steps.items());
    }
    if (block instanceof Page.Points points) {
      return items(points.items());
    }
    return block instanceof Page.Paragraph p ? broken(p.text(), LINE) : 20;
  }

  private static int items(List<String> items) {
    int lines = 0;
    for (String item : items) {
      lines += broken(item, LINE);
    }
    return lines;
  }

  /** The cell that breaks most, all columns taken as equally wide. */
  private static int cells(List<String> cells, int columns) {
    int most = 1;
    for (String cell : cells) {
      most = Math.max(most, broken(cell, LINE / columns));
    }
    return Math.min(most, 3);
  }

  private static int broken(String text, int width) {
    return 1 + text.length() / width;
  }
}
