package reseat.report.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Severity;
import reseat.report.form.Paragraph;

/** Findings for the screen: the verdict in a line, what is wrong in full, what is kept by name. */
public final class FindingsText {

  private static final String INDENT = "    ";

  private FindingsText() {}

  /** One line that says whether all holds. */
  public static String verdict(List<Finding> findings) {
    int failures = count(findings, Severity.FAIL);
    int warnings = count(findings, Severity.WARNING);
    int judged = failures + warnings + count(findings, Severity.OK);
    String warned =
        warnings == 0 ? "" : warnings == 1 ? ", 1 warning" : ", " + warnings + " warnings";
    return failures == 0
        ? "HOLDS: all " + judged + " checks" + warned + "."
        : "FAILS: " + failures + " of " + judged + " checks" + warned + ".";
  }

  private static int count(List<Finding> findings, Severity severity) {
    int n = 0;
    for (Finding f : findings) {
      n += f.severity() == severity ? 1 : 0;
    }
    return n;
  }

  /**
   * What does not simply hold, a paragraph each; then the names of the checks that hold.
   *
   * @param findings worst first
   * @param most how many are told in full; the rest is counted
   * @return lines with their ends, an empty line before each part
   */
  public static String paragraphs(List<Finding> findings, int most) {
    StringBuilder out = new StringBuilder(2000);
    int told = 0;
    int left = 0;
    List<String> broken = new ArrayList<>();
    List<String> kept = new ArrayList<>();
    for (Finding f : findings) {
      if (f.severity() == Severity.FAIL || f.severity() == Severity.WARNING) {
        broken.add(f.check());
      }
      if (f.severity() == Severity.OK) {
        if (!kept.contains(f.check()) && !broken.contains(f.check())) {
          kept.add(f.check());
        }
      } else if (told < most) {
        told++;
        out.append(told == 1 ? "\n" : "");
        out.append("  ").append(Paragraph.of(INDENT, words(f)).stripLeading());
      } else {
        left++;
      }
    }
    if (left > 0) {
      out.append("  and ").append(left).append(" more; --json tells all of them.\n");
    }
    if (!kept.isEmpty()) {
      out.append('\n')
          .append(Paragraph.of("", "Checked and kept: " + String.join(", ", kept) + "."));
    }
    return out.toString();
  }

  private static String words(Finding f) {
    return f.severity().words()
        + " "
        + f.check()
        + ": "
        + f.message()
        + (f.advice().isEmpty() ? "" : " " + f.advice());
  }
}
