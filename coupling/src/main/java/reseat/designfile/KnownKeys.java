package reseat.designfile;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.units.NearestWord;

/** The keys that may stand in one design file, to find the one that was meant. */
final class KnownKeys {

  private static final int MOST = 5;

  private final Collection<String> paths;

  /**
   * Takes the keys.
   *
   * @param paths full paths with the number of each table of a list
   */
  KnownKeys(Collection<String> paths) {
    this.paths = List.copyOf(paths);
  }

  /**
   * Says that a key is unknown and what may have been meant.
   *
   * @param typed as the user wrote it
   * @param inFile the same with the number of each table of a list
   * @return the message
   */
  String unknown(String typed, String inFile) {
    String message = typed + " is not a known key of this file; ";
    TreeSet<String> plain = new TreeSet<>();
    TreeSet<String> within = new TreeSet<>();
    TreeSet<String> elsewhere = new TreeSet<>();
    TreeSet<String> siblings = new TreeSet<>();
    String name = inFile.substring(inFile.lastIndexOf('.') + 1);
    String parent = parent(inFile);
    while (!parent.isEmpty() && !hasKeys(parent)) {
      parent = parent(parent);
    }
    for (String path : paths) {
      plain.add(withoutNumbers(path));
      if (path.endsWith("." + inFile)) {
        within.add(withoutNumbers(path));
      }
      if (path.endsWith("." + name)) {
        elsewhere.add(withoutNumbers(path));
      }
      if (parent(path).equals(parent)) {
        siblings.add(path.substring(parent.isEmpty() ? 0 : parent.length() + 1));
      }
    }
    Optional<String> nearest = NearestWord.to(withoutNumbers(inFile), plain);
    Set<String> meant = new LinkedHashSet<>();
    nearest.ifPresent(meant::add);
    meant.addAll(within);
    // a slip within the same top table is trusted, another table is only one guess
    if (nearest.isEmpty() || !top(nearest.get()).equals(top(inFile))) {
      meant.addAll(elsewhere);
    }
    if (!meant.isEmpty() && meant.size() <= MOST) {
      return message + "did you mean " + String.join(" or ", meant) + "?";
    }
    String rest = inFile.substring(parent.isEmpty() ? 0 : parent.length() + 1);
    String word = rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
    return message
        + NearestWord.to(word, siblings).map(n -> "did you mean " + n + "? ").orElse("")
        + (parent.isEmpty() ? "keys at the top: " : "keys of " + parent + ": ")
        + String.join(", ", siblings);
  }

  private static String top(String path) {
    int end = path.indexOf('.');
    return end < 0 ? path : path.substring(0, end);
  }

  private boolean hasKeys(String table) {
    return paths.stream().anyMatch(p -> parent(p).equals(table));
  }

  private static String parent(String path) {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? "" : path.substring(0, dot);
  }

  private static String withoutNumbers(String path) {
    return path.replaceAll("\\[[0-9]+\\]", "");
  }
}
