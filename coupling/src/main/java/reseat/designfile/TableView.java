package reseat.designfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.space.Vec3;
import reseat.toml.TomlValue;
import reseat.units.NearestWord;

/** A table of a file with the place of its problems and the keys that were asked for. */
class TableView {

  private final TomlValue.Table table;
  private final String path;
  private final Problems problems;
  private final List<String> known = new ArrayList<>();
  private boolean kindUnknown;

  TableView(TomlValue.Table table, String path, Problems problems) {
    this.table = table;
    this.path = path;
    this.problems = problems;
  }

  Problems problems() {
    return problems;
  }

  String path() {
    return path;
  }

  TomlValue.Table table() {
    return table;
  }

  /** Full path of a key of this table. */
  String key(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  private void ask(String name) {
    known.add(name);
    if (problems.keepsKeys()) {
      problems.asked(key(name));
    }
  }

  boolean has(String name) {
    ask(name);
    return table.entries().containsKey(name);
  }

  Optional<TomlValue> find(String name) {
    ask(name);
    TomlValue.Entry e = table.entries().get(name);
    return e == null ? Optional.empty() : Optional.of(e.value());
  }

  /** Registers an error at a key, or at the table if the key is missing. */
  void error(String name, String message) {
    TomlValue.Entry e = table.entries().get(name);
    if (e == null) {
      problems.error(table.line(), table.column(), key(name), message);
    } else if (isReadable(e.value())) {
      problems.error(e.value().line(), e.value().column(), key(name), message);
    }
  }

  /** Whether nothing has been said yet about how the value is written. */
  private static boolean isReadable(TomlValue value) {
    return !(value instanceof TomlValue.Unreadable);
  }

  /** Registers a warning at a key. */
  void warn(String name, String message) {
    TomlValue.Entry e = table.entries().get(name);
    if (e == null) {
      problems.warning(table.line(), table.column(), key(name), message);
    } else if (isReadable(e.value())) {
      problems.warning(e.value().line(), e.value().column(), key(name), message);
    }
  }

  void wrongSort(String name, TomlValue value, String allowed) {
    if (isReadable(value)) {
      problems.error(
          value.line(),
          value.column(),
          key(name),
          "found " + value.sort() + "; allowed is " + allowed);
    }
  }

  /** Whether the value is a table. */
  boolean isTable(String name) {
    ask(name);
    TomlValue.Entry e = table.entries().get(name);
    return e != null && e.value() instanceof TomlValue.Table;
  }

  /** Whether the value is a list. */
  boolean isList(String name) {
    ask(name);
    TomlValue.Entry e = table.entries().get(name);
    return e != null && e.value() instanceof TomlValue.Array;
  }

  /**
   * Makes what a constructor refused a problem at this table.
   *
   * <p>Readers catch for themselves rather than hand over a lambda: there are dozens of parts, and
   * each first lambda at a place costs a fifth of a millisecond of a short start.
   *
   * @return empty, for the part that there is not
   */
  <T> Optional<T> refused(IllegalArgumentException reason) {
    problems.error(table.line(), table.column(), path, reason.getMessage());
    return Optional.empty();
  }

  /** Text that may be missing. */
  String text(String name, String otherwise) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get() instanceof TomlValue.Text text) {
      return text.text();
    }
    wrongSort(name, value.get(), "text between quotation marks");
    return otherwise;
  }

  /** Text that must be there and not be blank. */
  String requiredText(String name, String harmless) {
    if (!has(name)) {
      error(name, "is missing; write a text between quotation marks");
      return harmless;
    }
    String text = text(name, harmless);
    if (text.isBlank()) {
      error(name, "found blank text; write a name");
      return harmless;
    }
    return text;
  }

  /** true or false. */
  boolean flag(String name, boolean otherwise) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get() instanceof TomlValue.Flag flag) {
      return flag.value();
    }
    wrongSort(name, value.get(), "true or false, without quotation marks");
    return otherwise;
  }

  /** One word of a few. */
  <T> Optional<T> choice(String name, Map<String, T> words) {
    if (!has(name)) {
      return Optional.empty();
    }
    String word = text(name, "");
    if (words.containsKey(word)) {
      return Optional.of(words.get(word));
    }
    // Which other keys may stand here depends on the kind.
    kindUnknown |= name.equals("kind");
    if (find(name).orElseThrow() instanceof TomlValue.Text) {
      error(
          name,
          "found \""
              + word
              + "\"; allowed is "
              + inOrder(words)
              + NearestWord.to(word, words.keySet())
                  .map(n -> "; did you mean \"" + n + "\"?")
                  .orElse(""));
    }
    return Optional.empty();
  }

  /** One word of a few that must be there. */
  <T> Optional<T> requiredChoice(String name, Map<String, T> words) {
    if (!has(name)) {
      kindUnknown |= name.equals("kind");
      error(name, "is missing; allowed is " + inOrder(words));
      tellMisspelt(name);
      return Optional.empty();
    }
    return choice(name, words);
  }

  /** Reports the key that may have been meant for a missing one, and only once. */
  private void tellMisspelt(String name) {
    List<String> unknown =
        table.entries().keySet().stream().filter(k -> !known.contains(k)).toList();
    NearestWord.to(name, unknown)
        .ifPresent(
            k -> {
              ask(k);
              error(k, "is not a known key here; did you mean \"" + name + "\"?");
            });
  }

  /** The words in an order that is the same in every run, which that of a Map is not. */
  private static String inOrder(Map<String, ?> words) {
    return String.join(", ", words.keySet().stream().sorted().toList());
  }

  /** A list of texts. */
  List<String> texts(String name, List<String> otherwise) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (!(value.get() instanceof TomlValue.Array array)) {
      wrongSort(name, value.get(), "a list of texts");
      return otherwise;
    }
    List<String> texts = new ArrayList<>();
    for (TomlValue one : array.values()) {
      if (!(one instanceof TomlValue.Text text)) {
        wrongSort(name, array, "a list of texts");
        return otherwise;
      }
      texts.add(text.text());
    }
    return List.copyOf(texts);
  }

  /** A direction: a signed axis of the coupling such as "-z", or three plain numbers. */
  Optional<Vec3> direction(String name) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof TomlValue.Text text) {
      Optional<Vec3> axis = SignedAxis.of(text.text());
      if (axis.isEmpty()) {
        error(name, "found \"" + text.text() + "\"; allowed is " + SignedAxis.ALLOWED);
      }
      return axis;
    }
    if (value.get() instanceof TomlValue.Array array && array.values().size() == 3) {
      double[] c = new double[3];
      for (int i = 0; i < 3; i++) {
        if (!(array.values().get(i) instanceof TomlValue.Numeral n)
            || !Double.isFinite(n.value())) {
          error(name, "a direction has three plain numbers without unit, such as [0, 0, -1]");
          return Optional.empty();
        }
        c[i] = n.value();
      }
      Vec3 v = new Vec3(c[0], c[1], c[2]);
      if (!(v.norm() > 0) || !Double.isFinite(v.norm())) {
        error(name, "found a direction of no length or too large; write for instance [0, 0, -1]");
        return Optional.empty();
      }
      return Optional.of(v.unit());
    }
    error(name, "found " + value.get().sort() + "; allowed is " + SignedAxis.ALLOWED);
    return Optional.empty();
  }

  /** Reports the keys that nobody asked for. */
  void close() {
    for (Map.Entry<String, TomlValue.Entry> e : table.entries().entrySet()) {
      if (!kindUnknown && !known.contains(e.getKey()) && isReadable(e.getValue().value())) {
        List<String> sorted = known.stream().distinct().sorted().toList();
        problems.error(
            e.getValue().line(),
            e.getValue().column(),
            key(e.getKey()),
            "is not a known key here;"
                + NearestWord.to(e.getKey(), sorted)
                    .map(n -> " did you mean \"" + n + "\"?")
                    .orElse("")
                + " known keys: "
                + String.join(", ", sorted));
      }
    }
  }

  /** Keys in the order written, for tables whose keys are names given by the user. */
  List<String> names() {
    return List.copyOf(table.entries().keySet());
  }
}
