package reseat.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.check.Depth;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.designfile.AlterableDesign;
import reseat.designfile.DesignFile;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;
import reseat.remount.Cause;
import reseat.repeatability.LinearScatter;
import reseat.space.Vec3;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;

/**
 * The search for what would halve the scatter along each machine axis and the motion under each
 * load case along its largest axis: the levers of remedies, one at a time, nearest first, by the
 * closed form. Whether the whole check holds with the change is looked at for those that are told.
 */
public final class HalvingSearch {

  /** Stands for the motion of a holder that lifts off, m: larger than any other. */
  private static final double LOST = 1e9;

  private final AlterableDesign file;
  private final SeatedCheck check;

  private HalvingSearch(AlterableDesign file, SeatedCheck check) {
    this.file = file;
    this.check = check;
  }

  /** A quantity that is to be halved; the load case is negative for the scatter. */
  private record Sought(int loadCase, int axis, double now) {}

  /** Scatter and motions of one design. */
  private record Sizes(Optional<Vec3> scatter, List<Vec3> motions) {

    double of(Sought s) {
      if (s.loadCase() < 0) {
        return scatter.isPresent() ? scatter.get().component(s.axis()) : Double.NaN;
      }
      return s.loadCase() < motions.size()
          ? Math.abs(motions.get(s.loadCase()).component(s.axis()))
          : Double.NaN;
    }
  }

  /**
   * Searches.
   *
   * @param file the design file
   * @param check its check
   * @return one for each machine axis, one for each load case that moves the tool point
   */
  public static List<Halving> of(AlterableDesign file, SeatedCheck check) {
    return new HalvingSearch(file, check).found();
  }

  private List<Halving> found() {
    Sizes now = sizes(check.standing());
    List<Sought> all = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      add(all, now, -1, k);
    }
    for (int i = 0; i < now.motions().size(); i++) {
      int largest = 0;
      for (int k = 1; k < 3; k++) {
        Vec3 m = now.motions().get(i);
        largest = Math.abs(m.component(k)) > Math.abs(m.component(largest)) ? k : largest;
      }
      add(all, now, i, largest);
    }
    return searched(all);
  }

  private static void add(List<Sought> all, Sizes now, int loadCase, int axis) {
    double size = now.of(new Sought(loadCase, axis, 0));
    if (size > 0 && size < LOST) {
      all.add(new Sought(loadCase, axis, size));
    }
  }

  private record Step(Ladder ladder, Rung rung) {}

  private List<Halving> searched(List<Sought> all) {
    FileKeys keys = new FileKeys(file);
    List<Ladder> ladders = new ArrayList<>(PullLadders.of(keys));
    ladders.addAll(SeatLadders.of(keys));
    ladders.addAll(MountLadders.of(keys));
    List<Step> steps = new ArrayList<>();
    for (Ladder l : ladders) {
      for (Rung r : l.rungs()) {
        steps.add(new Step(l, r));
      }
    }
    steps.sort(Comparator.comparingDouble(s -> s.rung().distance()));
    Halving[] found = new Halving[all.size()];
    int left = found.length;
    for (Step s : steps) {
      if (left == 0) {
        break;
      }
      DesignFile read = file.with(s.rung().alterations());
      Optional<Sizes> sizes =
          read.design().isPresent() ? sizes(read.design().get()) : Optional.empty();
      for (int i = 0; i < found.length && sizes.isPresent(); i++) {
        double then = sizes.get().of(all.get(i));
        if (found[i] == null && then <= 0.5 * all.get(i).now()) {
          Move move = new Move(s.ladder().lever(), s.ladder().from(), s.rung().to());
          found[i] = told(all.get(i), Optional.of(move), then, holds(read));
          left--;
        }
      }
    }
    List<Halving> told = new ArrayList<>();
    for (int i = 0; i < found.length; i++) {
      Sought s = all.get(i);
      told.add(found[i] == null ? told(s, Optional.empty(), s.now(), false) : found[i]);
    }
    return told;
  }

  private static boolean holds(DesignFile read) {
    return CheckStudy.run(StatedDesign.of(read), Depth.SIMULATED).verdict() == Verdict.HOLDS;
  }

  private static Optional<Sizes> sizes(CouplingDesign design) {
    try {
      Equilibrium standing = CouplingModel.of(design).standing();
      return standing.lifted() ? Optional.empty() : Optional.of(sizes(standing));
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Sizes sizes(Equilibrium standing) {
    CouplingDesign design = standing.model().design();
    List<Vec3> motions = new ArrayList<>();
    CouplingStiffness sticking = CouplingStiffness.of(standing, CouplingStiffness.Bound.STICKING);
    for (CaseResponse r : CaseResponse.all(standing, sticking)) {
      motions.add(r.liftsOff() ? new Vec3(LOST, LOST, LOST) : design.axes().of(r.motion().shift()));
    }
    return new Sizes(
        LinearScatter.of(standing).map(l -> l.halfWidths(design.targets().coverage())), motions);
  }

  private Halving told(Sought s, Optional<Move> move, double then, boolean holds) {
    CouplingDesign design = check.design();
    String axis = design.axes().axis(s.axis()).name();
    if (s.loadCase() < 0) {
      LinearScatter linear = LinearScatter.of(check.standing()).orElseThrow();
      Cause most = Cause.FRICTION;
      for (Cause c : Cause.values()) {
        most = linear.share(c, s.axis()) > linear.share(most, s.axis()) ? c : most;
      }
      return new Halving(
          "", axis, s.now(), most.words(), linear.share(most, s.axis()), move, then, holds);
    }
    double mountings = 0;
    for (CouplingStiffness.Share share :
        check
            .frictionless()
            .stiffness()
            .shares(design.toolPoint(), design.axes().axis(s.axis()).direction())) {
      mountings += share.mounting() ? share.share() : 0;
    }
    boolean studs = mountings > 0.5;
    return new Halving(
        check.cases().get(s.loadCase()).loadCase().name(),
        axis,
        s.now(),
        studs ? "ball mountings" : "contacts",
        studs ? mountings : 1 - mountings,
        move,
        then,
        holds);
  }
}
