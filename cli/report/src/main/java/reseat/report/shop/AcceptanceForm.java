package reseat.report.shop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import reseat.design.Coverage;
import reseat.readings.AcceptancePlan;
import reseat.report.page.Page;
import reseat.report.readings.ReadingsRemarks;
import reseat.study.AcceptanceStudy;
import reseat.study.ShopStudy;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The acceptance test as a form to print and fill in. */
public final class AcceptanceForm {

  /** Mounts that two columns of the page hold. */
  private static final int MANY = 44;

  /** Rows of readings side by side on one page; the file beside it has every mount. */
  private static final int MOST = 60;

  private AcceptanceForm() {}

  public static List<Page.Section> of(ShopStudy study, ShopUnits units) {
    List<AcceptancePlan> plans = study.acceptance();
    List<Page.Section> sections = new ArrayList<>();
    if (!study.hopeless().isEmpty()) {
      List<Page.Block> why = new ArrayList<>();
      study.hopeless().forEach(w -> why.add(new Page.Paragraph(w + ".")));
      sections.add(new Page.Section("hopeless", "Not to be proven", why));
    }
    if (plans.isEmpty()) {
      return sections;
    }
    Coverage coverage = study.check().design().targets().coverage();
    double within = AcceptanceStudy.within(coverage);
    int mounts = plans.stream().mapToInt(AcceptancePlan::mounts).max().orElseThrow();
    int wearIn = plans.stream().mapToInt(AcceptancePlan::wearIn).max().orElseThrow();
    List<Page.Row> limits = new ArrayList<>();
    for (int k = 0; k < plans.size(); k++) {
      AcceptancePlan p = plans.get(k).withMounts(mounts);
      limits.add(
          Page.Row.of(
              p.axis(),
              units.small(p.target()),
              units.small(p.passLimit()),
              ReadingsRemarks.percent(Math.floor(100 * p.chanceOfPass()) / 100),
              units.small(p.expected()),
              units.small(p.gaugeLimit()),
              ""));
    }
    sections.add(
        new Page.Section(
            "how",
            "",
            List.of(
                new Page.Steps(
                    List.of(
                        "Wear in with " + wearIn + " seatings without reading. (Common practice.)",
                        "Mount "
                            + mounts
                            + " times, always in the same way, and read every gauge after each. Write"
                            + " down every mount, also a bad one, with a note.",
                        "Type the readings into acceptance.csv, then: "
                            + command(plans, within)
                            + ". By hand: s of the readings, axis by axis, at most the pass limit.")),
                new Page.Table(
                    "The wanted repeatability of the design file is taken as the width to either side"
                        + " that the mounts keep ("
                        + coverage.written()
                        + ": "
                        + coverage.words()
                        + "), so s at most 1/"
                        + PrintedNumber.shortest(within)
                        + " of it; a pass shows that with "
                        + ReadingsRemarks.percent(plans.get(0).confidence())
                        + " confidence.",
                    List.of(
                        "axis",
                        "true s at most",
                        "pass: s read at most",
                        "chance of a pass",
                        "if the true s is",
                        "gauge noise at most",
                        "s read"),
                    limits))));
    sections.add(
        new Page.Section(
            "readings",
            "Readings, unit: ________  gauge, its step and noise: ________________",
            List.of(readings(plans, Math.min(mounts, MOST)))));
    return sections;
  }

  /** What proves the targets from the readings; a target is told as the width at its coverage. */
  private static String command(List<AcceptancePlan> plans, double within) {
    StringBuilder s = new StringBuilder("reseat readings acceptance.csv --multiplier ");
    s.append(PrintedNumber.shortest(within));
    for (AcceptancePlan p : plans) {
      s.append(" --target \"").append(p.axis()).append('=');
      double width = within * p.target();
      s.append(QuantityFormat.significantNumber(width, UnitCatalog.UM, 3)).append(" um\"");
    }
    return s.toString();
  }

  /** Two mounts beside each other in a row, three where there are many, to fit on the page. */
  private static Page.Table readings(List<AcceptancePlan> plans, int mounts) {
    List<String> block = new ArrayList<>(List.of("no."));
    for (AcceptancePlan p : plans) {
      block.add(p.axis());
    }
    block.add("°C");
    int beside = mounts > MANY ? 3 : 2;
    List<String> heads = new ArrayList<>();
    for (int b = 0; b < beside; b++) {
      heads.addAll(block);
    }
    int lines = (mounts + beside - 1) / beside;
    List<Page.Row> rows = new ArrayList<>();
    for (int i = 1; i <= lines; i++) {
      List<String> cells = new ArrayList<>(Collections.nCopies(heads.size(), ""));
      for (int b = 0; b < beside; b++) {
        int mount = i + b * lines;
        cells.set(b * block.size(), mount > mounts ? "" : String.valueOf(mount));
      }
      rows.add(Page.Row.of(cells.toArray(new String[0])));
    }
    return new Page.Table(FilledText.of("%d mounts; notes on the back.", mounts), heads, rows);
  }
}
