package reseat.cli.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import reseat.verification.PublishedValue;
import reseat.verification.Topic;

/** The table of published values and what the program makes of them. */
public final class VerifyText {

  private VerifyText() {}

  /**
   * Prints the table.
   *
   * @param topics topics with their values
   * @param out where to
   */
  public static void print(List<Topic> topics, PrintWriter out) {
    int held = 0;
    int all = 0;
    for (Topic topic : topics) {
      out.println(topic.title());
      out.println(
          String.format(
              Locale.ROOT,
              "  %-7s %15s %15s %10s  %s",
              "case",
              "printed",
              "computed",
              "differs",
              "quantity; source"));
      for (PublishedValue v : topic.values()) {
        double computed = v.computed();
        boolean holds = v.holds();
        out.println(
            String.format(
                Locale.ROOT,
                "  %-7s %15.9g %15.9g %10s  %s%s; %s (%s)%s",
                v.id(),
                v.printed(),
                computed,
                String.format(Locale.ROOT, "%.1e", v.difference()),
                v.quantity(),
                v.unit().isEmpty() ? "" : ", " + v.unit(),
                v.source(),
                v.standing().words(),
                holds ? "" : "  <-- OUT OF TOLERANCE"));
        all++;
        held += holds ? 1 : 0;
      }
      out.println();
    }
    out.println(
        held
            + " of "
            + all
            + " values are reproduced to the accuracy of their source, computed now on this"
            + " machine.");
  }
}
