package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.BondCheck;
import reseat.check.Finding;
import reseat.check.LockNutCheck;
import reseat.check.PivotCheck;
import reseat.check.StudLoads;
import reseat.check.StudStressCheck;
import reseat.check.ThreadCheck;
import reseat.design.AdjustmentTask;
import reseat.design.BallMountDesign;
import reseat.design.PivotDuty;
import reseat.design.StudThread;
import reseat.mount.FluidFilmPad;
import reseat.mount.StudCompliance;
import reseat.mount.ThreadComparison;
import reseat.mount.ThreadDuty;
import reseat.mount.ThreadStrength;

/** One ball mount at a glance. */
public final class MountStudy {

  private static final String WHERE = "this mount";

  private MountStudy() {}

  /**
   * Looks at a mount.
   *
   * @param design the mount
   * @return everything about it
   */
  public static MountResult run(BallMountDesign design) {
    StudLoads loads =
        new StudLoads(
            design.sustained(), List.of(new StudLoads.Peak("the peak load", design.peak())));
    StudCompliance compliance = design.mount().compliance();
    Optional<StudThread> thread = design.mount().thread();
    Optional<ThreadStrength> strength = thread.flatMap(StudThread::strength);
    Optional<MountResult.PivotState> pivot = design.pivot().map(p -> pivot(p, design, compliance));
    return new MountResult(
        design,
        loads,
        compliance,
        thread.map(t -> ThreadCheck.axialForce(t, loads)).orElse(0.0),
        strength,
        thread.flatMap(StudThread::lockNut).map(n -> n.withPush(design.press())),
        strength.flatMap(s -> comparison(design, s)),
        pivot,
        design.adjustment().map(AdjustmentTask::steps).orElse(List.of()),
        findings(design, loads, pivot));
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

  private static MountResult.PivotState pivot(
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
    return new MountResult.PivotState(
        duty,
        force,
        duty.seat().slidingStiffness(force),
        duty.seat().stickingStiffness(force),
        duty.seat().friction(force, duty.friction()),
        pad);
  }

  private static List<Finding> findings(
      BallMountDesign design, StudLoads loads, Optional<MountResult.PivotState> pivot) {
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
