package reseat.plots.dxf;

import java.text.Normalizer;

/**
 * Words as a plain text entity of release 12 carries them: printable ASCII, with {@code %%d},
 * {@code %%p} and {@code %%c} for degree, plus-minus and diameter.
 */
final class DxfText {

  private DxfText() {}

  /**
   * Encodes words.
   *
   * @param words any words
   * @return printable ASCII; letters with marks lose them, what has no likeness becomes {@code ?}
   */
  static String encoded(String words) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(words, Normalizer.Form.NFD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .forEach(c -> out.append(ascii(c)));
    return out.toString();
  }

  private static String ascii(int c) {
    return switch (c) {
      // two of them would begin a sign, and a caret begins a control character
      case '%' -> "%%%";
      case '^' -> "^ ";
      case '\u00b0' -> "%%d";
      case '\u00b1' -> "%%p";
      case '\u00d8', '\u00f8', '\u2300' -> "%%c";
      case '\u00b5', '\u03bc' -> "u";
      case '\u00b2' -> "2";
      case '\u00b3' -> "3";
      case '\u00b7' -> ".";
      case '\u00d7' -> "x";
      case '\u00df' -> "ss";
      case '\u2212', '\u2010', '\u2011', '\u2013', '\u2014' -> "-";
      case '\u2018', '\u2019', '\u2032' -> "'";
      case '\u201c', '\u201d', '\u2033' -> "\"";
      case '\u2026' -> "...";
      case '\u00a0', '\t', '\n', '\r' -> " ";
      default -> c >= 0x20 && c < 0x7F ? Character.toString(c) : "?";
    };
  }
}
