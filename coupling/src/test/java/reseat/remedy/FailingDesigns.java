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
  private record Choice(String key, List<String> values) {}

  private static Choice choice(String key, String... values) {
    return new Choice(key, List.of(values));
  }

  private static final List<Choice> POST =
      List.of(
          choice("preload.force", "120 N", "300 N", "900 N", "1200 N"),
          choice("preload.at[x]", "6 mm", "-12 mm", "15 mm"),
          choice("preload.direction", "[0.2, 0, -1]", "[-0.1, 0.3, -1]"),
          choice("preload.scatter", "5 %", "15 %"),
          choice("load_case[crash].force.height", "-900 N", "-1500 N", "150 N"),
          choice("load_case[rough].force.height", "-200 N", "60 N"),
          choice("load_case[finish].force.Z", "-12 N", "-20 N"),
          choice("layout.ball.diameter", "3/8 in", "5/16 in"),
          choice("layout.ball.material", "silicon nitride", "440C"),
          choice("layout.groove.material", "6061-T6", "1045", "17-4PH"),
          choice("layout.groove.flank_angle", "30 deg", "20 deg", "60 deg"),
          choice("layout.mounting.stud.neck_diameter", "0.15 in", "0.2 in"),
          choice("layout.mounting.stud.stick_out", "0.8 in"),
          choice("layout.mounting.bond.hottest", "60 °C", "50 °C"),
          choice("layout.mounting.bond.area", "20 mm^2"),
          choice("layout.mounting.lock_nut.torque", "20 N·m"),
          choice("layout.first_ball_at", "180 deg", "90 deg"),
          choice("layout.circle_diameter", "1.75 in", "2 in"),
          choice("targets.repeatability.X", "0.1 um", "0.12 um"),
          choice("targets.repeatability.height", "0.2 um", "0.15 um"),
          choice("friction.surface", "dry"),
          choice("remount.temperature_scatter", "1 K", "2 K"),
          choice("keep_clear[1].gap", "0.01 mm"));

  private static final List<Choice> PALLET =
      List.of(
          choice("preload[*].force", "60 N", "150 N", "600 N"),
          choice("support[*].seat.spacing", "14 mm", "17 mm", "24 mm", "27 mm"),
          choice("support[*].ball.diameter", "16 mm", "12 mm"),
          choice("support[1].seat.axis", "60 deg", "90 deg"),
          choice("load_case[grinding].force[z]", "-300 N", "80 N"),
          choice("load_case[hand on a corner].force[z]", "-300 N"),
          choice("remount.temperature_scatter", "2 K", "5 K"),
          choice("remount.seating_force", "2 N"),
          choice("preload[*].scatter", "15 %", "25 %"),
          choice("support[*].seat.material", "1045", "A2"),
          choice("friction.surface", "dry"),
          choice("targets.repeatability.height", "1 um", "1.5 um"));

  private static final List<Choice> SENSOR =
      List.of(
          choice("remount.seating_force", "2 N", "20 N"),
          choice("preload[*].force", "8 N", "60 N"),
          choice("machine.gravity", "-z", "+z"),
          choice("support[1].seat.flank_angle", "45 deg", "40 deg"),
          choice("support[*].ball.diameter", "4 mm", "5 mm"),
          choice("load_case[cable].force.across", "12 N", "25 N"),
          choice("targets.repeatability.out", "0.1 um"),
          choice("remount.temperature_scatter", "2 K"));

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
        String value = c.values().get(random.nextInt(c.values().size()));
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
          told.append(", does not stand");
        }
      }
    }
    return drawn;
  }
}
