package reseat.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding;
import reseat.design.CheckKind;

/** What a change costs in the quantities that decide. */
final class Costs {

  /** Loss of room that is told, as a part of the limit. */
  private static final double TOLD = 0.02;

  /** Beyond this room, as a part of the limit, a quantity decides nothing. */
  private static final double AMPLE = 1;

  private Costs() {}

  private record Ranked(double room, Cost cost) {}

  static List<Cost> between(Trial before, Trial after) {
    List<Ranked> found = new ArrayList<>();
    for (CheckKind kind : CheckKind.values()) {
      Optional<Finding> to = after.tightest(kind);
      Optional<Finding> from = to.flatMap(before::same).or(() -> before.tightest(kind));
      if (to.isPresent()
          && from.isPresent()
          && from.get().measure() == to.get().measure()
          && to.get().margin() < AMPLE
          && to.get().margin() < from.get().margin() - TOLD) {
        found.add(
            new Ranked(
                to.get().margin(),
                new Cost(
                    kind,
                    to.get().subject().name(),
                    from.get().value(),
                    to.get().value(),
                    to.get().measure())));
      }
    }
    found.sort(Comparator.comparingDouble(Ranked::room));
    List<Cost> costs = new ArrayList<>();
    for (Ranked r : found) {
      costs.add(r.cost());
    }
    return costs;
  }
}
