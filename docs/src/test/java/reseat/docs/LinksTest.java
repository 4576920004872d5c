package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every link between the pages leads somewhere, headings included. */
class LinksTest {

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");

  private static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(ProjectFolder.files(ProjectFolder.root(), ".md"));
    try (Stream<Path> files = Files.walk(ProjectFolder.docs())) {
      files
          .filter(f -> f.toString().endsWith(".md") && !f.toString().contains("target"))
          .forEach(pages::add);
    }
    return pages;
  }

  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    List<String> broken = new ArrayList<>();
    for (Path page : pages()) {
      Matcher m = LINK.matcher(Files.readString(page));
      while (m.find()) {
        String link = m.group(1);
        String[] parts = link.split("#", 2);
        Path target = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]);
        boolean found = link.startsWith("https:") || Files.exists(target);
        if (found && parts.length == 2) {
          found = anchors(target).contains(parts[1]);
        }
        if (!found) {
          broken.add(ProjectFolder.root().relativize(page) + ": " + link);
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  private static List<String> anchors(Path page) throws IOException {
    List<String> anchors = new ArrayList<>();
    Matcher m = HEADING.matcher(Files.readString(page));
    while (m.find()) {
      String words = m.group(1).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}_ -]", "");
      anchors.add(words.replace(' ', '-'));
    }
    return anchors;
  }
}
