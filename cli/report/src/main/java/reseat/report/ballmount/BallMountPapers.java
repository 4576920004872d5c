package reseat.report.ballmount;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.ballmount.AdjustingScrews;
import reseat.ballmount.LockNut;
import reseat.ballmount.ThreadDuty;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.design.AdjustmentTask;
import reseat.elementary.Elementary;
import reseat.report.form.LockNutWords;
import reseat.report.form.PageNumbers;
import reseat.report.page.Page;
import reseat.report.shop.BondingSheet;
import reseat.report.shop.CautionSheet;
import reseat.report.shop.ShopPapers;
import reseat.report.shop.ShopUnits;
import reseat.study.BallMountResult;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/** The papers with which one ball mount is made and set, as files by name. */
public final class BallMountPapers {

  private static final String BALL = "this ball";

  private final BallMountResult result;
  private final ShopUnits units;

  private BallMountPapers(BallMountResult result, ShopUnits units) {
    this.result = result;
    this.units = units;
  }

  /**
   * Makes the papers.
   *
   * @param result everything about the mount
   * @param stamp where they come from
   * @param units units of the shop
   * @return content by file name, in the order of the work
   */
  public static Map<String, byte[]> of(
      BallMountResult result, List<String> stamp, ShopUnits units) {
    BallMountPapers papers = new BallMountPapers(result, units);
    Map<String, List<Page.Section>> sheets = new LinkedHashMap<>();
    result
        .design()
        .mount()
        .bond()
        .ifPresent(
            b ->
                sheets.put(
                    "Bonding sheet",
                    BondingSheet.of(Map.of(BALL, b), Map.of(BALL, result.loads()), units)));
    sheets.put("Setting sheet", papers.setting());
    sheets.put("Cautions", papers.cautions());
    Map<String, byte[]> files = new LinkedHashMap<>();
    sheets.forEach(
        (title, sections) -> {
          String name = title.toLowerCase(Locale.ROOT).replace(" sheet", "") + ".html";
          String html =
              ShopPapers.html(title, result.design().title(), papers.warning(), sections, stamp);
          files.put(name, html.getBytes(StandardCharsets.UTF_8));
        });
    return files;
  }

  private String warning() {
    return result.holds() ? "" : ShopPapers.NOT_SO + ": a check fails; the cautions say which.";
  }

  private List<Page.Section> setting() {
    List<Page.Section> sections = new ArrayList<>();
    List<String> order = new ArrayList<>();
    if (result.design().mount().bond().isPresent()) {
      order.add("Ball bonded, cured and proven: bonding sheet.");
    }
    order.add("Clean thread, ball and seat; a trace of oil on the thread.");
    if (!result.steps().isEmpty()) {
      order.add("Turn the screws in the order below, one after the other.");
    }
    if (result.lockNut().isPresent()) {
      order.add("Lock, read again, correct by the error read, lock again.");
    }
    sections.add(new Page.Section("order", "Order of work", List.of(new Page.Steps(order))));
    if (!result.steps().isEmpty()) {
      sections.add(turns(result.design().adjustment().orElseThrow()));
    }
    result.lockNut().ifPresent(n -> sections.add(lockNut(n)));
    return sections;
  }

  private Page.Section turns(AdjustmentTask task) {
    List<Page.Row> rows = new ArrayList<>();
    for (AdjustingScrews.Step s : result.steps()) {
      rows.add(
          Page.Row.of(
              task.screwNames().get(s.screw() - 1),
              switch (s.turn()) {
                case CLOCKWISE -> "clockwise";
                case COUNTERCLOCKWISE -> "counterclockwise";
                case NONE -> "leave";
              },
              FilledText.of("%.1f", s.degrees())
                  + (s.withinHandResolution() ? " (finer than a hand sets)" : ""),
              PageNumbers.figures(s.clockMinutes(), 2),
              units.small(s.readingsAfter().get(0)),
              units.small(s.readingsAfter().get(1)),
              units.small(s.readingsAfter().get(2))));
    }
    AdjustingScrews screws = task.screws();
    return new Page.Section(
        "turns",
        "How far to turn",
        List.of(
            new Page.Table(
                "Thread "
                    + screws.thread()
                    + ", seen from the heads of the screws; 60 minutes of a clock face are a turn.",
                List.of(
                    "screw",
                    "turn",
                    "degrees",
                    "clock minutes",
                    "then " + task.stationNames().get(0) + " reads",
                    task.stationNames().get(1),
                    task.stationNames().get(2)),
                rows),
            new Page.Paragraph(
                FilledText.of(
                    "%.0f degrees too much or too little at every screw leave up to ± %s at an"
                        + " indicator.",
                    Elementary.toDegrees(ThreadDuty.HAND_RESOLUTION),
                    units.small(screws.readingUncertainty(ThreadDuty.HAND_RESOLUTION))))));
  }

  private Page.Section lockNut(LockNut nut) {
    List<String> steps = new ArrayList<>();
    for (LockNut.Step s : LockNut.procedure()) {
      steps.add(LockNutWords.of(s));
    }
    return new Page.Section(
        "lock",
        "Lock nut",
        List.of(
            new Page.Table(
                "What locking does.",
                List.of("torque", "pulls with", "lifts the ball by", "allow for"),
                List.of(
                    Page.Row.of(
                        units.either(nut.tighteningTorque(), QuantityKind.TORQUE),
                        units.force(nut.clampForce()),
                        units.small(nut.shiftMin()) + " to " + units.small(nut.shiftMax()),
                        units.small(nut.shiftExpected())))),
            new Page.Steps(steps)));
  }

  private List<Page.Section> cautions() {
    List<String> found = new ArrayList<>();
    for (Finding f : result.findings()) {
      if (f.judged() == Judged.FAILS || f.judged() == Judged.DECIDE) {
        found.add(CautionSheet.told(f));
      }
    }
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section(
            "people",
            "People",
            List.of(
                new Page.Points(
                    List.of(
                        "A bonded ball can let go at once: load it first with nobody in line with it,"
                            + " and only after its full cure.",
                        "Springs, magnets and air under the mount store energy: let them off"
                            + " slowly.",
                        "What the mount carries falls if it fails: hold or catch it.")))));
    if (!found.isEmpty()) {
      sections.add(
          new Page.Section("found", "What the check found", List.of(new Page.Points(found))));
    }
    sections.add(CautionSheet.word());
    return sections;
  }
}
