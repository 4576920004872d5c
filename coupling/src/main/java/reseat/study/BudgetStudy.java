package reseat.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import reseat.budget.BudgetLine;
import reseat.budget.ErrorBudget;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.interchange.LinearStack;
import reseat.interchange.Owner;
import reseat.numerics.Distribution;
import reseat.remount.CauseShares;
import reseat.space.Vec3;

/** Draws up the error budget of a design from its simulated mountings and its tolerances. */
final class BudgetStudy {

  /** Coverage factor for about 95 % (JCGM 100:2008, 6.3.3). */
  private static final double COVERAGE = 2;

  private BudgetStudy() {}

  static ErrorBudget of(CouplingDesign design, CauseShares causes, Optional<LinearStack> stack) {
    List<BudgetLine> lines = new ArrayList<>();
    for (CauseShares.Share share : causes.causes()) {
      lines.add(random(design, share));
    }
    stack.ifPresent(s -> lines.addAll(systematic(s)));
    return new ErrorBudget(lines, COVERAGE);
  }

  private static BudgetLine random(CouplingDesign design, CauseShares.Share share) {
    return switch (share.cause()) {
      case FRICTION -> line(share, design.friction().nominal(), design.remount().friction(), "1");
      case PRELOAD_SIZE -> preload(design, share, true);
      case PRELOAD_LINE -> preload(design, share, false);
      case TEMPERATURE -> line(share, 1, design.remount().temperature(), "K");
      case FILM -> line(share, 1, design.remount().film(), "m");
      case APPROACH ->
          new BudgetLine(
              share.cause().words(),
              BudgetLine.Nature.RANDOM,
              0,
              "",
              "which contacts close last",
              share.alone());
    };
  }

  private static BudgetLine line(
      CauseShares.Share share, double nominal, Distribution spread, String unit) {
    return new BudgetLine(
        share.cause().words(),
        BudgetLine.Nature.RANDOM,
        nominal * spread.standardDeviation(),
        unit,
        spread.shape().words(),
        share.alone());
  }

  /** With several preloads there is no single number to tell; with one there is. */
  private static BudgetLine preload(CouplingDesign design, CauseShares.Share share, boolean size) {
    double input = 0;
    String shape = "";
    if (design.preloads().size() == 1) {
      Preload p = design.preloads().get(0);
      Distribution spread = size ? p.forceSpread() : p.lineSpread();
      input = (size ? p.force() : 1) * spread.standardDeviation();
      shape = spread.shape().words();
    }
    String unit = input == 0 ? "" : size ? "N" : "m";
    return new BudgetLine(
        share.cause().words(), BudgetLine.Nature.RANDOM, input, unit, shape, share.alone());
  }

  private static List<BudgetLine> systematic(LinearStack stack) {
    List<BudgetLine> lines = new ArrayList<>();
    for (Owner owner : EnumSet.of(Owner.POST, Owner.HOLDER)) {
      Vec3 sum = stack.sum(EnumSet.of(owner)).deviation();
      if (sum.norm() > 0) {
        lines.add(
            new BudgetLine(
                "tolerances of the " + owner.words(),
                BudgetLine.Nature.SYSTEMATIC,
                0,
                "",
                "root sum square",
                sum));
      }
    }
    return lines;
  }
}
