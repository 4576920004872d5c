package reseat.remedy;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.check.Finding;
import reseat.design.CheckKind;

/** What stood in the way wherever the worst open check was cured. */
final class Tally {

  private final CheckKind worst;
  private final Map<CheckKind, Integer> inTheWay = new EnumMap<>(CheckKind.class);
  private boolean cured;

  Tally(CheckKind worst) {
    this.worst = worst;
  }

  void add(Trial trial) {
    boolean looked = false;
    Set<CheckKind> open = EnumSet.noneOf(CheckKind.class);
    for (Finding f : trial.findings()) {
      looked |= f.check() == worst;
      if (Trial.open(f)) {
        open.add(f.check());
      }
    }
    // a coupling that does not stand has not been asked
    if (open.contains(worst) || !looked) {
      return;
    }
    cured = true;
    for (CheckKind kind : open) {
      inTheWay.merge(kind, 1, Integer::sum);
    }
  }

  Optional<Conflict> conflict() {
    CheckKind most = null;
    for (Map.Entry<CheckKind, Integer> e : inTheWay.entrySet()) {
      if (most == null || e.getValue() > inTheWay.get(most)) {
        most = e.getKey();
      }
    }
    return most == null ? Optional.empty() : Optional.of(new Conflict(worst, most));
  }

  Optional<CheckKind> uncured() {
    return cured ? Optional.empty() : Optional.of(worst);
  }
}
