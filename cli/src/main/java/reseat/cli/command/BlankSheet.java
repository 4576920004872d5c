package reseat.cli.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import reseat.readings.AcceptancePlan;
import reseat.readings.ColumnFacts;
import reseat.report.readings.AcceptanceTestPlan;
import reseat.study.AcceptanceStudy;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** Lays out a remount test from targets or a design, before there is anything to read. */
final class BlankSheet {

  private BlankSheet() {}

  /**
   * Lays out the test.
   *
   * @param targets {@code PROBE=VALUE}, one for each probe; with a design they go before its own
   * @param multiplier how many standard deviations a target means
   * @param expected {@code PROBE=VALUE} or {@code VALUE}: true standard deviations expected
   * @param confidence confidence of the proof
   * @param wearIn seatings before the first reading; negative for the usual number
   * @param design the design to be tested, with the name of its file; empty if there is none
   * @param told unit of the readings; empty for that of the first target, else µm
   * @param noises {@code PROBE=VALUE} or {@code VALUE}: noise of the gauges to be used
   * @param steps the same for their steps
   * @return the form
   * @throws IllegalArgumentException if a word cannot be used; the message names the option
   */
  static AcceptanceTestPlan of(
      List<String> targets,
      double multiplier,
      List<String> expected,
      double confidence,
      int wearIn,
      Map<String, AcceptanceStudy> design,
      Optional<Unit> told,
      List<String> noises,
      List<String> steps) {
    Map<String, Double> hopes = new HashMap<>();
    for (String word : expected) {
      hopes.put(name(word).toLowerCase(Locale.ROOT), length("--expected", word).value());
    }
    Unit unit = told.orElse(UnitCatalog.UM);
    Map<String, Double> wanted = new LinkedHashMap<>();
    for (String word : targets) {
      String name = name(word);
      if (name.isEmpty()) {
        throw new IllegalArgumentException(
            "--target: with --plan every target names its probe, such as \"X=0.5 um\"; found \""
                + word
                + "\"");
      }
      Quantity q = length("--target", word);
      unit = wanted.isEmpty() && told.isEmpty() ? q.unit() : unit;
      if (wanted.put(name, q.value() / multiplier) != null) {
        throw new IllegalArgumentException("--target is given twice for probe " + name);
      }
    }
    List<String> sources = new ArrayList<>();
    AcceptanceStudy tested = null;
    for (Map.Entry<String, AcceptanceStudy> d : design.entrySet()) {
      tested = d.getValue();
      sources.addAll(DesignPlan.sources(tested.design(), d.getKey(), unit));
      for (Map.Entry<String, Double> own : AcceptanceStudy.targets(tested.design()).entrySet()) {
        if (wanted.keySet().stream().noneMatch(own.getKey()::equalsIgnoreCase)) {
          wanted.put(own.getKey(), own.getValue());
        }
      }
    }
    if (wanted.isEmpty()) {
      throw new IllegalArgumentException(
          "--plan: name the probes with their targets, such as --target \"X=0.5 um\""
              + (tested == null
                  ? ", or the design to be tested with --against"
                  : "; the design wants no repeatability of its own"));
    }
    List<AcceptancePlan> plans = new ArrayList<>();
    for (Map.Entry<String, Double> w : wanted.entrySet()) {
      double hope =
          hopes.getOrDefault(w.getKey().toLowerCase(Locale.ROOT), hopes.getOrDefault("", 0.0));
      AcceptancePlan plan =
          tested == null
              ? AcceptancePlan.of(
                  w.getKey(),
                  w.getValue(),
                  hope > 0 ? hope : AcceptancePlan.LEAST_SHARE * w.getValue(),
                  confidence,
                  AcceptancePlan.USUAL_CHANCE,
                  List.of())
              : planned(tested, w.getKey(), w.getValue(), hope, confidence);
      plans.add(wearIn < 0 ? plan : plan.withWearIn(wearIn));
    }
    Map<String, ColumnFacts> gauges = new HashMap<>();
    for (AcceptancePlan plan : plans) {
      double noise = stated("--gauge", noises, plan.axis());
      double step = stated("--resolution", steps, plan.axis());
      gauges.put(plan.axis(), new ColumnFacts(noise, step, 0));
    }
    return new AcceptanceTestPlan(plans, unit, sources, gauges);
  }

  /** What an option says of an axis: by its name, else of all; 0 if nothing. */
  private static double stated(String option, List<String> words, String axis) {
    double forAll = 0;
    double own = 0;
    for (String word : words) {
      double value = length(option, word).value();
      if (name(word).isEmpty()) {
        forAll = value;
      } else if (name(word).equalsIgnoreCase(axis)) {
        own = value;
      }
    }
    return own > 0 ? own : forAll;
  }

  private static AcceptancePlan planned(
      AcceptanceStudy tested, String axis, double target, double hope, double confidence) {
    try {
      return tested.plan(axis, target, hope, confidence, AcceptancePlan.USUAL_CHANCE);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("--target: " + e.getMessage(), e);
    }
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
