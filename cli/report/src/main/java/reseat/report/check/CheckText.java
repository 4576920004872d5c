package reseat.report.check;

import java.util.List;
import java.util.Optional;
import reseat.check.AllowedPreload;
import reseat.check.Measure;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.remedy.Counsel;
import reseat.remedy.Remedies;
import reseat.repeatability.ToolChangeOutlook;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.study.CheckResult;
import reseat.study.SeatedCheck;
import reseat.study.UnconstrainedCheck;
import reseat.study.UnseatedCheck;

/**
 * A checked design on one screen: the verdict, the figures that decide beside their limits, what to
 * do, what is assumed, the next step; on request everything.
 */
public final class CheckText {

  /** Assumed values told on a short screen; the rest is counted. */
  private static final int ASSUMED = 4;

  private CheckText() {}

  /**
   * Tells a result.
   *
   * @param result what came of checking a design
   * @param counsel what can be done about it
   * @param file the design file as it was named, for the next step
   * @param screen how it is asked for
   * @return lines with their ends, at most {@value Paragraph#WIDTH} letters long
   */
  public static String of(CheckResult result, Counsel counsel, String file, Screen screen) {
    Remedies remedies = counsel.remedies();
    StringBuilder out = new StringBuilder(6000);
    if (!result.design().title().isEmpty()) {
      out.append(Paragraph.of("", result.design().title()));
    }
    out.append(Paragraph.of("", VerdictWords.line(result.findings()) + statics(result)));
    result.accept(
        new CheckResult.Visitor<Void>() {
          @Override
          public Void unconstrained(UnconstrainedCheck unconstrained) {
            findings(result, remedies, screen, out);
            return null;
          }

          @Override
          public Void unseated(UnseatedCheck unseated) {
            findings(result, remedies, screen, out);
            CheckScreen.forces(unseated.standing(), screen, out);
            return null;
          }

          @Override
          public Void seated(SeatedCheck seated) {
            figures(seated, screen, out);
            findings(result, remedies, screen, out);
            preload(seated, screen, out);
            CheckScreen.body(seated, screen, out);
            out.append(HalvingText.of(counsel.halving(), screen.figures()));
            return null;
          }
        });
    assumed(result, screen, out);
    out.append(next(result, remedies, file, screen));
    return out.toString();
  }

  private static String statics(CheckResult result) {
    return result instanceof SeatedCheck s
            && s.toolChanges().road() == ToolChangeOutlook.Road.NOT_ASKED
        ? " Tool changes are not counted (--statics)."
        : "";
  }

  private static void figures(SeatedCheck check, Screen screen, StringBuilder out) {
    TextTable table = new TextTable("llll", "", "", "", "");
    List<DecidingFigures.Figure> figures = DecidingFigures.of(check, screen.figures());
    for (DecidingFigures.Figure f : figures) {
      table.row(f.name(), f.value(), f.limit(), f.where());
    }
    out.append(table.text());
  }

  private static void findings(
      CheckResult result, Remedies remedies, Screen screen, StringBuilder out) {
    out.append(FindingsText.paragraphs(result.findings(), screen.figures(), screen.all()));
    out.append(RemedyWords.paragraphs(remedies, screen.figures()));
  }

  private static void preload(SeatedCheck check, Screen screen, StringBuilder out) {
    Optional<AllowedPreload> band = check.preload().get();
    if (band.isPresent()) {
      out.append(Paragraph.of("", PreloadBandText.of(band.get(), screen.figures())));
    } else if (!check.design().preloads().isEmpty()) {
      double sum = 0;
      for (Preload p : check.design().preloads()) {
        sum += p.force();
      }
      out.append(
          Paragraph.of(
              "",
              "Preload "
                  + screen.figures().of(Measure.FORCE, sum, true)
                  + ": no size of it alone makes every check hold."));
    }
  }

  private static void assumed(CheckResult result, Screen screen, StringBuilder out) {
    int count = result.stated().assumed().size();
    if (count == 0) {
      return;
    }
    if (screen.all()) {
      out.append("Assumed, not stated:\n");
      for (String one : AssumedWords.all(result, screen.figures())) {
        out.append("  ").append(Paragraph.of("    ", one).stripLeading());
      }
      return;
    }
    List<String> told = AssumedWords.most(result, screen.figures(), ASSUMED);
    out.append(
        Paragraph.of(
            "",
            "Assumed, not stated: "
                + String.join("; ", told)
                + (count > told.size() ? "; and more (--all)." : ".")));
  }

  private static String next(CheckResult result, Remedies remedies, String file, Screen screen) {
    CouplingDesign design = result.design();
    String typed = Screen.word(file);
    if (!remedies.remedies().isEmpty()) {
      return screen.next("check", typed, " --remedy 1 -o changed.toml");
    }
    return result.verdict() == Verdict.HOLDS && !design.preloads().isEmpty()
        ? screen.next("report", typed, " -o report")
        : screen.next("check", typed, " --all");
  }
}
