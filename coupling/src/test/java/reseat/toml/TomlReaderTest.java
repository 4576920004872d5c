package reseat.toml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TomlReaderTest {

  private static TomlValue.Table good(String text) {
    TomlDocument document = TomlReader.read(text);
    assertThat(document.errors()).as(text).isEmpty();
    return document.root();
  }

  private static TomlValue.Entry entry(TomlValue.Table table, String... path) {
    TomlValue.Entry entry = null;
    for (String key : path) {
      entry = table.entries().get(key);
      assertThat(entry).as(key).isNotNull();
      table = entry.value() instanceof TomlValue.Table t ? t : table;
    }
    return entry;
  }

  private static String text(TomlValue.Table table, String... path) {
    return ((TomlValue.Text) entry(table, path).value()).text();
  }

  private static double number(String value) {
    return ((TomlValue.Numeral) entry(good("x = " + value), "x").value()).value();
  }

  @Test
  void keysAndValuesCarryTheirLinesAndColumns() {
    TomlValue.Table root =
        good(
            "# µ\n[layout]\n  \"µ 😀\"  =  \"12.7 mm\" # x\nat = [ \"0 mm\",\n\t\"1 mm\" ]\r\nz=1\n");
    TomlValue.Entry named = entry(root, "layout", "µ 😀");
    assertThat(named.line()).isEqualTo(3);
    assertThat(named.column()).isEqualTo(3);
    assertThat(named.value()).isEqualTo(new TomlValue.Text("12.7 mm", 3, 13));
    TomlValue.Array at = (TomlValue.Array) entry(root, "layout", "at").value();
    assertThat(at.column()).isEqualTo(6);
    assertThat(at.values())
        .containsExactly(new TomlValue.Text("0 mm", 4, 8), new TomlValue.Text("1 mm", 5, 2));
    assertThat(entry(root, "layout", "z").value()).isEqualTo(new TomlValue.Numeral(1, true, 6, 3));
    assertThat(entry(root, "layout").value().line()).isEqualTo(2);
    assertThat(entry(root, "layout").value().column()).isEqualTo(1);
    assertThat(entry(root, "layout").column()).isEqualTo(2);
  }

  @Test
  void headersOpenTablesAndDoubleHeadersLists() {
    TomlValue.Table root =
        good("title = \"t\"\n[a . b]\nx = 1\n[[s]]\nn=1\n[[s]]\nn=2\n[s.deep]\nm=3\n[a]\ny=2\n");
    assertThat(root.entries().keySet()).containsExactly("title", "a", "s");
    TomlValue.Array s = (TomlValue.Array) entry(root, "s").value();
    assertThat(s.line()).isEqualTo(4);
    assertThat(s.values()).extracting(TomlValue::line).containsExactly(4, 6);
    TomlValue.Table second = (TomlValue.Table) s.values().get(1);
    assertThat(entry(second, "deep", "m").line()).isEqualTo(9);
    assertThat(entry(root, "a", "b", "x").line()).isEqualTo(3);
    assertThat(entry(root, "a", "y").line()).isEqualTo(11);
  }

  @Test
  void textKeepsItsLinesAndResolvesItsCodes() {
    assertThat(text(good("x = \"a\\t\\\"b\\\" \\u00b5\\U0001F600\""), "x"))
        .isEqualTo("a\t\"b\" µ😀");
    assertThat(text(good("x = 'C:\\new'"), "x")).isEqualTo("C:\\new");
    assertThat(text(good("x = \"\"\"\r\none\r\ntwo \\\n\n   three\"\"\""), "x"))
        .isEqualTo("one\ntwo three");
    assertThat(text(good("x = \"\"\"\"quoted\"\"\"\"\""), "x")).isEqualTo("\"quoted\"\"");
    assertThat(text(good("x = '''\n'a' ''b'''''"), "x")).isEqualTo("'a' ''b''");
    assertThat(text(good("x = \"\""), "x")).isEmpty();
  }

  @Test
  void numbersReadInEveryNotation() {
    assertThat(number("1_000")).isEqualTo(1000);
    assertThat(number("0xdead_BEEF")).isEqualTo(0xdeadbeefL);
    assertThat(number("0o755")).isEqualTo(493);
    assertThat(number("0b1101")).isEqualTo(13);
    assertThat(number("-0.5e-3")).isEqualTo(-0.0005);
    assertThat(number("+1E6")).isEqualTo(1e6);
    assertThat(number("-inf")).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(number("+nan")).isNaN();
    assertThat(number("-9223372036854775808")).isEqualTo(-0x1p63);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2000-02-29",
        "1979-05-27T07:32:00Z",
        "1979-05-27t07:32:00.999-07:00",
        "1979-05-27 07:32:00",
        "07:32:00.5"
      })
  void datesAndTimesAreKeptAsWritten(String moment) {
    TomlValue value = entry(good("x = " + moment + " # y"), "x").value();
    assertThat(value).isEqualTo(new TomlValue.Moment(moment, 1, 5));
  }

  /** After the examples of the TOML 1.0.0 specification, recalled from memory. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a.b = 1\na.c = 2",
        "a.x=1\nb.x=2\na.y=3",
        "[a.b.c]\n[a]\nx=1",
        "[fruit]\napple.color=1\napple.taste.sweet=true\n[fruit.apple.texture]\nsmooth=true",
        "[[a]]\n[a.b]\n[[a]]\n[a.b]",
        "[[a.b]]\n[[a.b.c]]\n[[a.b]]",
        "x = { a.b = 1, a.c = 2, 'd' = [] }",
        "x = [ 1, 'a', { b = [ [true], [false] ] }, # r\n ]",
        "\"\" = 1",
        "3.14 = 'pi'",
        "",
        "\ufeffa = 1",
        "# only a remark",
        "a = [\n [true],\n [false]\n]"
      })
  void whatTheSpecificationAllowsIsAccepted(String text) {
    good(text);
  }

  /** After the examples of the TOML 1.0.0 specification, recalled from memory. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a = 1\na = 2",
        "a = 1\n\"a\" = 2",
        "a.b = 1\na.b.c = 2",
        "[a]\n[a]",
        "[a]\nb=1\n[a.b]",
        "[fruit]\napple.color=1\n[fruit.apple]",
        "[fruit]\napple.taste.sweet=true\n[fruit.apple.taste]",
        "[a.b.c]\nz=9\n[a]\nb.c.t=1",
        "[a.b.c.d]\nz=9\n[a]\nb.c.d.k.t=1",
        "[[a.b]]\n[a]\nb.y=2",
        "a = {x=1}\na.y=2",
        "a = {x=1}\n[a.y]",
        "a = {x={y=1}, x.z=2}",
        "a = [{x=1}]\n[[a]]",
        "a = []\n[[a]]",
        "[a.b]\n[[a]]",
        "[[a]]\n[a]",
        "a = 1 b = 2",
        "a = \"\"\"x\"\"\"\"\"\"",
        "a = 1\rb = 2",
        "[ [a] ]",
        "\"\"\"a\"\"\" = 1"
      })
  void whatTheSpecificationForbidsIsRefused(String text) {
    assertThat(TomlReader.read(text).errors()).as(text).isNotEmpty();
  }

  @Test
  void nestingWithoutEndIsRefusedInOneMessage() {
    assertThat(TomlReader.read("x = " + "[".repeat(100_000)).errors()).hasSize(1);
    assertThat(TomlReader.read("x = " + "{a=".repeat(100_000)).errors()).hasSize(1);
    assertThat(TomlReader.read("a" + ".a".repeat(100_000) + " = 1").errors()).hasSize(1);
    assertThat(TomlReader.read("[a" + ".a".repeat(100_000) + "]").errors()).hasSize(1);
  }

  @Test
  void aFileOfAnotherKindEndsTheListOfMistakes() {
    TomlDocument document = TomlReader.read("%PDF 1.4 and so on\n".repeat(1000));
    assertThat(document.errors()).hasSize(TomlReader.MOST + 1);
    assertThat(document.errors().get(TomlReader.MOST).message()).contains("is this a TOML file?");
  }
}
