package reseat.cli.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.cli.report.AcceptanceSheet;
import reseat.readings.AcceptancePlan;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;
import reseat.units.Unit;

/** Lays out a remount test from targets alone, before there is anything to read. */
final class BlankSheet {

  private BlankSheet() {}

  /**
   * Writes the blank form.
   *
   * @param targets {@code PROBE=VALUE}, one for each probe
   * @param multiplier how many standard deviations a target means
   * @param expected {@code PROBE=VALUE} or {@code VALUE}: true standard deviations expected
   * @param confidence confidence of the proof
   * @param wearIn seatings before the first reading; negative for the usual number
   * @return CSV text
   * @throws IllegalArgumentException if a word cannot be used; the message names the option
   */
  static String of(
      List<String> targets,
      double multiplier,
      List<String> expected,
      double confidence,
      int wearIn) {
    if (targets.isEmpty()) {
      throw new IllegalArgumentException(
          "--plan: name the probes with their targets, such as --target \"X=0.5 um\"");
    }
    Map<String, Double> hopes = new HashMap<>();
    for (String word : expected) {
      hopes.put(name(word).toLowerCase(Locale.ROOT), length("--expected", word).value());
    }
    List<AcceptancePlan> plans = new ArrayList<>();
    Unit unit = length("--target", targets.get(0)).unit();
    for (String word : targets) {
      String name = name(word);
      if (name.isEmpty()) {
        throw new IllegalArgumentException(
            "--target: with --plan every target names its probe, such as \"X=0.5 um\"; found \""
                + word
                + "\"");
      }
      double target = length("--target", word).value() / multiplier;
      double hope =
          hopes.getOrDefault(
              name.toLowerCase(Locale.ROOT),
              hopes.getOrDefault("", AcceptancePlan.USUAL_SHARE * target));
      AcceptancePlan plan =
          AcceptancePlan.of(name, target, hope, confidence, AcceptancePlan.USUAL_CHANCE, List.of());
      plans.add(wearIn < 0 ? plan : plan.withWearIn(wearIn));
    }
    return AcceptanceSheet.blank(plans, unit);
  }

  private static String name(String word) {
    int equals = word.indexOf('=');
    return equals < 0 ? "" : word.substring(0, equals).strip();
  }

  private static Quantity length(String option, String word) {
    try {
      Quantity q =
          QuantityText.require(word.substring(word.indexOf('=') + 1).strip(), QuantityKind.LENGTH);
      if (!(q.value() > 0)) {
        throw new IllegalArgumentException("\"" + q.text() + "\" must be above 0");
      }
      return q;
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(option + ": " + e.getMessage(), e);
    }
  }
}
