package reseat.design;
import reseat.units.PrintedNumber;
import reseat.units.FilledText;
import reseat.elementary.Elementary;

import java.util.Locale;

/**
 * How many of all tool changes a target is for: a share of them, or the largest of some number.
 *
 * @param share share of the changes that are to stay inside, above 0 and below 1; of the largest of
 *     n changes the share that as many independent changes leave inside, n/(n+1)
 * @param largestOf number n of changes of which the largest is meant; 0 where a share is stated
 */
public record Coverage(double share, int largestOf) {

  /** What is meant where nothing is said: one change in twenty may be outside. */
  public static final Coverage USUAL = new Coverage(0.95, 0);

  /** Greatest number of changes. */
  public static final int MOST = 1_000_000;

  private static final String[] NUMBERS = {
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty"
  };

  /** Refuses shares of nothing and of everything. */
  public Coverage {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          "a coverage must lie above 0 % and below 100 %, found " + PrintedNumber.shortest(100 * share) + " %");
    }
    if (largestOf < 0 || largestOf > MOST) {
      throw new IllegalArgumentException(
          "the largest of 1 to " + MOST + " changes can be meant, found " + largestOf);
    }
  }

  /**
   * A share of the changes.
   *
   * @param share above 0 and below 1
   * @return the coverage
   */
  public static Coverage of(double share) {
    return new Coverage(share, 0);
  }

  /**
   * The largest of some changes.
   *
   * @param changes how many, from 1 to {@link #MOST}
   * @return the coverage
   */
  public static Coverage ofLargest(int changes) {
    if (changes < 1) {
      throw new IllegalArgumentException(
          "the largest of 1 to " + MOST + " changes can be meant, found " + changes);
    }
    return new Coverage(changes / (changes + 1.0), changes);
  }

  /**
   * Says whether the largest of some number of changes is meant.
   *
   * @return false for a share
   */
  public boolean isLargest() {
    return largestOf > 0;
  }

  /**
   * Returns it as a design file has it.
   *
   * @return for instance {@code 95 %} or {@code largest of 50}
   */
  public String written() {
    return isLargest() ? "largest of " + largestOf : percent() + " %";
  }

  private String percent() {
    String text = FilledText.of("%.6f", 100 * share);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /**
   * Says what it means for whoever changes tools.
   *
   * @return for instance {@code one change in twenty may be outside}
   */
  public String words() {
    if (isLargest()) {
      return "the largest of " + largestOf + (largestOf == 1 ? " change" : " changes") + " counts";
    }
    double outside = 1 - share;
    double every = 1 / outside;
    long whole = Elementary.round(every);
    if (Math.abs(every - whole) < 1e-6 * every) {
      return "one change in " + number(whole) + " may be outside";
    }
    for (long of = 10; of <= MOST; of *= 10) {
      double part = outside * of;
      long count = Elementary.round(part);
      if (count > 0 && Math.abs(part - count) < 1e-6 * part) {
        return number(count) + " changes in " + number(of) + " may be outside";
      }
    }
    return "one change in about " + number(whole) + " may be outside";
  }

  private static String number(long n) {
    return n >= 1 && n <= NUMBERS.length ? NUMBERS[(int) n - 1] : Long.toString(n);
  }
}
