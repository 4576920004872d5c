package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.StudCompliance;
import reseat.ballmount.ThreadComparison;
import reseat.ballmount.ThreadDuty;
import reseat.ballmount.ThreadStrength;
import reseat.check.AcceptedDecisions;
import reseat.check.BondCheck;
import reseat.check.Finding;
import reseat.check.LockNutCheck;
import reseat.check.PivotCheck;
import reseat.check.StudLoads;
import reseat.check.StudStressCheck;
import reseat.check.ThreadCheck;
import reseat.design.Acceptance;
import reseat.design.AdjustmentTask;
import reseat.design.AssumedValue;
import reseat.design.BallMountDesign;
import reseat.design.InputDoubt;
import reseat.design.PivotDuty;
import reseat.design.StudThread;
import reseat.designfile.BallMountFile;

/** One ball mount at a glance. */
public final class BallMountStudy {

  private static final String WHERE = "this mount";

  private BallMountStudy() {}

  /**
   * Looks at a mount built in code: nothing is doubted, accepted or assumed.
   *
   * @param design the mount
   * @return everything about it
   */
  public static BallMountResult run(BallMountDesign design) {
    return run(design, List.of(), List.of(), List.of());
  }

  /**
   * Looks at a mount as its file states it, with doubts about the input among the findings and the
   * decisions of the file laid over them.
   *
   * @param file the file, free of errors
   * @return everything about it
   * @throws java.util.NoSuchElementException if the file has errors
   */
  public static BallMountResult run(BallMountFile file) {
    return run(file.design().orElseThrow(), file.doubts(), file.accepted(), file.assumed());
  }

  private static BallMountResult run(
      BallMountDesign design,
      List<InputDoubt> doubts,
      List<Acceptance> accepted,
      List<AssumedValue> assumed) {
    StudLoads loads =
        new StudLoads(
            design.sustained(), List.of(new StudLoads.Peak("the peak load", design.peak())));
    StudCompliance compliance = design.mount().compliance();
    Optional<StudThread> thread = design.mount().thread();
    Optional<ThreadStrength> strength = thread.flatMap(StudThread::strength);
    Optional<BallMountResult.PivotState> pivot =
        design.pivot().map(p -> pivot(p, design, compliance));
    return new BallMountResult(
        design,
        loads,
        compliance,
        thread.map(t -> ThreadCheck.axialForce(t, loads)).orElse(0.0),
        strength,
        thread.flatMap(StudThread::lockNut).map(n -> n.withPush(design.press())),
        strength.flatMap(s -> comparison(design, s)),
        pivot,
        design.adjustment().map(AdjustmentTask::steps).orElse(List.of()),
        assumed,
        decided(findings(design, loads, pivot), doubts, accepted));
  }

  private static Optional<ThreadComparison> comparison(
      BallMountDesign design, ThreadStrength strength) {
    StudThread thread = design.mount().thread().orElseThrow();
    double load = Math.max(Math.abs(design.peak().pull()), Math.abs(design.press()));
    return design
        .otherThread()
        .filter(other -> load > 0)
        .map(
            other ->
                new ThreadComparison(
                    new ThreadDuty(
                        load,
                        thread.engagement(),
                        strength.screwUltimate(),
                        strength.nutUltimate(),
                        thread.friction(),
                        thread.lockNut().map(n -> n.torque().bearingDiameter()).orElse(0.0),
                        ThreadDuty.HAND_RESOLUTION,
                        thread.limits().fit()),
                    thread.limits().thread(),
                    other));
  }

  private static BallMountResult.PivotState pivot(
      PivotDuty duty, BallMountDesign design, StudCompliance stud) {
    double force = design.press();
    Optional<FluidFilmPad> pad =
        duty.film()
            .map(
                f ->
                    FluidFilmPad.on(
                        force,
                        f.stiffness(),
                        f.tiltStiffness(),
                        f.padRadius(),
                        f.thickness(),
                        duty.seat(),
                        duty.friction(),
                        stud));
    return new BallMountResult.PivotState(
        duty,
        force,
        duty.seat().slidingStiffness(force),
        duty.seat().stickingStiffness(force),
        duty.seat().friction(force, duty.friction()),
        pad);
  }

  private static List<Finding> decided(
      List<Finding> findings, List<InputDoubt> doubts, List<Acceptance> accepted) {
    findings.addAll(AcceptedDecisions.doubts(doubts, accepted));
    return AcceptedDecisions.over(findings, accepted, doubts);
  }

  private static List<Finding> findings(
      BallMountDesign design, StudLoads loads, Optional<BallMountResult.PivotState> pivot) {
    List<Finding> found = new ArrayList<>();
    found.add(StudStressCheck.of(WHERE, design.mount(), loads));
    design.mount().bond().ifPresent(b -> found.addAll(BondCheck.of(WHERE, b, loads)));
    design
        .mount()
        .thread()
        .ifPresent(
            t -> {
              found.add(ThreadCheck.of(WHERE, t, loads));
              found.addAll(LockNutCheck.of(WHERE, t, design.press(), design.targets().height()));
            });
    pivot.ifPresent(
        p -> {
          found.addAll(PivotCheck.of(p.duty(), design.ballMaterial(), loads));
          p.pad().ifPresent(pad -> found.addAll(PivotCheck.pad(pad, design.targets().tilt())));
        });
    return found;
  }
}
