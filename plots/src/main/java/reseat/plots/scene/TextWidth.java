package reseat.plots.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How wide words are, from a table.
 *
 * <p>Advance widths of DejaVu Sans 2.37, read with the Java class library, in thousandths of the
 * font size. The face is wide, so words in most other sans-serif faces take no more room. Bold is
 * taken {@value #BOLD} times as wide.
 */
public final class TextWidth {

  private static final double BOLD = 1.13;

  /** Height of a capital over the font size. */
  public static final double CAPITAL = 0.73;

  /** Depth of descenders over the font size. */
  public static final double DESCENT = 0.22;

  private static final int[] ASCII =
      numbers(
          "318 401 460 838 636 950 780 275 390 390 500 838 318 361 318 337 636 636 636 636 636 636"
              + " 636 636 636 636 337 337 838 838 838 531 1000 684 686 698 770 632 575 775 752 295"
              + " 295 656 557 863 748 787 603 787 695 635 611 732 684 989 685 611 685 390 337 390"
              + " 838 500 500 613 635 550 635 615 352 635 634 278 278 579 278 974 634 612 635 635"
              + " 411 521 392 634 592 818 592 592 525 636 337 636 838");

  private static final int[] LATIN =
      numbers(
          "318 401 636 636 636 636 337 500 500 1000 471 612 838 361 1000 500 500 838 401 401 500"
              + " 636 636 318 500 401 471 612 969 969 969 531 684 684 684 684 684 684 974 698 632"
              + " 632 632 632 295 295 295 295 775 748 787 787 787 787 787 838 787 732 732 732 732"
              + " 611 605 630 613 613 613 613 613 613 982 550 615 615 615 615 278 278 278 278 612"
              + " 634 612 612 612 612 612 838 612 634 634 634 634 592 635 592");

  private static final int[] GREEK =
      numbers(
          "684 686 557 684 632 685 752 787 295 656 684 863 748 632 787 752 603 600 632 611 611 787"
              + " 685 787 764 295 611 659 541 634 338 579 659 638 592 612 541 544 634 612 338 589"
              + " 592 636 559 558 612 602 635 587 634 602 579 660 578 660 837");

  private TextWidth() {}

  private static int[] numbers(String words) {
    return Arrays.stream(words.split(" ", -1)).mapToInt(Integer::parseInt).toArray();
  }

  /**
   * Returns the width of a line of words.
   *
   * @param words the words
   * @param style how they are set
   * @return sheet units
   */
  public static double of(String words, TextStyle style) {
    double sum = words.codePoints().mapToDouble(TextWidth::ofCharacter).sum();
    return sum / 1000 * style.size() * (style.bold() ? BOLD : 1);
  }

  private static int ofCharacter(int c) {
    if (c >= 32 && c < 127) {
      return ASCII[c - 32];
    }
    if (c >= 160 && c < 256) {
      return LATIN[c - 160];
    }
    if (c >= 0x391 && c < 0x391 + GREEK.length) {
      return GREEK[c - 0x391];
    }
    return c == 0x2013 ? 500 : c < 0x2E80 ? 840 : 1000;
  }

  /**
   * Breaks words into lines.
   *
   * @param words the words
   * @param style how they are set
   * @param width greatest width of a line, sheet units
   * @return the lines; a single word that is too long is broken where it must be
   */
  public static List<String> wrapped(String words, TextStyle style, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.strip().split("\\s+", -1)) {
      String rest = word;
      if (line.length() > 0 && of(line + " " + rest, style) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (of(rest, style) > width && rest.length() > 1) {
        int n = rest.length() - 1;
        while (n > 1 && of(rest.substring(0, n), style) > width) {
          n--;
        }
        lines.add(rest.substring(0, n));
        rest = rest.substring(n);
      }
      line.append(line.length() == 0 ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return List.copyOf(lines);
  }

  /**
   * Shortens words to a width.
   *
   * @param words the words
   * @param style how they are set
   * @param width greatest width, sheet units
   * @return the words, or their beginning and three dots
   */
  public static String shortened(String words, TextStyle style, double width) {
    if (of(words, style) <= width) {
      return words;
    }
    int n = words.length();
    while (n > 1 && of(words.substring(0, n).stripTrailing() + "...", style) > width) {
      n--;
    }
    return words.substring(0, n).stripTrailing() + "...";
  }
}
