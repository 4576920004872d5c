package reseat.report.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.LockNut;
import reseat.ballmount.ThreadDuty;
import reseat.design.MachineAxes;
import reseat.design.Preload;
import reseat.elementary.Elementary;
import reseat.making.HeightSetting;
import reseat.preload.BenchBand;
import reseat.preload.BenchSetting;
import reseat.report.form.PageNumbers;
import reseat.report.page.Page;
import reseat.study.ShopStudy;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.UnitCatalog;

/** In which order a coupling is put together and set, how far screws are turned, what pulls it. */
public final class SettingSheet {

  private final ShopStudy study;
  private final ShopUnits units;
  private final Map<String, Double> rises;

  private SettingSheet(ShopStudy study, ShopUnits units, Map<String, Double> rises) {
    this.study = study;
    this.units = units;
    this.rises = rises;
  }

  public static List<Page.Section> of(ShopStudy study, ShopUnits units, Map<String, Double> rises) {
    return new SettingSheet(study, units, rises).sections();
  }

  private List<Page.Section> sections() {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section("order", "Order of work", List.of(new Page.Steps(orderOfWork()))));
    if (!study.settings().isEmpty()) {
      sections.add(heights());
      sections.add(turns());
    }
    sections.add(preload());
    return sections;
  }

  private boolean bonded() {
    return study.design().supports().stream()
        .anyMatch(s -> s.mounting().stud().flatMap(m -> m.bond()).isPresent());
  }

  private List<String> orderOfWork() {
    List<String> steps = new ArrayList<>();
    steps.add("Seats measured and passed: gauge sheet. Edges of seats broken, no burr at a mouth.");
    if (bonded()) {
      steps.add("Balls bonded, cured and proven: bonding sheet.");
    }
    steps.add(
        "Clean balls and seats with solvent and lint-free paper; a trace of oil if designed so.");
    if (!study.settings().isEmpty()) {
      steps.add("Set the balls to height with the lock nuts loose, short of it by the lock shift.");
      steps.add("Lock one nut after another, then read again: see below.");
    }
    steps.add(
        "Put the two halves together by hand and look through every gap: nothing but the "
            + study.design().contactCount()
            + " contacts touches (clearance list).");
    steps.add("Set the preload, always from loose to tight, to the figure below.");
    steps.add(
        "Seat and lift "
            + (study.acceptance().isEmpty() ? 50 : study.acceptance().get(0).wearIn())
            + " times to wear in (common practice), clean, set the preload again, then test:"
            + " acceptance sheet.");
    return steps;
  }

  private Page.Section heights() {
    MachineAxes axes = study.design().axes();
    MergedRows rows = new MergedRows();
    for (HeightSetting h : study.settings()) {
      double step = units.step();
      rows.add(
          h.support(),
          h.thread().limits().thread().designation(),
          units.small(h.travelPerDegree()),
          h.lockNut()
              .map(n -> units.either(n.tighteningTorque(), QuantityKind.TORQUE))
              .orElse("none"),
          h.lockNut().map(n -> units.small(n.shiftExpected(), n.shiftUncertainty())).orElse("none"),
          units.signed(h.toolPointPerRise().x() * step)
              + " / "
              + units.signed(h.toolPointPerRise().y() * step)
              + " / "
              + units.signed(h.toolPointPerRise().z() * step));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "A ball rises when it comes out of its half, toward its seat.",
            List.of(
                "ball",
                "thread",
                "a degree of turn",
                "lock nut torque",
                "locking lifts it by",
                units.move(units.step())
                    + " of rise moves the tool point "
                    + axes.first().name()
                    + " / "
                    + axes.second().name()
                    + " / "
                    + axes.third().name()),
            rows.rows()));
    Optional<LockNut> nut =
        study.settings().stream().flatMap(h -> h.lockNut().stream()).findFirst();
    if (nut.isPresent()) {
      List<String> steps = new ArrayList<>();
      for (LockNut.Step s : LockNut.procedure()) {
        steps.add(s.instruction());
      }
      blocks.add(new Page.Steps(steps));
    }
    return new Page.Section("heights", "Heights of the balls", blocks);
  }

  private Page.Section turns() {
    List<HeightSetting> kinds = new ArrayList<>();
    for (HeightSetting h : study.settings()) {
      if (kinds.stream().noneMatch(k -> sameThread(k, h))) {
        kinds.add(h);
      }
    }
    List<Page.Block> blocks = new ArrayList<>();
    if (!rises.isEmpty()) {
      blocks.add(wanted());
    }
    for (HeightSetting h : kinds) {
      List<String> heads = new ArrayList<>(List.of("rise"));
      List<String> degrees = new ArrayList<>(List.of("degrees"));
      List<String> minutes = new ArrayList<>(List.of("minutes on a clock face"));
      for (double move : units.moves()) {
        HeightSetting.Turn t = h.turnFor(move);
        heads.add(units.move(move));
        degrees.add(degrees(t));
        minutes.add(PageNumbers.figures(t.clockMinutes(), 2));
      }
      blocks.add(
          new Page.Table(
              h.thread().limits().thread().designation()
                  + ": "
                  + (h.turnFor(1).clockwise() ? "clockwise" : "counterclockwise")
                  + " lifts the ball out, seen from the foot of the stud, where its socket is; 60"
                  + " minutes are a turn",
              heads,
              List.of(
                  Page.Row.of(degrees.toArray(new String[0])),
                  Page.Row.of(minutes.toArray(new String[0])))));
    }
    blocks.add(
        new Page.Paragraph(
            FilledText.of(
                "A hand sets %.0f degrees reliably (common practice): finer moves want a wrench with a"
                    + " scale, or are left to the offset table.",
                Elementary.toDegrees(ThreadDuty.HAND_RESOLUTION))));
    return new Page.Section("turns", "How far to turn", blocks);
  }

  private static boolean sameThread(HeightSetting a, HeightSetting b) {
    return a.thread()
        .limits()
        .thread()
        .designation()
        .equals(b.thread().limits().thread().designation());
  }

  private static String degrees(HeightSetting.Turn t) {
    return t.degrees() < 10
        ? FilledText.of("%.1f", t.degrees())
        : FilledText.of("%.0f", t.degrees());
  }

  private Page.Table wanted() {
    List<Page.Row> rows = new ArrayList<>();
    for (HeightSetting h : study.settings()) {
      if (!rises.containsKey(h.support())) {
        continue;
      }
      double rise = rises.get(h.support());
      double now = rise - h.shortOfHeight();
      HeightSetting.Turn whole = h.turnFor(rise);
      rows.add(
          Page.Row.of(
              h.support(),
              (rise > 0 ? "+" : "") + units.small(rise),
              way(whole) + degrees(whole) + " degrees",
              "minute " + PageNumbers.figures(whole.clockMinutes(), 2),
              (now > 0 ? "+" : "") + units.small(now) + " from the reading of now",
              ""));
    }
    return new Page.Table(
        "Heights asked for, from where the locked balls stand now: loosen the nut, turn, lock. A nut"
            + " that was locked before shifts as before. For a first locking aim short.",
        List.of("ball", "rise", "turn", "clock face, from 12", "first locking: aim at", "read"),
        rows);
  }

  private static String way(HeightSetting.Turn t) {
    return t.degrees() == 0 ? "" : t.clockwise() ? "clockwise " : "counterclockwise ";
  }

  private Page.Section preload() {
    MergedRows rows = new MergedRows();
    for (Preload p : study.design().preloads()) {
      Optional<BenchBand> band = study.band(p);
      rows.add(
          p.name(),
          p.device().isEmpty() ? "not named" : p.device(),
          units.force(p.force()),
          p.modelled()
              .flatMap(d -> d.settingFor(d.nominalForce()))
              .map(this::setting)
              .orElse("the force itself, on a scale or load cell"),
          aim(p, band),
          p.modelled()
              .map(d -> percent(d.scatter().halfRange()))
              .orElse(percent(p.forceSpread().limit())));
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "What pulls the holder home; the band keeps every load case seated and no contact"
                + " overstressed, all preloads scaled alike.",
            List.of("preload", "by", "force", "set", "aim between", "from change to change"),
            rows.rows()));
    return new Page.Section("preload", "Preload", blocks);
  }

  private String setting(BenchSetting s) {
    return s.kind().label() + " " + units.pair(s.metric(), s.inch());
  }

  private String aim(Preload p, Optional<BenchBand> band) {
    if (band.isPresent() && band.get().feasible()) {
      String low = band.get().settingAtLow().map(this::setting).orElse("");
      String high = band.get().settingAtHigh().map(this::setting).orElse("as much as it gives");
      if (!low.isEmpty()) {
        boolean inside = p.force() >= band.get().aimLow() && p.force() <= band.get().aimHigh();
        String but = inside ? "" : "; what is set lies OUTSIDE: it scatters too much there";
        return low
            + " and "
            + high.replace(band.get().settingAtLow().get().kind().label() + " ", "")
            + but;
      }
    }
    if (study.allowed().isEmpty() || !Double.isFinite(study.allowed().get().most().force())) {
      return "no band: see the check";
    }
    double least = study.allowed().get().scales().least();
    double most = study.allowed().get().scales().most();
    return units.force(least * p.force()) + " and " + units.force(most * p.force());
  }

  private static String percent(double share) {
    return "± " + QuantityFormat.significant(share, UnitCatalog.PERCENT, 2);
  }
}
