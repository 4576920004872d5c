package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import reseat.check.Measure;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadScatter;
import reseat.remount.FrictionBound;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.units.NearestWord;
import reseat.units.QuantityKind;

/**
 * The outputs that a coupling can be asked for: those of every coupling, and those of this one's
 * machine axes ({@code stiffness.X}) and load cases ({@code lift-off[rough]}).
 *
 * <p>Where a check judges an output, its limit is the check's; values at rest are those under
 * preload and weight.
 */
public final class OutputCatalog {

  private final List<Output> outputs = new ArrayList<>();
  private final MachineAxes axes;

  private OutputCatalog(CouplingDesign design) {
    axes = design.axes();
    pressures();
    forces();
    stiffness();
    motions(design);
    seating();
  }

  /**
   * Lists the outputs of a coupling.
   *
   * @param design the coupling; its machine axes and load cases give names
   * @return outputs in the order in which they are offered
   */
  public static List<Output> of(CouplingDesign design) {
    return List.copyOf(new OutputCatalog(design).outputs);
  }

  /**
   * Lists the outputs that are shown if none is asked for.
   *
   * @param design the coupling
   * @return a few, none of them simulated
   */
  public static List<Output> usual(CouplingDesign design) {
    List<String> names = new ArrayList<>(List.of("peak-pressure", "stiffness", "sink"));
    if (!design.cases().isEmpty()) {
      names.add("lift-off");
    }
    names.add("friction-limit");
    return of(design).stream().filter(o -> names.contains(o.name())).toList();
  }

  /**
   * Finds an output by name.
   *
   * @param design the coupling
   * @param name as typed
   * @return the output
   * @throws IllegalArgumentException if there is none; the message names the nearest
   */
  public static Output named(CouplingDesign design, String name) {
    List<String> names = new ArrayList<>();
    for (Output o : of(design)) {
      if (o.name().equals(name)) {
        return o;
      }
      names.add(o.name());
    }
    throw new IllegalArgumentException(
        "there is no output \""
            + name
            + "\"; "
            + NearestWord.to(name, names).map(n -> "did you mean " + n + "? ").orElse("")
            + "outputs: "
            + String.join(", ", names));
  }

  private void pressures() {
    add(
        "peak-pressure",
        "highest pressure of any contact, at rest or under a load case",
        QuantityKind.PRESSURE,
        CheckedOutputs::pressure);
    add(
        "pressure-share",
        "that pressure over the pressure allowed",
        QuantityKind.RATIO,
        check ->
            CheckedOutputs.pressure(check)
                .filter(OutputValue::isLimited)
                .map(p -> OutputValue.atMost(p.value() / p.limit(), 1)));
    add(
        "seat-room",
        "room at the tightest edge or floor of a seat",
        QuantityKind.LENGTH,
        check ->
            CheckedOutputs.tightest(check, CheckKind.SEAT_FIT, Measure.LENGTH)
                .map(f -> new OutputValue(f.value(), f.limit(), f.sense())));
  }

  private void forces() {
    add(
        "contact-angle",
        "least angle of a flank, or of the tangent at a pin, to the coupling plane",
        QuantityKind.ANGLE,
        check ->
            free(
                check.standing().contacts().stream()
                    .mapToDouble(Equilibrium.Contact::angle)
                    .min()
                    .orElse(0)));
    add(
        "largest-force",
        "largest contact force at rest",
        QuantityKind.FORCE,
        check ->
            free(
                check.standing().contacts().stream()
                    .mapToDouble(Equilibrium.Contact::force)
                    .max()
                    .orElse(0)));
    add(
        "smallest-force",
        "smallest contact force at rest",
        QuantityKind.FORCE,
        check ->
            free(
                check.standing().contacts().stream()
                    .mapToDouble(Equilibrium.Contact::force)
                    .min()
                    .orElse(0)));
    add(
        "sink",
        "how far preload and weight sink the tool point",
        QuantityKind.LENGTH,
        check -> free(check.standing().displacementOf(check.design().toolPoint()).norm()));
    add(
        "opening-force",
        "least force at the tool point that opens a contact",
        QuantityKind.FORCE,
        check -> free(check.weakest().force()));
  }

  private void stiffness() {
    add(
        "stiffness",
        "stiffness of the tool point along the softest machine axis, contacts sliding",
        QuantityKind.STIFFNESS,
        check -> {
          Vec3 k = check.frictionless().toolPoint().alongAxes();
          return free(Math.min(k.x(), Math.min(k.y(), k.z())));
        });
    eachAxis(
        "stiffness",
        "stiffness of the tool point along %s, contacts sliding",
        QuantityKind.STIFFNESS,
        (check, k) -> free(check.frictionless().toolPoint().alongAxes().component(k)));
    eachAxis(
        "stuck-stiffness",
        "stiffness of the tool point along %s, contacts sticking",
        QuantityKind.STIFFNESS,
        (check, k) -> free(check.sticking().toolPoint().alongAxes().component(k)));
    add(
        "first-frequency",
        "first natural frequency, contacts sliding, post and machine rigid",
        QuantityKind.FREQUENCY,
        check ->
            check.frictionless().frequencies().hertz().stream().findFirst().map(OutputValue::free));
  }

  private void motions(CouplingDesign design) {
    add(
        "lift-off",
        "how many times the worst load case may grow before a contact opens",
        QuantityKind.RATIO,
        check -> {
          Optional<OutputValue> worst = Optional.empty();
          for (CaseResponse r : check.cases()) {
            OutputValue v = CheckedOutputs.liftOff(check, r);
            if (worst.isEmpty()
                || v.value() / v.limit() < worst.get().value() / worst.get().limit()) {
              worst = Optional.of(v);
            }
          }
          return worst;
        });
    for (int i = 0; i < design.cases().size(); i++) {
      int index = i;
      add(
          "lift-off[" + design.cases().get(i).name() + "]",
          "how many times this load case may grow before a contact opens",
          QuantityKind.RATIO,
          check -> Optional.of(CheckedOutputs.liftOff(check, check.cases().get(index))));
    }
    for (int i = 0; i < design.cases().size(); i++) {
      int index = i;
      eachAxis(
          "motion[" + design.cases().get(i).name() + "]",
          "how far this load case moves the tool point along %s, contacts sliding",
          QuantityKind.LENGTH,
          (check, k) -> CheckedOutputs.motion(check, check.cases().get(index), k));
    }
    eachAxis(
        "preload-motion",
        "how far the scatter of the preload moves the tool point along %s",
        QuantityKind.LENGTH,
        (check, k) ->
            Optional.of(
                OutputValue.atMost(
                    Math.abs(
                        PreloadScatter.together(check.preloadScatter(), check.design())
                            .component(k)),
                    check.design().targets().repeatability().limit(k))));
  }

  private void seating() {
    add(
        "friction-limit",
        "friction up to which preload and weight pull the holder home",
        QuantityKind.RATIO,
        check ->
            Optional.of(
                OutputValue.atLeast(
                    SelfSeating.worstAtRest(check.waysHome()).restFriction(),
                    check.design().friction().nominal())));
    eachAxis(
        "friction-scale",
        "scale of what friction withholds from the tool point along %s",
        QuantityKind.LENGTH,
        (check, k) ->
            free(
                FrictionBound.of(check.standing(), check.design().friction().nominal())
                    .toolPoint()
                    .component(k)));
    for (int i = 0; i < 3; i++) {
      int k = i;
      outputs.add(
          Output.simulated(
              "scatter." + axes.axis(k).name(),
              "half-width of simulated tool changes, at the coverage of the targets, along "
                  + axes.axis(k).name(),
              QuantityKind.LENGTH,
              (check, scatter) ->
                  scatter == null || scatter.seated() < 2
                      ? Optional.empty()
                      : Optional.of(
                          OutputValue.atMost(
                              scatter.toolPoint().covered().component(k),
                              check.design().targets().repeatability().limit(k)))));
    }
  }

  private static Optional<OutputValue> free(double value) {
    return Optional.of(OutputValue.free(value));
  }

  private void add(
      String name,
      String words,
      QuantityKind kind,
      Function<SeatedCheck, Optional<OutputValue>> reading) {
    outputs.add(Output.of(name, words, kind, reading));
  }

  /** Reads an output along one machine axis. */
  private interface AlongAxis {
    Optional<OutputValue> of(SeatedCheck check, int axis);
  }

  private void eachAxis(String name, String words, QuantityKind kind, AlongAxis reading) {
    for (int i = 0; i < 3; i++) {
      int k = i;
      String axis = axes.axis(k).name();
      add(name + "." + axis, words.replace("%s", axis), kind, check -> reading.of(check, k));
    }
  }
}
