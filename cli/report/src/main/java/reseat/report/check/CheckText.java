package reseat.report.check;

import reseat.report.form.FigureText;
import reseat.design.CheckKind;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.report.form.Paragraph;
import reseat.report.form.TextTable;
import reseat.study.CheckResult;
import reseat.study.SeatedCheck;
import reseat.study.UnconstrainedCheck;
import reseat.study.UnseatedCheck;

/**
 * A checked design on one screen: the verdict, the figures that matter, what is wrong and what to
 * change, then the tables.
 */
public final class CheckText {

  private CheckText() {}

  /**
   * Tells a result.
   *
   * @param result what came of checking a design
   * @return lines with their ends, at most {@value Paragraph#WIDTH} letters long
   */
  public static String of(CheckResult result) {
    StringBuilder out = new StringBuilder(6000);
    if (!result.design().title().isEmpty()) {
      out.append(Paragraph.of("", result.design().title()));
    }
    out.append(VerdictWords.line(result.findings())).append('\n');
    figures(result.findings(), out);
    out.append(FindingsText.paragraphs(result.findings(), FigureText.BOTH, true));
    result.accept(
        new CheckResult.Visitor<Void>() {
          @Override
          public Void unconstrained(UnconstrainedCheck unconstrained) {
            return null;
          }

          @Override
          public Void unseated(UnseatedCheck unseated) {
            CheckScreen.forces(unseated.standing(), out);
            return null;
          }

          @Override
          public Void seated(SeatedCheck seated) {
            CheckScreen.contacts(seated, out);
            CheckScreen.stiffness(seated, out);
            CheckScreen.cases(seated, out);
            CheckScreen.closing(seated, out);
            return null;
          }
        });
    return out.toString();
  }

  /** The three figures most asked for: lift-off, pressure, motion of the tool point. */
  private static void figures(List<Finding> findings, StringBuilder out) {
    TextTable table = new TextTable("llll", "", "", "", "");
    boolean any = false;
    any |= figure(table, "least lift-off factor", tightest(findings, CheckKind.LIFT_OFF, CheckKind.LIFT_OFF));
    any |=
        figure(
            table, "highest pressure", tightest(findings, CheckKind.CONTACT_PRESSURE, CheckKind.CONTACT_PRESSURE));
    any |= figure(table, "tool point moves", tightest(findings, CheckKind.ERROR_MOTION, CheckKind.PRELOAD_SCATTER));
    if (any) {
      out.append(table.text());
    }
  }

  private static Finding tightest(List<Finding> findings, CheckKind check, CheckKind orCheck) {
    Finding tightest = null;
    for (Finding f : findings) {
      boolean asked = f.check() == check || f.check() == orCheck;
      if (asked && f.judged() != Judged.ADVICE && f.limit() != 0) {
        tightest = tightest == null || f.margin() < tightest.margin() ? f : tightest;
      }
    }
    return tightest;
  }

  private static boolean figure(TextTable table, String name, Finding f) {
    if (f == null) {
      return false;
    }
    String limit = f.sense() == Finding.Sense.AT_LEAST ? "wanted at least " : "at most ";
    table.row(
        name,
        FigureText.BOTH.of(f.measure(), f.value(), true),
        limit + FigureText.BOTH.of(f.measure(), f.limit()),
        f.check() == CheckKind.PRELOAD_SCATTER
            ? f.check().words() + ", " + f.subject().name()
            : f.subject().name());
    return true;
  }
}
