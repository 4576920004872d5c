package reseat.report.page;

import java.util.List;
import java.util.Locale;

/**
 * A sheet for the shop floor, printed on one page.
 *
 * @param title what kind of sheet
 * @param subject what is made
 * @param warning why the coupling should not be made so; empty if nothing fails
 * @param sections what stands on it, in order; a section without title has no heading
 * @param stamp where it comes from: file, digest, date, version
 * @param type size of type at which it stays on one page
 */
public record Sheet(
    String title,
    String subject,
    String warning,
    List<Page.Section> sections,
    List<String> stamp,
    Type type) {

  /** Sizes of type. */
  public enum Type {
    /** To be read at arm's length. */
    LARGE,
    /** As in a letter. */
    MEDIUM,
    /** As in a table. */
    SMALL,
    /** As in a footnote. */
    TINY;

    /**
     * Returns the style class.
     *
     * @return lower-case name
     */
    public String css() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Copies the lists. */
  public Sheet {
    sections = List.copyOf(sections);
    stamp = List.copyOf(stamp);
  }
}
