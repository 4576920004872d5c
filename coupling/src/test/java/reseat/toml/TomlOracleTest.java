package reseat.toml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import org.tomlj.TomlVersion;

/**
 * The reader against an independent one: tomlj 1.1.1, on random documents from a printed seed. Both
 * must accept the same documents and find the same values in them.
 *
 * <p>Left out are the documents that tomlj is known to judge otherwise than TOML 1.0.0: it wants a
 * blank between a date and a bracket, lets a header add to a table in braces, takes UTC offsets of
 * single digits, and stops with an exception at some bad escapes and offsets. {@link
 * TomlVerdictsValidationTest} covers them by another reader.
 */
class TomlOracleTest {

  private static final long SEED = 20260219;
  private static final Pattern MOMENT_AND_BRACKET =
      Pattern.compile("(\\d\\d:\\d\\d|\\d{4}-\\d\\d-\\d\\d)[0-9.:Zz+-]*[\\]}]");
  private static final Pattern SHORT_OFFSET = Pattern.compile("[+-](\\d:|\\d\\d:\\d\\D)");

  @Test
  void bothReadersAcceptTheSameDocumentsAndFindTheSameValues() {
    TomlCorpus corpus = new TomlCorpus(new Random(SEED));
    int accepted = 0;
    List<String> differences = new ArrayList<>();
    for (int trial = 0; trial < 3_000; trial++) {
      String text = corpus.document();
      TomlDocument ours = TomlReader.read(text);
      Optional<TomlParseResult> theirs = theirs(text);
      if (ours.errors().isEmpty() != theirs.isPresent()) {
        if (!isKnownFault(text, ours)) {
          differences.add("trial " + trial + ", ours " + ours.errors() + ":\n" + text);
        }
      } else if (theirs.isPresent()) {
        accepted++;
        String a = canonical(ours.root());
        String b = canonical(theirs.get());
        if (!a.equals(b)) {
          differences.add("trial " + trial + ", ours " + a + "\ntheirs " + b + ":\n" + text);
        }
      }
    }
    assertThat(differences).as("seed %d", SEED).isEmpty();
    assertThat(accepted).as("seed %d", SEED).isGreaterThan(1000);
  }

  private static boolean isKnownFault(String text, TomlDocument ours) {
    if (ours.errors().isEmpty()) {
      return MOMENT_AND_BRACKET.matcher(text).find();
    }
    String message = ours.errors().get(0).message();
    return message.contains("as a table and cannot be added to")
        || message.startsWith("a backslash starts a code")
        || SHORT_OFFSET.matcher(text).find();
  }

  /** What tomlj makes of a text; empty if it refuses it. */
  private static Optional<TomlParseResult> theirs(String text) {
    try {
      TomlParseResult result = Toml.parse(text, TomlVersion.V1_0_0);
      return result.hasErrors() ? Optional.empty() : Optional.of(result);
    } catch (AssertionError | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static String canonical(TomlValue value) {
    if (value instanceof TomlValue.Table table) {
      TreeMap<String, String> sorted = new TreeMap<>();
      table.entries().forEach((key, entry) -> sorted.put(key, canonical(entry.value())));
      return sorted.toString();
    }
    if (value instanceof TomlValue.Array array) {
      return array.values().stream().map(TomlOracleTest::canonical).toList().toString();
    }
    if (value instanceof TomlValue.Numeral numeral) {
      return (numeral.whole() ? "i" : "f") + numeral.value();
    }
    if (value instanceof TomlValue.Text text) {
      return '"' + text.text() + '"';
    }
    return value instanceof TomlValue.Flag flag ? String.valueOf(flag.value()) : "moment";
  }

  private static String canonical(Object value) {
    if (value instanceof TomlTable table) {
      TreeMap<String, String> sorted = new TreeMap<>();
      for (String key : table.keySet()) {
        sorted.put(key, canonical(table.get(List.of(key))));
      }
      return sorted.toString();
    }
    if (value instanceof TomlArray array) {
      return array.toList().stream().map(TomlOracleTest::canonical).toList().toString();
    }
    if (value instanceof Long number) {
      return "i" + number.doubleValue();
    }
    if (value instanceof Double number) {
      return "f" + number;
    }
    if (value instanceof String text) {
      return '"' + text + '"';
    }
    return value instanceof Boolean ? value.toString() : "moment";
  }
}
