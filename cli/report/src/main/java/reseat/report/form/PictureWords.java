package reseat.report.form;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** What the columns of a file are called in the names of pictures, each otherwise. */
public final class PictureWords {

  private static final Pattern MARKS = Pattern.compile("\\p{Mn}+");
  private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
  private static final Pattern ENDS = Pattern.compile("^-|-$");
  private static final int LONGEST = 30;

  private final Map<String, String> words = new HashMap<>();

  /**
   * Finds a word for each name.
   *
   * @param names names of columns, in any writing
   */
  public PictureWords(List<String> names) {
    for (String name : names) {
      String plain = plain(name);
      String base = plain.isEmpty() ? "column" : plain;
      String word = base;
      for (int n = 2; words.containsValue(word); n++) {
        word = base + "-" + n;
      }
      words.put(name, word);
    }
  }

  /** Small letters without their accents, digits, and one hyphen for all between. */
  private static String plain(String name) {
    String bare = Normalizer.normalize(name, Normalizer.Form.NFKD);
    bare = MARKS.matcher(bare).replaceAll("").toLowerCase(Locale.ROOT);
    String word = OTHERS.matcher(bare).replaceAll("-");
    word = word.substring(0, Math.min(LONGEST, word.length()));
    return ENDS.matcher(word).replaceAll("");
  }

  /**
   * Returns the word for a name.
   *
   * @param name one of the names given
   * @return small letters, digits and hyphens, unlike the word for any other name
   */
  public String of(String name) {
    return words.get(name);
  }
}
