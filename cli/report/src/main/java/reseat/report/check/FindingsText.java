package reseat.report.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Said;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;

/** Findings for the screen: what fails in full, two decisions in full, the rest counted. */
public final class FindingsText {

  private static final String INDENT = "    ";

  /** Most failures told in full on a short screen. */
  private static final int FAILURES = 4;

  /** Most decisions told in full on a short screen. */
  private static final int DECISIONS = 2;

  private FindingsText() {}

  /**
   * What does not simply hold, a paragraph each.
   *
   * @param findings worst first
   * @param figures how numbers are written
   * @param all whether everything is told: advice, and the names of the checks that hold
   * @return lines with their ends; empty if there is nothing to tell
   */
  public static String paragraphs(List<Finding> findings, FigureText figures, boolean all) {
    StringBuilder out = new StringBuilder(2000);
    tell(findings, Judged.FAILS, all ? Integer.MAX_VALUE : FAILURES, figures, out);
    tell(findings, Judged.DECIDE, all ? Integer.MAX_VALUE : DECISIONS, figures, out);
    tell(findings, Judged.ACCEPTED, all ? Integer.MAX_VALUE : DECISIONS, figures, out);
    if (all) {
      tell(findings, Judged.ADVICE, Integer.MAX_VALUE, figures, out);
      String kept = kept(findings);
      if (!kept.isEmpty()) {
        out.append(Paragraph.of("", "OK: " + kept + "."));
      }
    } else {
      tell(unused(findings), Judged.ADVICE, DECISIONS, figures, out);
    }
    return out.toString();
  }

  /** A decision that changes nothing misleads whoever reads the file. */
  private static List<Finding> unused(List<Finding> findings) {
    return findings.stream().filter(f -> f.said().key() == Said.ACCEPTANCE_UNUSED).toList();
  }

  private static void tell(
      List<Finding> findings, Judged judged, int most, FigureText figures, StringBuilder out) {
    int told = 0;
    List<String> left = new ArrayList<>();
    for (Finding f : findings) {
      if (f.judged() == judged) {
        if (told < most) {
          told++;
          out.append("  ").append(Paragraph.of(INDENT, words(f, figures)).stripLeading());
        } else if (!left.contains(f.check().words())) {
          left.add(f.check().words());
        }
      }
    }
    if (!left.isEmpty()) {
      out.append(
          Paragraph.of(INDENT, "More: " + String.join(", ", left) + " (told with --all).")
              .replaceFirst("^ {4}", "  "));
    }
  }

  /**
   * One finding in words.
   *
   * @param f the finding
   * @param figures how numbers are written
   * @return its judgement, its check, what was found and what to do
   */
  public static String words(Finding f, FigureText figures) {
    String said = FindingWords.of(f.said(), figures);
    String advice = f.judged() == Judged.ACCEPTED ? "" : FindingWords.of(f.advice(), figures);
    return VerdictWords.word(f.judged())
        + " "
        + f.check().words()
        + ": "
        + said
        + (f.judged() == Judged.DECIDE ? " Soft limit: " + LimitWords.source(f.basis()) + "." : "")
        + f.reason().map(r -> " Accepted: " + r + (r.endsWith(".") ? "" : ".")).orElse("")
        + (advice.isEmpty() ? "" : " " + advice);
  }

  private static String kept(List<Finding> findings) {
    List<String> broken = new ArrayList<>();
    List<String> kept = new ArrayList<>();
    for (Finding f : findings) {
      String name = f.check().words();
      if (f.judged() == Judged.HOLDS) {
        if (!kept.contains(name) && !broken.contains(name)) {
          kept.add(name);
        }
      } else if (f.judged() != Judged.ADVICE) {
        broken.add(name);
      }
    }
    return String.join(", ", kept);
  }
}
