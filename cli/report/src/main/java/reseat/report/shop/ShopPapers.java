package reseat.report.shop;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.ballmount.BondJoint;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.StudLoads;
import reseat.design.CouplingDesign;
import reseat.design.StudMount;
import reseat.design.Support;
import reseat.report.page.Page;
import reseat.report.page.PageWriter;
import reseat.report.page.Sheet;
import reseat.report.readings.AcceptanceTestPlan;
import reseat.study.ShopStudy;
import reseat.units.UnitCatalog;

/** All papers with which a coupling is made and set, as files by name. */
public final class ShopPapers {

  /** Begins what every paper says of a design that does not hold. */
  public static final String NOT_SO = "DO NOT MAKE IT SO";

  private final ShopStudy study;
  private final List<String> stamp;
  private final ShopUnits units;
  private final Map<String, byte[]> files = new LinkedHashMap<>();

  private ShopPapers(ShopStudy study, List<String> stamp, ShopUnits units) {
    this.study = study;
    this.stamp = stamp;
    this.units = units;
  }

  /**
   * Makes the papers.
   *
   * @param study everything they tell
   * @param stamp where they come from
   * @param units units of the shop
   * @param rises wanted rises of balls, m, by name of the support; may be empty
   * @return content by file name, in the order of the work
   */
  public static Map<String, byte[]> of(
      ShopStudy study, List<String> stamp, ShopUnits units, Map<String, Double> rises) {
    return new ShopPapers(study, stamp, units).all(rises);
  }

  private Map<String, byte[]> all(Map<String, Double> rises) {
    CouplingDesign design = study.design();
    files.putAll(ShopDrawings.of(design, stampOfDrawings(), units.inchFirst()));
    sheet("gauge.html", "Gauge sheet", GaugeSheet.of(study, units));
    Map<String, BondJoint> bonds = new LinkedHashMap<>();
    Map<String, StudLoads> loads = new LinkedHashMap<>();
    for (int b = 0; b < design.supports().size(); b++) {
      Support s = design.supports().get(b);
      BondJoint bond = s.mounting().stud().flatMap(StudMount::bond).orElse(null);
      if (bond != null) {
        bonds.put(s.name(), bond);
        loads.put(s.name(), StudLoads.of(study.check().standing(), study.check().cases(), b));
      }
    }
    sheet("bonding.html", "Bonding sheet", BondingSheet.of(bonds, loads, units));
    sheet("setting.html", "Setting sheet", SettingSheet.of(study, units, rises));
    sheet("clearances.html", "Clearance list", ClearanceSheet.of(study, units));
    sheet("acceptance.html", "Acceptance test", AcceptanceForm.of(study, units));
    if (!study.acceptance().isEmpty()) {
      files.put(
          "acceptance.csv",
          utf8(
              new AcceptanceTestPlan(
                      study.acceptance(),
                      units.inchFirst() ? UnitCatalog.UIN : UnitCatalog.UM,
                      List.of())
                  .csv()));
    }
    sheet("offsets.html", "Offset sheet for the holders", OffsetSheet.of(study, units));
    files.put("holder-readings.csv", utf8(OffsetSheet.csv(design, units)));
    sheet("upkeep.html", "Inspection and cleaning", UpkeepSheet.of(study, units));
    sheet("cautions.html", "Cautions", CautionSheet.of(study, units));
    return files;
  }

  /** Drawings and tables have no banner; their stamp says it. */
  private List<String> stampOfDrawings() {
    if (warning().isEmpty()) {
      return stamp;
    }
    List<String> lines = new ArrayList<>(stamp);
    lines.set(lines.size() - 1, stamp.get(stamp.size() - 1) + " " + NOT_SO + ": see the cautions.");
    return lines;
  }

  private void sheet(String file, String title, List<Page.Section> sections) {
    if (!sections.isEmpty()) {
      String subject = study.design().title();
      files.put(file, utf8(html(title, subject, warning(), sections, stamp)));
    }
  }

  /** One sheet as a page. */
  public static String html(
      String title,
      String subject,
      String warning,
      List<Page.Section> sections,
      List<String> stamp) {
    return PageWriter.html(
        new Sheet(title, subject, warning, sections, stamp, SheetType.of(sections)));
  }

  private String warning() {
    List<String> wrong = new ArrayList<>();
    for (Finding f : study.check().findings()) {
      if (f.judged() == Judged.FAILS && !wrong.contains(f.check().words())) {
        wrong.add(f.check().words());
      }
    }
    return wrong.isEmpty()
        ? ""
        : NOT_SO
            + ": the design does not hold ("
            + String.join(", ", wrong)
            + "). See the cautions and the clearance list.";
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
