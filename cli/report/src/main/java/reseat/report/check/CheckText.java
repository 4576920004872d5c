package reseat.report.check;

import java.util.List;
import reseat.check.Finding;
import reseat.check.Measure;
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

  /** Most findings told in full; the rest is counted. */
  private static final int FINDINGS_IN_FULL = 8;

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
    out.append(FindingsText.verdict(result.findings())).append('\n');
    figures(result.findings(), out);
    out.append(FindingsText.paragraphs(result.findings(), FINDINGS_IN_FULL));
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
    any |= figure(table, "least lift-off factor", tightest(findings, "lift-off", "lift-off"));
    any |=
        figure(
            table, "highest pressure", tightest(findings, "contact pressure", "contact pressure"));
    any |= figure(table, "tool point moves", tightest(findings, "error motion", "preload scatter"));
    if (any) {
      out.append(table.text());
    }
  }

  private static Finding tightest(List<Finding> findings, String check, String orCheck) {
    Finding tightest = null;
    for (Finding f : findings) {
      boolean asked = f.check().equals(check) || f.check().equals(orCheck);
      if (asked && f.measure() != Measure.COUNT && f.limit() != 0) {
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
        f.measure().showComputed(f.value()),
        limit + f.measure().show(f.limit()),
        f.check().equals("preload scatter") ? f.check() + ", " + f.where() : f.where());
    return true;
  }
}
