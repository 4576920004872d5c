package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.material.FrictionCatalog;
import reseat.material.FrictionPair;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.material.MaterialValue;
import reseat.material.Provenance;
import reseat.verification.CheckValue;
import reseat.verification.CheckValues;
import reseat.verification.Standing;
import reseat.verification.Topic;

/** Every source that the program prints stands on the page of references, under a bold name. */
class ReferencesTest {

  private static final Pattern BOLD = Pattern.compile("\\*\\*([^*]+)\\*\\*");

  private static List<String> names() throws IOException {
    Matcher m = BOLD.matcher(Files.readString(ProjectFolder.docs().resolve("references.md")));
    List<String> names = new ArrayList<>();
    while (m.find()) {
      names.add(m.group(1).toLowerCase(Locale.ROOT));
    }
    return names;
  }

  private static boolean named(String source, List<String> names) {
    String text = source.toLowerCase(Locale.ROOT);
    return names.stream().anyMatch(text::contains);
  }

  @Test
  void sourcesOfCheckValuesAreListed() throws IOException {
    List<String> names = names();
    List<String> sources = new ArrayList<>();
    for (Topic topic : CheckValues.topics()) {
      for (CheckValue v : topic.values()) {
        if (v.standing() != Standing.COMPUTED) {
          sources.add(v.source());
        }
      }
    }
    assertThat(sources).hasSizeGreaterThan(80).allMatch(source -> named(source, names));
  }

  @Test
  void sourcesOfMaterialsAndFrictionAreListed() throws IOException {
    List<String> names = names();
    List<String> sources = new ArrayList<>();
    for (Material material : MaterialCatalog.standard().materials()) {
      for (MaterialValue value : material.values().values()) {
        if (value.provenance() != Provenance.COMMON_PRACTICE) {
          sources.add(value.source());
        }
      }
    }
    for (FrictionPair pair : FrictionCatalog.standard().pairs()) {
      sources.add(pair.source());
    }
    assertThat(sources).hasSizeGreaterThan(150).allMatch(source -> named(source, names));
  }
}
