package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignProblem;

/**
 * Holds the page about the design file to what the reader knows: an unknown key in each table makes
 * it list the known ones, a wrong word the allowed ones.
 */
class DesignFilePageTest {

  private static final List<String> SAMPLES =
      List.of("three-vee.toml", "each-ball.toml", "trihedral-vee-flat.toml", "cone-vee-flat.toml");

  private static final Pattern ROW = Pattern.compile("\\| (`[^|]*`) \\|(.*)");
  private static final Pattern CODE = Pattern.compile("`([^`]+)`");
  private static final Pattern QUOTED = Pattern.compile("`\"([^\"`]+)\"`");
  private static final Pattern WORD = Pattern.compile("(?m)^(\\w+) = \"([^\"]*)\"$");

  /** Heading of the page for each table, by the end of its path; the first that fits counts. */
  private static final Map<String, String> HEADINGS = headings();

  private static Map<String, String> headings() {
    Map<String, String> h = new LinkedHashMap<>();
    h.put("", "The file itself");
    h.put(
        "(layout\\.groove|layout\\.trihedral|layout\\.cone|layout\\.flat|support\\.seat)", "seat");
    h.put(".*_scatter", "A scatter");
    h.put("tolerances\\.only", "tolerances.only");
    h.put("preload\\.device", "preload.device");
    h.put("machine\\.turning", "machine.turning");
    h.put(".*?([a-z_]+)", "$1");
    return h;
  }

  private static String heading(String path) {
    for (Map.Entry<String, String> e : HEADINGS.entrySet()) {
      if (path.matches(e.getKey())) {
        return e.getValue().equals("$1") ? path.replaceFirst(".*\\.", "") : e.getValue();
      }
    }
    throw new IllegalArgumentException(path);
  }

  private static String sample(String name) throws IOException {
    try (InputStream in = DesignFilePageTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Keys that the reader names, by heading. */
  private static Map<String, Set<String>> known() throws IOException {
    Map<String, Set<String>> known = new TreeMap<>();
    for (String name : SAMPLES) {
      for (DesignProblem p : DesignFile.read(sample(name)).problems()) {
        int list = p.message().indexOf(" known keys: ");
        if (list >= 0) {
          String path = p.key().replaceAll("\\[\\d+]", "").replaceFirst("\\.?zz$", "");
          known
              .computeIfAbsent(heading(path), k -> new TreeSet<>())
              .addAll(Arrays.asList(p.message().substring(list + 13).split(", ")));
        }
      }
    }
    return known;
  }

  /** Rows of the page's tables, by heading and key. */
  private static Map<String, Map<String, String>> rows() throws IOException {
    Map<String, Map<String, String>> rows = new TreeMap<>();
    String heading = "";
    for (String line :
        Files.readAllLines(ProjectFolder.docs().resolve("guide").resolve("design-file.md"))) {
      if (line.startsWith("#")) {
        heading = line.replaceFirst("#+ ", "");
      }
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        Matcher key = CODE.matcher(row.group(1));
        while (key.find()) {
          rows.computeIfAbsent(heading, k -> new TreeMap<>()).put(key.group(1), row.group(2));
        }
      }
    }
    return rows;
  }

  @Test
  void thePageNamesEveryKeyAndNoOther() throws IOException {
    Map<String, Set<String>> onPage = new TreeMap<>();
    rows().forEach((heading, keys) -> onPage.put(heading, new TreeSet<>(keys.keySet())));
    Set<String> only = onPage.get("tolerances.only");
    only.addAll(onPage.get("tolerances"));
    only.remove("only");
    Map<String, Set<String>> known = known();
    for (String heading : List.of("tolerances", "tolerances.only")) {
      known.get(heading).removeIf(key -> key.startsWith("shared_"));
    }
    assertThat(onPage.keySet()).isEqualTo(known.keySet());
    known.forEach((heading, keys) -> assertThat(onPage.get(heading)).as(heading).isEqualTo(keys));
  }

  @Test
  void thePageNamesEveryWordAndNoOther() throws IOException {
    Map<String, Map<String, String>> rows = rows();
    List<String> seen = new ArrayList<>();
    for (String name : SAMPLES) {
      String text = sample(name);
      Matcher line = WORD.matcher(text);
      while (line.find()) {
        String wrong = text.substring(0, line.start(2)) + "xyzzy" + text.substring(line.end(2));
        for (DesignProblem p : DesignFile.read(wrong).problems()) {
          if (p.message().startsWith("found \"xyzzy\"; allowed is ")
              && !p.message().contains("three plain numbers")) {
            String path = p.key().replaceAll("\\[\\d+]", "");
            int cut = path.lastIndexOf('.');
            String heading = heading(cut < 0 ? "" : path.substring(0, cut));
            String value = rows.get(heading).get(line.group(1));
            String allowed = p.message().replaceFirst("^.*; allowed is ", "");
            if (!heading.equals("machine.turning")) {
              assertThat(words(value)).as(p.key()).containsExactlyInAnyOrder(allowed.split(", "));
              seen.add(heading + "." + line.group(1));
            }
          }
        }
      }
    }
    assertThat(seen).hasSizeGreaterThan(12);
  }

  private static List<String> words(String row) {
    List<String> words = new ArrayList<>();
    Matcher m = QUOTED.matcher(row.substring(0, row.indexOf('|')));
    while (m.find()) {
      words.add(m.group(1));
    }
    return words;
  }
}
