package reseat.report.page;

import java.util.List;

/**
 * Everything that stands on a report's page.
 *
 * @param title what was designed
 * @param verdict one line
 * @param tone how the verdict is to be taken
 * @param figures the few numbers that matter
 * @param findings what does not simply hold, worst first; each is told here and nowhere else
 * @param changes what to change first, nearest first
 * @param assumed what the result rests on and nobody stated
 * @param plan the picture that follows the first screen
 * @param sections what follows, in order
 * @param stamp where the page comes from: file, digest, date, version
 */
public record Page(
    String title,
    String verdict,
    Tone tone,
    List<KeyFigure> figures,
    List<Remark> findings,
    List<String> changes,
    List<String> assumed,
    Figure plan,
    List<Section> sections,
    List<String> stamp) {

  /** Copies the lists. */
  public Page {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
    assumed = List.copyOf(assumed);
    changes = List.copyOf(changes);
    sections = List.copyOf(sections);
    stamp = List.copyOf(stamp);
  }

  /** How something is to be taken; told by a word as well as by a colour. */
  public enum Tone {
    /** All is well. */
    GOOD("holds"),
    /** Worth knowing. */
    NOTE("note"),
    /** Beyond a soft limit: a person decides. */
    CAREFUL("decide"),
    /** A limit is passed. */
    BAD("fails"),
    /** Neither. */
    PLAIN("");

    private final String word;

    Tone(String word) {
      this.word = word;
    }

    /**
     * Returns the word that goes with the colour.
     *
     * @return one word; empty for {@link #PLAIN}
     */
    public String word() {
      return word;
    }

    /**
     * Returns the style class.
     *
     * @return lower-case name
     */
    public String css() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * A number that matters.
   *
   * @param name what it is
   * @param value with its unit
   * @param remark limit or second unit
   * @param tone how it is to be taken
   */
  public record KeyFigure(String name, String value, String remark, Tone tone) {}

  /**
   * A sentence that has a judgement.
   *
   * @param text the sentence
   * @param tone how it is to be taken
   */
  public record Remark(String text, Tone tone) {}

  /**
   * A picture.
   *
   * @param svg the drawing, ready to stand in a page
   * @param caption one sentence that says what to see
   */
  public record Figure(String svg, String caption) {}

  /**
   * A part of the page.
   *
   * @param id anchor, lower-case letters and hyphens
   * @param title heading
   * @param blocks what stands under it
   */
  public record Section(String id, String title, List<Block> blocks) {

    /** Copies the list. */
    public Section {
      blocks = List.copyOf(blocks);
    }
  }

  /** One paragraph, table, list or picture. Exactly one of its parts is used. */
  public sealed interface Block {}

  /**
   * A paragraph.
   *
   * @param text the text
   */
  public record Paragraph(String text) implements Block {}

  /**
   * A list.
   *
   * @param items its points
   */
  public record Points(List<String> items) implements Block {

    /** Copies the list. */
    public Points {
      items = List.copyOf(items);
    }
  }

  /**
   * A list in an order.
   *
   * @param items what to do, first to last
   */
  public record Steps(List<String> items) implements Block {

    /** Copies the list. */
    public Steps {
      items = List.copyOf(items);
    }
  }

  /**
   * A picture in the text.
   *
   * @param figure the picture
   */
  public record Drawing(Figure figure) implements Block {}

  /**
   * A table.
   *
   * @param caption what it holds
   * @param heads column heads, with units
   * @param rows rows of cells
   */
  public record Table(String caption, List<String> heads, List<Row> rows) implements Block {

    /** Refuses rows of another length than the head. */
    public Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
      for (Row row : rows) {
        if (row.cells().size() != heads.size()) {
          throw new IllegalArgumentException(
              "table \""
                  + caption
                  + "\": a row of "
                  + row.cells().size()
                  + " cells under "
                  + heads.size()
                  + " heads");
        }
      }
    }
  }

  /**
   * A row of a table.
   *
   * @param cells texts; the first names the row
   * @param tone how the row is to be taken
   */
  public record Row(List<String> cells, Tone tone) {

    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }

    /**
     * Makes a plain row.
     *
     * @param cells texts; the first names the row
     * @return the row
     */
    public static Row of(String... cells) {
      return new Row(List.of(cells), Tone.PLAIN);
    }
  }
}
