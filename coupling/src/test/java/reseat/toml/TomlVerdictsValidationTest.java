package reseat.toml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The reader against the verdicts and values of another one, kept in a file.
 *
 * <p>Source: the module tomllib of the Python 3.11 standard library, run over 400 documents of
 * {@link TomlCorpus}; the head of the resource says how. Documents with numbers beyond a double or
 * 64 bits are left out, since the reader refuses them by its own rule.
 */
class TomlVerdictsValidationTest {

  @Test
  void theReaderAgreesWithTheReferenceOnEveryDocument() throws IOException {
    List<String> differences = new ArrayList<>();
    int documents = 0;
    for (String line : lines()) {
      if (line.startsWith("#")) {
        continue;
      }
      documents++;
      String[] parts = line.split("\t", -1);
      TomlDocument ours = TomlReader.read(unescaped(parts[1]));
      String found = ours.errors().isEmpty() ? canonical(ours.root()) : "refused";
      String expected = parts[0].equals("accepted") ? unescaped(parts[2]) : "refused";
      if (!found.equals(expected)) {
        differences.add(line + "\n" + found + "\n" + ours.errors());
      }
    }
    assertThat(differences).isEmpty();
    assertThat(documents).isEqualTo(400);
  }

  private static List<String> lines() throws IOException {
    try (InputStream in = TomlVerdictsValidationTest.class.getResourceAsStream("verdicts.tsv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  private static String unescaped(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\\') {
        plain.append((char) Integer.parseInt(text.substring(i + 2, i + 6), 16));
        i += 5;
      } else {
        plain.append(text.charAt(i));
      }
    }
    return plain.toString();
  }

  private static String canonical(TomlValue value) {
    if (value instanceof TomlValue.Table table) {
      TreeMap<String, String> sorted = new TreeMap<>();
      table.entries().forEach((key, entry) -> sorted.put(key, canonical(entry.value())));
      return sorted.toString();
    }
    if (value instanceof TomlValue.Array array) {
      return array.values().stream().map(TomlVerdictsValidationTest::canonical).toList().toString();
    }
    if (value instanceof TomlValue.Numeral numeral) {
      String bits = Long.toHexString(Double.doubleToLongBits(numeral.value()));
      return (numeral.whole() ? "i" : "f") + bits;
    }
    if (value instanceof TomlValue.Text text) {
      return '"' + text.text() + '"';
    }
    return value instanceof TomlValue.Flag flag ? String.valueOf(flag.value()) : "moment";
  }
}
