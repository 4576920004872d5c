package reseat.report.shop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.ballmount.BondCaution;
import reseat.ballmount.BondJoint;
import reseat.check.StudLoads;
import reseat.report.form.CautionWords;
import reseat.report.form.PageNumbers;
import reseat.report.page.Page;
import reseat.units.QuantityKind;

/** How balls are bonded to their studs, when they may be loaded, and how the bond is proven. */
public final class BondingSheet {

  private BondingSheet() {}

  /**
   * Sets out the sheet.
   *
   * @param bonds joint by name of the ball, in order
   * @param loads loads on each, under the same names
   * @param units units of the shop
   * @return sections; none if nothing is bonded
   */
  public static List<Page.Section> of(
      Map<String, BondJoint> bonds, Map<String, StudLoads> loads, ShopUnits units) {
    if (bonds.isEmpty()) {
      return List.of();
    }
    MergedRows joints = new MergedRows();
    MergedRows strength = new MergedRows();
    Set<String> cautions = new LinkedHashSet<>();
    boolean metal = true;
    for (Map.Entry<String, BondJoint> e : bonds.entrySet()) {
      BondJoint b = e.getValue();
      StudLoads load = loads.get(e.getKey());
      metal &= b.bottomsOnMetal();
      joints.add(
          e.getKey(),
          b.adhesive().name(),
          units.either(b.area(), QuantityKind.AREA),
          units.size(b.rimDiameter()),
          units.size(b.gap()),
          b.filletLeg() > 0 ? units.size(b.filletLeg()) : "none",
          b.bottomsOnMetal() ? "on metal" : "drawn in by up to " + units.small(b.cureMovement()));
      BondJoint.Load worst = load.sustained();
      for (StudLoads.Peak p : load.peaks()) {
        if (b.use(p.load(), false) > b.use(worst, false)) {
          worst = p.load();
        }
        for (BondCaution c : b.cautions(load.sustained(), p.load())) {
          cautions.add(CautionWords.of(c));
        }
      }
      strength.add(
          e.getKey(),
          units.force(b.testStrength()),
          PageNumbers.percent(b.use(load.sustained(), true)),
          PageNumbers.percent(b.use(worst, false)),
          told(worst, units),
          units.either(b.temperature(), QuantityKind.TEMPERATURE));
    }
    List<Page.Section> sections = new ArrayList<>();
    sections.add(
        new Page.Section(
            "joint",
            "The joint",
            List.of(
                new Page.Table(
                    "As drawn.",
                    List.of("ball", "adhesive", "area", "rim", "gap", "fillet", "on curing"),
                    joints.rows()))));
    sections.add(new Page.Section("steps", "Steps", List.of(new Page.Steps(steps(metal)))));
    sections.add(
        new Page.Section(
            "strength",
            "What it bears",
            List.of(
                new Page.Table(
                    "Shares are of the strength that may be counted on: a part of a fresh joint's, the"
                        + " rest is left to age, warmth and mishap.",
                    List.of(
                        "ball",
                        "a fresh joint breaks at, along",
                        "used by the load that stays",
                        "used at the worst load",
                        "the worst load",
                        "hottest"),
                    strength.rows()))));
    List<String> mind = new ArrayList<>(cautions);
    mind.add(
        "A bonded ball can let go at once. Prove it with nobody in line with it; guard what would fall"
            + " or fly.");
    mind.add("Skin and eyes: gloves, glasses and fresh air, as the adhesive's own sheet says.");
    sections.add(new Page.Section("mind", "Mind", List.of(new Page.Points(mind))));
    return sections;
  }

  private static String told(BondJoint.Load load, ShopUnits units) {
    return units.force(Math.abs(load.pull()))
        + (load.pull() > 0 ? " pulling, " : " pressing, ")
        + units.force(Math.abs(load.lateral()))
        + " sideways";
  }

  private static List<String> steps(boolean metal) {
    return List.of(
        "Try the ball dry: it must sit "
            + (metal ? "on metal, without rocking, " : "freely, ")
            + "with the gap above all round.",
        "Mask the part of the ball that works. Roughen the rest and the stud lightly with fine abrasive"
            + " paper; never the working part.",
        "Clean both with solvent until a fresh paper stays white. Do not touch them again.",
        "Mix as the adhesive's sheet says; throw away what has begun to thicken. Wet both faces.",
        "Press the ball home with a turn"
            + (metal ? ", down to the metal" : ", to a stop that sets its height")
            + "; hold it straight in a fixture. Leave the fillet, wipe the rest.",
        "Leave it without any load until fully cured: time and temperature are those of the adhesive's"
            + " sheet. A room-temperature epoxy commonly takes a day to handle and a week to full"
            + " strength (common practice, no source). Cured at: ________ from: ________ to: ________",
        "Read the height of the ball after the cure, not before: shrinking moves it.",
        "Prove the bond with the worst load of the table below, once, slowly; read the height again. A"
            + " ball that moved is bonded anew.");
  }
}
