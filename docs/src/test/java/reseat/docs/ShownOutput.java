package reseat.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Compares what a page shows with what a command prints.
 *
 * <p>Text must be the same. A number may differ by one in its last digit, since the functions of
 * two machines may round differently; the spaces of a line in which one does are not compared.
 */
final class ShownOutput {

  /** Stands for lines that are not shown. */
  static final String LEFT_OUT = "...";

  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.])[-+]?\\d+(\\.\\d+)?([eE][-+]?\\d+)?");

  private ShownOutput() {}

  /**
   * Finds the first line that differs.
   *
   * @param shown lines of the page
   * @param printed lines that were printed
   * @return what differs; empty if nothing does
   */
  static Optional<String> difference(List<String> shown, List<String> printed) {
    int at = 0;
    for (int i = 0; i < shown.size(); i++) {
      if (shown.get(i).strip().equals(LEFT_OUT)) {
        if (i + 1 == shown.size()) {
          return Optional.empty();
        }
        while (at < printed.size() && !same(shown.get(i + 1), printed.get(at))) {
          at++;
        }
      } else if (at >= printed.size()) {
        return Optional.of("not printed: " + shown.get(i));
      } else if (!same(shown.get(i), printed.get(at))) {
        return Optional.of("shown:   " + shown.get(i) + "\nprinted: " + printed.get(at));
      } else {
        at++;
      }
    }
    return at == printed.size()
        ? Optional.empty()
        : Optional.of("printed, not shown: " + printed.get(at));
  }

  private static boolean same(String shown, String printed) {
    String a = shown.stripTrailing();
    String b = printed.stripTrailing();
    return a.equals(b) || (words(a).equals(words(b)) && sameNumbers(numbers(a), numbers(b)));
  }

  private static String words(String line) {
    return NUMBER.matcher(line).replaceAll("#").replaceAll("\\s+", " ");
  }

  private static List<String> numbers(String line) {
    List<String> numbers = new ArrayList<>();
    Matcher m = NUMBER.matcher(line);
    while (m.find()) {
      numbers.add(m.group());
    }
    return numbers;
  }

  private static boolean sameNumbers(List<String> shown, List<String> printed) {
    for (int i = 0; i < shown.size(); i++) {
      String text = shown.get(i);
      double difference = Double.parseDouble(text) - Double.parseDouble(printed.get(i));
      if (text.matches("[-+]?\\d+") ? difference != 0 : Math.abs(difference) > 1.001 * step(text)) {
        return false;
      }
    }
    return true;
  }

  /** What one in the last digit of a decimal number is worth. */
  private static double step(String number) {
    int e = number.replace('E', 'e').indexOf('e');
    String digits = e < 0 ? number : number.substring(0, e);
    int point = digits.indexOf('.');
    int decimals = point < 0 ? 0 : digits.length() - point - 1;
    int exponent = e < 0 ? 0 : Integer.parseInt(number.substring(e + 1).replace("+", ""));
    return Math.pow(10, exponent - decimals);
  }

  /**
   * Renews what a page shows: whole if nothing is left out, else as many lines before and after.
   *
   * @param shown lines of the page
   * @param printed lines that were printed
   * @return lines for the page
   */
  static List<String> renewed(List<String> shown, List<String> printed) {
    int first = shown.indexOf(LEFT_OUT);
    if (first < 0) {
      return printed;
    }
    if (first != shown.lastIndexOf(LEFT_OUT)) {
      throw new IllegalArgumentException("renew a block with two places left out by hand");
    }
    int after = shown.size() - first - 1;
    if (first + after >= printed.size()) {
      return printed;
    }
    List<String> renewed = new ArrayList<>(printed.subList(0, first));
    renewed.add(LEFT_OUT);
    renewed.addAll(printed.subList(printed.size() - after, printed.size()));
    return renewed;
  }
}
