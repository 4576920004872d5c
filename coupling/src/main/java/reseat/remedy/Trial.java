package reseat.remedy;

import java.util.List;
import java.util.Optional;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.OrderedCheck;
import reseat.check.Said;
import reseat.check.Subject;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.design.InputDoubt;
import reseat.design.Preload;
import reseat.designfile.DesignFile;
import reseat.equilibrium.NoEquilibriumException;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/**
 * A design file with changes, taken through the whole check.
 *
 * @param findings what was found, worst first
 */
record Trial(List<Finding> findings) {

  /** Part of a limit that is to be left. */
  private static final double IN_HAND = 0.05;

  /** Part of a target of repeatability that is to be left. */
  private static final double IN_HAND_OF_SCATTER = 0.1;

  /** Copies the list. */
  Trial {
    findings = List.copyOf(findings);
  }

  /**
   * The check of a file; empty if it has errors, cannot be set so, or does not stand.
   *
   * @param order the checks, those first that are the likeliest to be open
   * @param gaps whether the gaps of what must not touch are looked at
   * @param whole whether to go on where something is open
   */
  static Optional<Trial> of(
      DesignFile read, Depth depth, List<OrderedCheck> order, boolean gaps, boolean whole) {
    if (read.design().isEmpty() || beyondDevice(read)) {
      return Optional.empty();
    }
    if (!whole && inDoubt(read)) {
      return Optional.empty();
    }
    try {
      boolean toDecide = !whole && read.accepted().isEmpty();
      return Optional.of(
          new Trial(
              CheckStudy.findings(
                  StatedDesign.of(read),
                  depth,
                  order,
                  gaps,
                  found -> open(found, !whole, toDecide))));
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * The same check as anybody runs of a file; empty if it has errors, cannot be set so, or does not
   * stand. What a device can keep to is judged against the band of preload here alone.
   */
  static Optional<Trial> whole(DesignFile read, Depth depth) {
    if (read.design().isEmpty() || beyondDevice(read)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Trial(CheckStudy.run(StatedDesign.of(read), depth).findings()));
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static boolean open(List<Finding> found, boolean failures, boolean toDecide) {
    for (Finding f : found) {
      if (failures && f.judged() == Judged.FAILS) {
        return true;
      }
      if (toDecide && f.judged() == Judged.DECIDE && f.said().key() != Said.SEATING_NOT_LOOKED_AT) {
        return true;
      }
    }
    return false;
  }

  private static boolean inDoubt(DesignFile read) {
    for (InputDoubt d : read.doubts()) {
      if (!d.confirmedBy(read.accepted())) {
        return true;
      }
    }
    return false;
  }

  private static boolean beyondDevice(DesignFile read) {
    for (Preload p : read.design().orElseThrow().preloads()) {
      if (p.modelled().isPresent()
          && p.modelled().get().mostForce().isPresent()
          && p.force() > p.modelled().get().mostForce().get()) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether everything holds, but for what the closed form of tool changes cannot say: seating in
   * doubt, and a scatter that simulated changes were found to keep and that has not grown.
   *
   * @param before the file as it stands, tool changes simulated
   * @param closed the same by the closed form
   */
  boolean mayHold(Trial before, Trial closed) {
    for (Finding f : findings) {
      if (open(f) && f.said().key() != Said.SEATING_NOT_LOOKED_AT && !kept(f, before, closed)) {
        return false;
      }
    }
    return true;
  }

  private static boolean kept(Finding f, Trial before, Trial closed) {
    return f.check() == CheckKind.REPEATABILITY
        && before.same(f).filter(g -> !open(g)).isPresent()
        && closed.same(f).filter(g -> f.margin() >= g.margin() - 1e-9).isPresent();
  }

  boolean holds() {
    return Verdict.of(findings) == Verdict.HOLDS;
  }

  static boolean open(Finding f) {
    return f.judged() == Judged.FAILS || f.judged() == Judged.DECIDE;
  }

  /** Whether each deciding figure has room, or no less of it than it had. */
  boolean hasRoom(Trial before) {
    for (Finding f : findings) {
      if (f.judged() == Judged.HOLDS && figure(f)) {
        double wanted = f.check() == CheckKind.REPEATABILITY ? IN_HAND_OF_SCATTER : IN_HAND;
        if (f.margin() < wanted) {
          Optional<Finding> was = before.same(f);
          boolean kept =
              was.isPresent()
                  && was.get().judged() == Judged.HOLDS
                  && was.get().margin() <= f.margin() + 1e-9;
          if (!kept) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Whether a finding is a figure beside a limit, which could be nearer to it or farther. */
  static boolean figure(Finding f) {
    return switch (f.check()) {
      case INPUT, CONSTRAINT, GROOVE_DIRECTION, TOOL_CHANGE_SEATING -> false;
      default -> f.limit() != 0;
    };
  }

  /** The finding of the same check about the same subject. */
  Optional<Finding> same(Finding f) {
    for (Finding g : findings) {
      if (g.check() == f.check()
          && same(g.subject(), f.subject())
          && g.measure() == f.measure()
          && g.judged() != Judged.ADVICE) {
        return Optional.of(g);
      }
    }
    return Optional.empty();
  }

  private static boolean same(Subject one, Subject other) {
    return one.kind() == other.kind() && one.name().equals(other.name());
  }

  /** Whether a check has anything open. */
  boolean open(CheckKind kind) {
    for (Finding f : findings) {
      if (f.check() == kind && open(f)) {
        return true;
      }
    }
    return false;
  }

  /** The worst finding of a check that is a figure; empty if there is none. */
  Optional<Finding> tightest(CheckKind kind) {
    Finding worst = null;
    for (Finding f : findings) {
      if (f.check() == kind
          && f.judged() != Judged.ADVICE
          && figure(f)
          && (worst == null || f.margin() < worst.margin())) {
        worst = f;
      }
    }
    return Optional.ofNullable(worst);
  }
}
