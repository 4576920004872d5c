package reseat.designfile;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
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
    TreeSet<String> siblings = new TreeSet<>();
    String parent = parent(inFile);
    while (!parent.isEmpty() && !paths.contains(withoutNumber(parent))) {
      parent = parent(parent);
    }
    for (String path : paths) {
      plain.add(withoutNumbers(path));
      if (path.endsWith("." + inFile)) {
        within.add(withoutNumbers(path));
      }
      if (parent(path).equals(parent)) {
        siblings.add(path.substring(parent.isEmpty() ? 0 : parent.length() + 1));
      }
    }
    Optional<String> nearest = NearestWord.to(withoutNumbers(inFile), plain);
    if (nearest.isPresent()) {
      return message + "did you mean " + nearest.get() + "?";
    }
    if (!within.isEmpty() && within.size() <= MOST) {
      return message + "did you mean " + String.join(" or ", within) + "?";
    }
    String rest = inFile.substring(parent.isEmpty() ? 0 : parent.length() + 1);
    String word = rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
    return message
        + NearestWord.to(word, siblings).map(n -> "did you mean " + n + "? ").orElse("")
        + (parent.isEmpty() ? "keys at the top: " : "keys of " + parent + ": ")
        + String.join(", ", siblings);
  }

  private static String parent(String path) {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? "" : path.substring(0, dot);
  }

  private static String withoutNumber(String path) {
    return path.endsWith("]") ? path.substring(0, path.lastIndexOf('[')) : path;
  }

  private static String withoutNumbers(String path) {
    return path.replaceAll("\\[[0-9]+\\]", "");
  }
}
