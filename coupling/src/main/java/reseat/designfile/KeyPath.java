package reseat.designfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.toml.TomlText;
import reseat.toml.TomlValue;

/**
 * Where a value stands in a document: names with dots between them, each with a choice in brackets
 * where it names a list.
 *
 * @param steps from the top table down; at least one
 */
record KeyPath(List<Step> steps) {

  private static final String ALL = "*";

  /** A name, and which one of a list is meant; the choice is empty if none was written. */
  record Step(String name, String choice) {}

  /** Copies the list. */
  KeyPath {
    steps = List.copyOf(steps);
  }

  /**
   * Reads a path.
   *
   * @param text for instance {@code load_case[rough].force.X}
   * @return the path
   * @throws IllegalArgumentException if it is not written so
   */
  static KeyPath of(String text) {
    List<Step> steps = new ArrayList<>();
    int at = 0;
    while (at <= text.length()) {
      int end = at;
      while (end < text.length() && text.charAt(end) != '.' && text.charAt(end) != '[') {
        end++;
      }
      String name = text.substring(at, end).strip();
      String choice = "";
      if (end < text.length() && text.charAt(end) == '[') {
        int close = text.indexOf(']', end);
        choice = close < 0 ? "" : text.substring(end + 1, close).strip();
        if (choice.isEmpty()) {
          throw wrong(text);
        }
        end = close + 1;
      }
      if (name.isEmpty() || (end < text.length() && text.charAt(end) != '.')) {
        throw wrong(text);
      }
      steps.add(new Step(name, choice));
      at = end + 1;
    }
    return new KeyPath(steps);
  }

  /**
   * Resolves {@code [*]}, which means all of a list.
   *
   * @param root the top table
   * @return this path, or one for each table or value that it means, by number
   * @throws IllegalArgumentException if it stands behind what is no list
   */
  List<KeyPath> each(TomlValue.Table root) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).choice().equals(ALL)) {
        List<Step> up = new ArrayList<>(steps.subList(0, i + 1));
        up.set(i, new Step(steps.get(i).name(), ""));
        // a list is reached without choice: the choice would lead into it
        if (!(new KeyPath(up).find(root) instanceof TomlValue.Array list)) {
          throw new IllegalArgumentException(
              upTo(i) + " is no list in this file, so [*] means nothing there");
        }
        List<KeyPath> each = new ArrayList<>();
        for (int n = 1; n <= list.values().size(); n++) {
          List<Step> one = new ArrayList<>(steps);
          one.set(i, new Step(steps.get(i).name(), Integer.toString(n)));
          each.addAll(new KeyPath(one).each(root));
        }
        return each;
      }
    }
    return List.of(this);
  }

  private static IllegalArgumentException wrong(String text) {
    return new IllegalArgumentException(
        "found the key \""
            + text
            + "\"; write it as in the design file, names with dots between them, for instance"
            + " preload.force, tool_point.at[x] or load_case[rough].force");
  }

  /**
   * Writes the path as problems of the file name it, with the number of each table of a list.
   *
   * @param root the top table
   * @return for instance {@code load_case[3].force}; a number after a list of plain values is left
   *     out
   */
  String inFile(TomlValue.Table root) {
    StringBuilder path = new StringBuilder();
    TomlValue at = root;
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      path.append(i == 0 ? "" : ".").append(step.name());
      at = at instanceof TomlValue.Table t ? below(t, step.name()) : null;
      boolean last = i == steps.size() - 1;
      if (at instanceof TomlValue.Array list && (!last || !step.choice().isEmpty())) {
        int index = index(list, i);
        at = list.values().get(index);
        if (at instanceof TomlValue.Table) {
          path.append('[').append(index + 1).append(']');
        }
      }
    }
    return path.toString();
  }

  /**
   * Finds the value.
   *
   * @param root the top table
   * @return the value; null if it is absent
   */
  TomlValue find(TomlValue.Table root) {
    TomlValue at = root;
    for (int i = 0; i < steps.size(); i++) {
      at = at instanceof TomlValue.Table t ? below(t, steps.get(i).name()) : null;
      boolean inside = i < steps.size() - 1 || !steps.get(i).choice().isEmpty();
      if (at instanceof TomlValue.Array list && inside) {
        at = list.values().get(index(list, i));
      }
    }
    return at;
  }

  /**
   * Puts a value in.
   *
   * @param root the top table
   * @param value stands at the place of the one it replaces, or of its table if that is absent
   * @return a copy of the top table with that value
   * @throws IllegalArgumentException if the path does not lead to a place in the file
   */
  TomlValue.Table with(TomlValue.Table root, TomlValue value) {
    return with(root, 0, value);
  }

  private TomlValue.Table with(TomlValue.Table table, int depth, TomlValue value) {
    Step step = steps.get(depth);
    boolean last = depth == steps.size() - 1;
    TomlValue.Entry old = table.entries().get(step.name());
    TomlValue made;
    if (old != null && old.value() instanceof TomlValue.Array list && !(last && all(step))) {
      int index = index(list, depth);
      List<TomlValue> values = new ArrayList<>(list.values());
      TomlValue element = values.get(index);
      values.set(
          index,
          last
              ? ValueReplacement.of(value, element.line(), element.column())
              : with(table(element, depth), depth + 1, value));
      made = new TomlValue.Array(values, list.line(), list.column());
    } else if (!all(step)) {
      throw new IllegalArgumentException(
          upTo(depth) + " is no list in this file, so [" + step.choice() + "] means nothing there");
    } else if (last) {
      made =
          old == null
              ? ValueReplacement.of(value, table.line(), table.column())
              : ValueReplacement.of(value, old.value().line(), old.value().column());
    } else if (old == null) {
      made = with(new TomlValue.Table(Map.of(), table.line(), table.column()), depth + 1, value);
    } else {
      made = with(table(old.value(), depth), depth + 1, value);
    }
    Map<String, TomlValue.Entry> entries = new LinkedHashMap<>(table.entries());
    entries.put(
        step.name(),
        old == null
            ? new TomlValue.Entry(made, table.line(), table.column())
            : new TomlValue.Entry(made, old.line(), old.column()));
    return new TomlValue.Table(entries, table.line(), table.column());
  }

  /**
   * Adds an absent key to the text of a file, in the nearest table that can be added to.
   *
   * @param text the whole text
   * @param root the top table read from it
   * @param written the value as TOML writes it
   * @return the text with the key
   */
  String addedTo(String text, TomlValue.Table root, String written) {
    TomlValue.Table home = root;
    int below = 0;
    TomlValue at = root;
    for (int i = 0; i < steps.size() - 1 && at instanceof TomlValue.Table t; i++) {
      TomlValue.Entry entry = t.entries().get(steps.get(i).name());
      at = entry == null ? null : entry.value();
      if (at instanceof TomlValue.Array list) {
        at = list.values().get(index(list, i));
      }
      // A header with more names than lead here belongs to a table further down.
      if (at instanceof TomlValue.Table found
          && (TomlText.isBraced(text, found) || TomlText.headerNames(text, found) == i + 1)) {
        home = found;
        below = i + 1;
      }
    }
    StringBuilder key = new StringBuilder();
    for (Step step : steps.subList(below, steps.size())) {
      key.append(key.length() == 0 ? "" : ".").append(TomlText.name(step.name()));
    }
    return TomlText.added(text, home, below > 0, key.toString(), written);
  }

  private static boolean all(Step step) {
    return step.choice().isEmpty();
  }

  private TomlValue.Table table(TomlValue value, int depth) {
    if (value instanceof TomlValue.Table table) {
      return table;
    }
    throw new IllegalArgumentException(
        upTo(depth) + " is " + value.sort() + " in this file, so no key lies below it");
  }

  private static TomlValue below(TomlValue.Table table, String name) {
    TomlValue.Entry entry = table.entries().get(name);
    return entry == null ? null : entry.value();
  }

  /** Which of a list is meant: by name, by number from 1, or x, y, z in a list of three. */
  private int index(TomlValue.Array list, int depth) {
    Step step = steps.get(depth);
    int size = list.values().size();
    if (step.choice().isEmpty() && size == 1) {
      return 0;
    }
    List<String> choices = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      String number = Integer.toString(i + 1);
      String name = number;
      if (list.values().get(i) instanceof TomlValue.Table t) {
        name = below(t, "name") instanceof TomlValue.Text text ? text.text() : number;
      } else if (size == 3) {
        name = "xyz".substring(i, i + 1);
      }
      if (step.choice().equals(name) || step.choice().equals(number)) {
        return i;
      }
      choices.add(upTo(depth - 1) + (depth == 0 ? "" : ".") + step.name() + "[" + name + "]");
    }
    throw new IllegalArgumentException(
        (step.choice().isEmpty()
                ? "the file has " + size + " of " + upTo(depth) + "; say which, or [*] for all: "
                : "found \"" + step.choice() + "\" in " + upTo(depth) + "; allowed is ")
            + (choices.isEmpty() ? "nothing, the list is empty" : String.join(", ", choices)));
  }

  private String upTo(int depth) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i <= depth; i++) {
      Step step = steps.get(i);
      path.append(i == 0 ? "" : ".").append(step.name());
      if (!step.choice().isEmpty() && i < depth) {
        path.append('[').append(step.choice()).append(']');
      }
    }
    return path.toString();
  }
}
