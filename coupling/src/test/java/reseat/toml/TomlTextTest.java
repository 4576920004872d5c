package reseat.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TomlTextTest {

  private static TomlValue at(TomlValue.Table table, String... keys) {
    TomlValue value = table;
    for (String key : keys) {
      value = ((TomlValue.Table) value).entries().get(key).value();
    }
    return value;
  }

  private static TomlValue.Table root(String text) {
    TomlDocument document = TomlReader.read(text);
    assertEquals(List.of(), document.errors(), text);
    return document.root();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a = \"old\"   # why\nb = 1\n",
        "a = 'old'\r\nb = 1\r\n",
        "b = 1\n  a   =   [ \"old\", # first\n  2 ]  # why\n",
        "a = { x = \"old\", y = 2 } # why",
        "b = 1\n[t]\n\"a\" = 1.5e3# why\n",
        "t.a = 1979-05-27 07:32:00 # when",
        "t = { s = \"µ°\", a = true }",
        "a = \"\"\"old\nand long\"\"\" # why\n",
      })
  void onlyTheValueIsReplaced(String text) {
    TomlValue.Table root = root(text);
    boolean below = !root.entries().containsKey("a");
    TomlValue old = below ? at(root, "t", "a") : at(root, "a");
    String changed = TomlText.replaced(text, old, "[7, 8]");
    TomlValue now = below ? at(root(changed), "t", "a") : at(root(changed), "a");
    assertEquals(2, ((TomlValue.Array) now).values().size());
    assertEquals(text.contains("# why"), changed.contains("# why"));
    assertEquals(text.contains("b = 1"), changed.contains("b = 1"));
    int length = changed.length() - "[7, 8]".length();
    assertTrue(
        length < text.length() && text.startsWith(changed.substring(0, changed.indexOf("[7"))));
    assertTrue(text.endsWith(changed.substring(changed.indexOf("8]") + 2)));
  }

  @Test
  void aKeyIsAddedAfterThePlainKeysOfItsTable() {
    String text = "a = 1 # one\n\n[t]\nb = [\n  1,\n] # list\n[t.u]\nc = 3\n[[l]]\nd = 4\n";
    assertEquals(
        "a = 1 # one\nn = 5\n\n[t]\n" + text.substring(text.indexOf("b =")),
        TomlText.added(text, root(text), false, "n", "5"));
    String below = TomlText.added(text, (TomlValue.Table) at(root(text), "t"), true, "u.n", "5");
    assertTrue(below.contains("] # list\nu.n = 5\n[t.u]"), below);
    TomlValue.Table u = (TomlValue.Table) at(root(text), "t", "u");
    assertTrue(TomlText.added(text, u, true, "n", "5").contains("[t.u]\nc = 3\nn = 5\n[[l]]"));
    TomlValue.Table l = (TomlValue.Table) ((TomlValue.Array) at(root(text), "l")).values().get(0);
    assertTrue(TomlText.added(text, l, true, "n", "5").endsWith("d = 4\nn = 5\n"));
  }

  @Test
  void aTableBetweenBracesGetsTheKeyBeforeItsEnd() {
    assertEquals(
        "t = { a = 1, n = 5 } # why",
        TomlText.added(
            "t = { a = 1 } # why",
            (TomlValue.Table) at(root("t = { a = 1 }"), "t"),
            true,
            "n",
            "5"));
    assertEquals(
        "t = { n = 5 }",
        TomlText.added("t = {}", (TomlValue.Table) at(root("t = {}"), "t"), true, "n", "5"));
  }

  @Test
  void aDocumentWithoutPlainKeysGetsTheFirstAtItsTop() {
    String text = "[t]\na = 1\n";
    assertEquals("n = 5\n[t]\na = 1\n", TomlText.added(text, root(text), false, "n", "5"));
    String open = "[t]";
    assertEquals(
        "[t]\nn = 5\n",
        TomlText.added(open, (TomlValue.Table) at(root(open), "t"), true, "n", "5"));
  }

  @Test
  void aHeaderCountsItsNames() {
    String text = "[a.b]\nc = 1\n[d]\ne.f = 2\n[[g]]\n";
    TomlValue.Table root = root(text);
    assertEquals(2, TomlText.headerNames(text, (TomlValue.Table) at(root, "a")));
    assertEquals(2, TomlText.headerNames(text, (TomlValue.Table) at(root, "a", "b")));
    assertEquals(1, TomlText.headerNames(text, (TomlValue.Table) at(root, "d")));
    assertEquals(0, TomlText.headerNames(text, (TomlValue.Table) at(root, "d", "e")));
  }

  @Test
  void textsAndNamesAreWrittenSoThatTheyReadBack() {
    for (String s : List.of("12.7 mm", "a \"b\" \\ c", "tab\there\u0001", "µ 44°30'")) {
      assertEquals(s, ((TomlValue.Text) at(root("v = " + TomlText.quoted(s)), "v")).text());
    }
    assertEquals("a-b_1", TomlText.name("a-b_1"));
    assertEquals("\"a b\"", TomlText.name("a b"));
    assertEquals("\"\"", TomlText.name(""));
  }

  @Test
  void onlyTomlsOwnWritingIsAValue() {
    assertTrue(TomlText.value("[0, 0, -1]").isPresent());
    assertTrue(TomlText.value("1.5").isPresent());
    assertFalse(TomlText.value("12.7 mm").isPresent());
    assertFalse(TomlText.value("1\nb = 2").isPresent());
    assertFalse(TomlText.value("").isPresent());
  }
}
