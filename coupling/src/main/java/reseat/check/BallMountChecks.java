package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;

/** Studs, bonds and threads of all balls of a coupling; of each kind of finding the worst ball. */
public final class BallMountChecks {

  private BallMountChecks() {}

  /**
   * Judges the ball mounts. Remedies for a coupling are tried in its whole check; what a mount
   * alone is advised is not told here.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @return findings; none if no stud is described
   */
  public static List<Finding> of(Equilibrium standing, List<CaseResponse> cases) {
    CouplingDesign design = standing.model().design();
    List<StudMount> mounts = new ArrayList<>();
    List<List<Finding>> worst = new ArrayList<>();
    for (int b = 0; b < design.supports().size(); b++) {
      Optional<StudMount> mount = design.supports().get(b).mounting().stud();
      if (mount.isPresent()) {
        String name = design.supports().get(b).name();
        List<Finding> found = one(name, mount.get(), StudLoads.of(standing, cases, b));
        int same = placeOf(mount.get(), mounts);
        if (same < 0) {
          mounts.add(mount.get());
          worst.add(found);
        } else {
          worst.set(same, worse(worst.get(same), found));
        }
      }
    }
    List<Finding> all = new ArrayList<>();
    for (List<Finding> ofMount : worst) {
      for (Finding f : ofMount) {
        all.add(f.withoutUntried());
      }
    }
    return all;
  }

  /**
   * Finds an equal mount. Mounts read from one table are one object, so that the comparison of
   * their many parts, slow when done for the first time, is seldom needed.
   */
  @SuppressWarnings("ReferenceEquality")
  private static int placeOf(StudMount mount, List<StudMount> mounts) {
    for (int i = 0; i < mounts.size(); i++) {
      if (mounts.get(i) == mount || mounts.get(i).equals(mount)) {
        return i;
      }
    }
    return -1;
  }

  /** Equal mounts give the same findings in the same order, with other numbers. */
  private static List<Finding> worse(List<Finding> one, List<Finding> other) {
    List<Finding> worse = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      worse.add(Finding.worstFirst(List.of(one.get(i), other.get(i))).get(0));
    }
    return worse;
  }

  private static List<Finding> one(String where, StudMount mount, StudLoads loads) {
    List<Finding> found = new ArrayList<>();
    found.add(StudStressCheck.of(where, mount, loads));
    if (mount.bond().isPresent()) {
      found.addAll(BondCheck.of(where, mount.bond().get(), loads));
    }
    if (mount.thread().isPresent()) {
      StudThread thread = mount.thread().get();
      found.add(ThreadCheck.of(where, thread, loads));
      double push = -loads.sustained().pull();
      found.addAll(LockNutCheck.of(where, thread, push, Double.POSITIVE_INFINITY));
    }
    return found;
  }
}
