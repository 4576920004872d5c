package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import reseat.check.Depth;
import reseat.check.Verdict;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.Starter;
import reseat.equilibrium.NoEquilibriumException;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/** Designs around the shipped ones that fail or need a decision, drawn by a seed. */
final class FailingDesigns {

  private FailingDesigns() {}

  /** A drawn design and what came of checking it. */
  record Drawn(AlterableDesign file, CheckResult result, String changes) {}

  /** A key and the values that are drawn for it. */
  private record Choice(String key, String... values) {}

  private static final List<Choice> POST =
      List.of(
          new Choice("preload.force", "120 N", "300 N", "900 N", "1200 N"),
          new Choice("preload.at[x]", "6 mm", "-12 mm", "15 mm"),
          new Choice("preload.direction", "[0.2, 0, -1]", "[-0.1, 0.3, -1]"),
          new Choice("preload.scatter", "5 %", "15 %"),
          new Choice("load_case[crash].force.height", "-900 N", "-1500 N", "150 N"),
          new Choice("load_case[rough].force.height", "-200 N", "60 N"),
          new Choice("load_case[finish].force.Z", "-12 N", "-20 N"),
          new Choice("layout.ball.diameter", "3/8 in", "5/16 in"),
          new Choice("layout.ball.material", "silicon nitride", "440C"),
          new Choice("layout.groove.material", "6061-T6", "1045", "17-4PH"),
          new Choice("layout.groove.flank_angle", "30 deg", "20 deg", "60 deg"),
          new Choice("layout.mounting.stud.neck_diameter", "0.15 in", "0.2 in"),
          new Choice("layout.mounting.stud.stick_out", "0.8 in"),
          new Choice("layout.mounting.bond.hottest", "60 °C", "50 °C"),
          new Choice("layout.mounting.bond.area", "20 mm^2"),
          new Choice("layout.mounting.lock_nut.torque", "20 N·m"),
          new Choice("layout.first_ball_at", "180 deg", "90 deg"),
          new Choice("layout.circle_diameter", "1.75 in", "2 in"),
          new Choice("targets.repeatability.X", "0.1 um", "0.12 um"),
          new Choice("targets.repeatability.height", "0.2 um", "0.15 um"),
          new Choice("friction.surface", "dry"),
          new Choice("remount.temperature_scatter", "1 K", "2 K"),
          new Choice("keep_clear[1].gap", "0.01 mm"));

  private static final List<Choice> PALLET =
      List.of(
          new Choice("preload[*].force", "60 N", "150 N", "600 N"),
          new Choice("support[*].seat.spacing", "14 mm", "17 mm", "24 mm", "27 mm"),
          new Choice("support[*].ball.diameter", "16 mm", "12 mm"),
          new Choice("support[1].seat.axis", "60 deg", "90 deg"),
          new Choice("load_case[grinding].force[z]", "-300 N", "80 N"),
          new Choice("load_case[hand on a corner].force[z]", "-300 N"),
          new Choice("remount.temperature_scatter", "2 K", "5 K"),
          new Choice("remount.seating_force", "2 N"),
          new Choice("preload[*].scatter", "15 %", "25 %"),
          new Choice("support[*].seat.material", "1045", "A2"),
          new Choice("friction.surface", "dry"),
          new Choice("targets.repeatability.height", "1 um", "1.5 um"));

  private static final List<Choice> SENSOR =
      List.of(
          new Choice("remount.seating_force", "2 N", "20 N"),
          new Choice("preload[*].force", "8 N", "60 N"),
          new Choice("machine.gravity", "-z", "+z"),
          new Choice("support[1].seat.flank_angle", "45 deg", "40 deg"),
          new Choice("support[*].ball.diameter", "4 mm", "5 mm"),
          new Choice("load_case[cable].force.across", "12 N", "25 N"),
          new Choice("targets.repeatability.out", "0.1 um"),
          new Choice("remount.temperature_scatter", "2 K"));

  /** Draws until there are enough that do not hold, and of which no value is in doubt. */
  static List<Drawn> draw(int count, long seed) {
    Random random = new Random(seed);
    List<Drawn> drawn = new ArrayList<>();
    while (drawn.size() < count) {
      int kind = random.nextInt(5);
      Starter starter =
          kind < 3 ? Starter.TOOL_POST : kind == 3 ? Starter.PALLET : Starter.SENSOR_MOUNT;
      List<Choice> choices = kind < 3 ? POST : kind == 3 ? PALLET : SENSOR;
      AlterableDesign base = AlterableDesign.of(starter.text());
      List<Alteration> alterations = new ArrayList<>();
      StringBuilder told = new StringBuilder(starter.word());
      for (int i = 0; i <= random.nextInt(2); i++) {
        Choice c = choices.get(random.nextInt(choices.size()));
        String value = c.values()[random.nextInt(c.values().length)];
        alterations.add(new Alteration(base.key(c.key()), value));
        told.append(", ").append(c.key()).append(" = ").append(value);
      }
      AlterableDesign file = AlterableDesign.of(base.textWith(alterations));
      boolean usable = file.unaltered().design().isPresent() && file.unaltered().doubts().isEmpty();
      if (usable) {
        try {
          CheckResult result = CheckStudy.run(StatedDesign.of(file.unaltered()), Depth.SIMULATED);
          if (result.verdict() != Verdict.HOLDS) {
            drawn.add(new Drawn(file, result, told.toString()));
          }
        } catch (NoEquilibriumException | IllegalArgumentException e) {
          // such a design is told of in one line; there is nothing to mend by degrees
          continue;
        }
      }
    }
    return drawn;
  }
}
