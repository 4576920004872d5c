package reseat.report.shop;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.design.Preload;
import reseat.equilibrium.CaseResponse;
import reseat.preload.DeviceCaution;
import reseat.preload.PreloadDevice;
import reseat.report.check.FindingsText;
import reseat.report.form.CautionWords;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.page.Page;
import reseat.study.ShopStudy;
import reseat.units.FilledText;

/** What can hurt people or parts, and what the check had to say. */
public final class CautionSheet {

  /** Stored energy below which nobody is hurt, J; common practice, no source. */
  private static final double WORTH_TELLING = 0.01;

  private CautionSheet() {}

  public static List<Page.Section> of(ShopStudy study, ShopUnits units) {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section("people", "People", List.of(new Page.Points(people(study, units)))));
    sections.add(new Page.Section("load", "Loads that unseat it", loads(study, units)));
    List<String> found = new ArrayList<>();
    for (Finding f : study.check().findings()) {
      if (f.judged() == Judged.FAILS || f.judged() == Judged.DECIDE) {
        found.add(told(f));
      }
    }
    if (!found.isEmpty()) {
      sections.add(
          new Page.Section("found", "What the check found", List.of(new Page.Points(found))));
    }
    sections.add(word());
    return sections;
  }

  /** A finding with its advice. */
  public static String told(Finding f) {
    return FindingsText.words(f, FigureText.BOTH);
  }

  /** What these papers are not. */
  public static Page.Section word() {
    return new Page.Section(
        "word",
        "A word on this sheet",
        List.of(
            new Page.Paragraph(
                "These papers are computed from a design file and from typical values. They are no"
                    + " approval and no risk assessment: where people can be hurt, local codes and"
                    + " the judgement of a licensed engineer decide.")));
  }

  private static List<String> people(ShopStudy study, ShopUnits units) {
    MergedRows devices = new MergedRows();
    boolean plain = false;
    for (Preload p : study.design().preloads()) {
      if (p.modelled().isEmpty()) {
        plain = true;
        continue;
      }
      PreloadDevice device = p.modelled().get();
      for (DeviceCaution c : device.cautions()) {
        devices.add(p.name(), CautionWords.of(c));
      }
      if (device.storedEnergy() >= WORTH_TELLING) {
        devices.add(
            p.name(),
            FilledText.of(
                "stores %s J at %s: stand aside of its line, let it off in steps.",
                PageNumbers.plain(device.storedEnergy(), 2), units.force(device.nominalForce())));
      }
    }
    List<String> points = new ArrayList<>();
    for (Page.Row row : devices.rows()) {
      points.add(String.join(": ", row.cells()));
    }
    if (plain) {
      points.add(
          "Springs and tightened screws store energy: let the preload off in steps, with nothing in"
              + " the way of the parts. Its device is not described in the design file, so how much"
              + " is not known.");
      points.add(
          "Magnets, if there are any: they snap together and pinch, splinter, and draw chips; keep"
              + " them from medical implants.");
    }
    boolean bonded =
        study.design().supports().stream()
            .anyMatch(s -> s.mounting().stud().flatMap(m -> m.bond()).isPresent());
    if (bonded) {
      points.add(
          "Bonded balls can let go, more so when warm, wet or under lasting load: prove the bond with"
              + " nobody in line with it, and guard what would fall or fly.");
    }
    points.add(
        "The holder, "
            + units.force(study.design().weight().force().norm())
            + ", falls if the preload is let off while it hangs or stands on edge: hold it first.");
    points.add("Fingers between the halves are pinched when the preload is set.");
    return points;
  }

  private static List<Page.Block> loads(ShopStudy study, ShopUnits units) {
    List<Page.Row> rows = new ArrayList<>();
    for (CaseResponse c : study.check().cases()) {
      double factor = c.liftOff().factor();
      rows.add(
          Page.Row.of(
              c.loadCase().name(),
              units.force(c.loadCase().load().force().norm()),
              c.liftsOff()
                  ? "COMES OFF"
                  : Double.isInfinite(factor)
                      ? "never"
                      : factor > 100 ? "over 100 x" : PageNumbers.figures(factor, 2) + " x"));
    }
    List<Page.Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(
          new Page.Table(
              "How many times each load case may grow before a contact opens.",
              List.of("load case", "force", "opens at"),
              rows));
    }
    blocks.add(
        new Page.Paragraph(
            "The least force at the tool point that opens a contact is "
                + units.force(study.check().weakest().force())
                + ". A crash may give more than that: the holder then jumps. Afterwards clean,"
                + " inspect and test it as after a fall, and look at balls and bonds first."));
    return blocks;
  }
}
