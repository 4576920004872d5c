package reseat.report.shop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import reseat.csv.PlainCell;
import reseat.design.CouplingDesign;
import reseat.design.TurningRoles;
import reseat.report.page.Page;
import reseat.study.ShopStudy;

/** A form for the tool offsets of the holders, and what to expect of them. */
public final class OffsetSheet {

  private static final int HOLDERS = 12;

  /** Holders and mounts of each in the file to fill in. */
  private static final int READ = 5;

  private static final int MOUNTS = 3;

  private OffsetSheet() {}

  public static List<Page.Section> of(ShopStudy study, ShopUnits units) {
    CouplingDesign design = study.design();
    List<String> heads = new ArrayList<>(List.of("holder", "mounts", "date", "°C"));
    for (int k = 0; k < 3; k++) {
      heads.add(design.axes().axis(k).name());
      heads.add("±");
    }
    List<Page.Row> rows = new ArrayList<>();
    for (int i = 1; i <= HOLDERS; i++) {
      List<String> cells = new ArrayList<>(Collections.nCopies(heads.size(), ""));
      cells.set(0, i == 1 ? "1 (master)" : String.valueOf(i));
      rows.add(Page.Row.of(cells.toArray(new String[0])));
    }
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section(
            "form",
            "",
            List.of(
                new Page.Paragraph(
                    "Where the tool point of a holder stands less where that of the master stands,"
                        + " along the machine's axes."
                        + radial(design)
                        + " Unit: ________   Gauge: ________________"),
                new Page.Table("One line for each holder.", heads, rows))));
    sections.add(new Page.Section("how", "How", List.of(new Page.Steps(steps()))));
    study
        .betweenHolders()
        .ifPresent(
            s -> {
              List<Page.Row> expected = new ArrayList<>();
              for (int k = 0; k < 3; k++) {
                expected.add(
                    Page.Row.of(
                        design.axes().axis(k).name(),
                        units.small(
                            Math.min(2 * s.deviation().component(k), s.worstCase().component(k))),
                        units.small(s.worstCase().component(k))));
              }
              sections.add(
                  new Page.Section(
                      "expected",
                      "What to expect by the tolerances",
                      List.of(
                          new Page.Table(
                              "How far holders lie from where they are drawn, on one post; one"
                                  + " beyond the second figure is not as drawn, or not seated. From"
                                  + " the master it may be twice as far, as that may be off too.",
                              List.of("axis", "most of them within ±", "none beyond ±"),
                              expected))));
            });
    return sections;
  }

  private static String radial(CouplingDesign design) {
    Optional<TurningRoles> roles = design.turning();
    return roles.isEmpty()
        ? ""
        : " "
            + design.axes().axis(roles.get().radial()).name()
            + " is across the turned part: 1 of offset is 2 in diameter. A control in diameter mode"
            + " wants twice the reading.";
  }

  private static List<String> steps() {
    return List.of(
        "Let post, holders and gauge come to one temperature. Clean every seat and ball.",
        "Mount the master and read all axes; lift, mount again, three times at least; the mean"
            + " counts.",
        "Mount each holder likewise, at least three times. A reading that stands out: clean and mount"
            + " again, and write both down.",
        "Mount the master again at the end: what it has moved is the drift of the day.",
        "Sign: positive is where the axis grows. Enter the offset as the control wants it, place or"
            + " correction; try it on scrap first.",
        "Typed into holder-readings.csv, the readings give the table with uncertainties: its first"
            + " lines say how.");
  }

  /**
   * A readings file to fill in, from which the table of offsets is made.
   *
   * @param design the coupling
   * @param units units of the shop
   * @return CSV with remarks, a head line and a line for each mount of each holder
   */
  public static String csv(CouplingDesign design, ShopUnits units) {
    StringBuilder out =
        new StringBuilder("# Readings of several holders on one post; holder 1 is the master.\n");
    out.append("# Fill in, then: reseat readings holder-readings.csv --reference 1");
    design
        .turning()
        .ifPresent(r -> out.append(" --diameter ").append(design.axes().axis(r.radial()).name()));
    out.append(" --offsets offsets.csv\n");
    out.append("# --diameter is for a control in diameter mode.\ncycle");
    for (int k = 0; k < 3; k++) {
      String unit = units.inchFirst() ? " [uin]" : " [um]";
      out.append(',').append(PlainCell.quoted(design.axes().axis(k).name() + unit));
    }
    out.append(",temperature [degC],holder\n");
    for (int mount = 1; mount <= MOUNTS; mount++) {
      for (int holder = 1; holder <= READ; holder++) {
        out.append(mount).append(",,,,,").append(holder).append('\n');
      }
    }
    return out.toString();
  }
}
