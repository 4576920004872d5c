package reseat.report.catalog;

import java.io.PrintWriter;
import java.util.List;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import reseat.verification.CheckValue;
import reseat.verification.Standing;
import reseat.verification.Topic;

/** The table of check values and what the program makes of them. */
public final class VerifyText {

  private VerifyText() {}

  /**
   * Prints the table: topic by topic, within it source by source, a line for each value.
   *
   * @param topics topics with their values
   * @param out where to
   */
  public static void print(List<Topic> topics, PrintWriter out) {
    Map<Standing, Integer> kinds = new EnumMap<>(Standing.class);
    int held = 0;
    int all = 0;
    for (Topic topic : topics) {
      out.println(topic.title());
      out.println(row("case", "printed", "computed", "differs", "quantity", ""));
      String source = "";
      for (CheckValue v : topic.values()) {
        String from = v.source() + " (" + v.standing().words() + ")";
        if (!from.equals(source)) {
          source = from;
          out.println("  " + source + ":");
        }
        boolean holds = v.holds();
        out.println(
            row(
                v.id(),
                printed(v.printed()),
                FilledText.of("%.9g", v.computed()),
                FilledText.of("%.1e", v.difference()),
                v.quantity() + (v.unit().isEmpty() ? "" : ", " + v.unit()),
                holds ? "" : "  <-- OUT OF TOLERANCE"));
        kinds.merge(v.standing(), 1, Integer::sum);
        all++;
        held += holds ? 1 : 0;
      }
      out.println();
    }
    out.println(
        held
            + " of "
            + all
            + " check values are reproduced to the accuracy of their source, computed now on this"
            + " machine: "
            + Arrays.stream(Standing.values())
                .map(s -> kinds.getOrDefault(s, 0) + " " + s.words())
                .collect(Collectors.joining("; "))
            + ".");
  }

  /** The digits that the source has: no zeros that it did not print, no more than ten. */
  private static String printed(double value) {
    String shortest = PrintedNumber.decimal(value).stripTrailingZeros().toPlainString();
    return shortest.length() <= 12 ? shortest : FilledText.of("%.9g", value);
  }

  private static String row(
      String id, String printed, String computed, String differs, String quantity, String remark) {
    return FilledText.of(
        "    %-9s %14s %14s %9s  %s%s", id, printed, computed, differs, quantity, remark);
  }
}
