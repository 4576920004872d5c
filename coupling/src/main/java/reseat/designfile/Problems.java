package reseat.designfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;

/** Gathers the problems of one file and, if wanted, the keys that its readers ask for. */
final class Problems {

  private final List<DesignProblem> found = new ArrayList<>();
  private final Map<String, Optional<QuantityKind>> keys = new LinkedHashMap<>();
  private final Map<String, Written> written = new LinkedHashMap<>();
  private final boolean keepsKeys;
  private final KnownQuantities known;

  Problems() {
    this(false);
  }

  Problems(boolean keepsKeys) {
    this.keepsKeys = keepsKeys;
    known = null;
  }

  /** For one more reading of a file: takes quantities that were read before as they are. */
  Problems(KnownQuantities known) {
    keepsKeys = false;
    this.known = known;
  }

  /** Reads a quantity, or recalls what it is. */
  QuantityReading quantity(String text, QuantityKind kind) {
    return known == null ? QuantityText.read(text, kind) : known.read(text, kind);
  }

  /** Keeps a quantity that was read, with its place. */
  void written(Written quantity) {
    written.put(quantity.key(), quantity);
  }

  /** Quantities that were read, by the path of their key, in the order of reading. */
  Map<String, Written> written() {
    return written;
  }

  boolean keepsKeys() {
    return keepsKeys;
  }

  /** Notes a key, by its full path, that may stand in the file. */
  void asked(String key) {
    keys.putIfAbsent(key, Optional.empty());
  }

  /** Notes what kind of quantity a key takes. */
  void asked(String key, QuantityKind kind) {
    keys.put(key, Optional.of(kind));
  }

  /** Keys asked for, with the kind of quantity where one was read. */
  Map<String, Optional<QuantityKind>> keys() {
    return keys;
  }

  void error(int line, int column, String key, String message) {
    add(new DesignProblem(DesignProblem.Severity.ERROR, line, column, key, message));
  }

  void warning(int line, int column, String key, String message) {
    add(new DesignProblem(DesignProblem.Severity.WARNING, line, column, key, message));
  }

  /** Tells a problem once, though the part it stands in serves several supports. */
  private void add(DesignProblem problem) {
    if (!found.contains(problem)) {
      found.add(problem);
    }
  }

  boolean hasErrors() {
    for (DesignProblem problem : found) {
      if (problem.severity() == DesignProblem.Severity.ERROR) {
        return true;
      }
    }
    return false;
  }

  /** All problems in the order of the file. */
  List<DesignProblem> sorted() {
    List<DesignProblem> sorted = new ArrayList<>(found);
    Collections.sort(sorted);
    return List.copyOf(sorted);
  }
}
