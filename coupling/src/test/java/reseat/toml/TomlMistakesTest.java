package reseat.toml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person who does not know TOML is told about a slip, and where. */
class TomlMistakesTest {

  private static String told(String text) {
    StringBuilder all = new StringBuilder();
    for (TomlDocument.SyntaxError e : TomlReader.read(text).errors()) {
      all.append(e.line()).append(':').append(e.column()).append(' ').append(e.message());
      all.append('\n');
    }
    return all.toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "d = 12.7 mm | 1:5 a number with a unit stands between quotation marks; write \"12.7 mm\"",
        "d = 1/2 in | 1:5 a number with a unit stands between quotation marks; write \"1/2 in\"",
        "d = 1/2\" | 1:5 a number with a unit stands between quotation marks; write \"1/2\\\"\"",
        "d = 5% | 1:5 a number with a unit stands between quotation marks; write \"5%\"",
        "d = 44°30' # x | 1:5 a number with a unit stands between quotation marks; write \"44°30'\"",
        "d = .5 in | 1:5 a number with a unit stands between quotation marks; write \".5 in\"",
        "d = 12,7 mm | 1:5 found a decimal comma and no quotation marks; write \"12.7 mm\"",
        "d = 0,5 | 1:5 found a decimal comma; write a point: 0.5",
        "d = .5 | 1:5 a number starts with a digit; write 0.5",
        "d = 5. | 1:5 a digit follows the point; write 5.0",
        "d = 007 | 1:5 the number 007 has leading zeros",
        "d = 1 2 3 | 1:5 several numbers stand in a list, as in [0, 0, -1]",
        "d = 1e999 | 1:5 the number 1e999 is too large",
        "d = 99999999999999999999 | 1:5 the whole number 99999999999999999999 is too large",
        "d = 1979-02-30 | 1:5 1979-02-30 is no number and no date",
        "n = post A | 1:5 text stands between quotation marks; write \"post A\"",
        "n = \"post A | 1:5 this text has no closing quotation mark; put \" at its end",
        "n = “post A” | 1:5 found a typographic quotation mark; write plain \" marks around text",
        "n = \"1/2\"\" | 1:10 text goes on after its closing quotation mark",
        "n = \"12.7\" mm | 1:12 text goes on after its closing quotation mark",
        "n = \"C:\\data\" | 1:8 a backslash starts a code",
        "n = \"\\u12\" | 1:6 a backslash with u or U needs 4 hexadecimal digits",
        "n = \"\\ud800\" | 1:6 this backslash code is no character",
        "f = True | 1:5 write true in small letters",
        "f = yes | 1:5 write true or false, or \"yes\" for the word",
        "n = | 1:4 there is no value after the =",
        "n = # x | 1:5 there is no value after the =",
        "n = ] | 1:5 found ] where a value should stand",
        "n \"post\" | 1:3 there is no = between the key and its value",
        "n | 1:2 this line has a key and no value",
        "n: \"post\" | 1:2 write = in place of :",
        "ball diameter = \"1 in\" | 1:6 a key is one word: join the words with _",
        "größe = \"1 in\" | 1:3 a key is written with the letters A to Z without accents",
        "= 5 | 1:1 there is no key in front of the =",
        "“n” = 5 | 1:1 found a typographic quotation mark",
        "n = 1; | 1:6 nothing stands after a value; leave the ; out",
        "n = 1, | 1:6 nothing stands after a value; leave the , out",
        "n = 1 // x | 1:7 write # in front of a remark",
        "// x | 1:1 write # in front of a remark",
        "p = [\"0 mm\" \"1 mm\"] | 1:13 a comma is missing in front of \"1 mm\"]",
        "p = [0 mm, 5 mm] | 1:6 a number with a unit stands between quotation marks; write \"0 mm\"",
        "p = [1,,2] | 1:8 a value is missing in front of the comma",
        "p = [1, 2 | 1:5 this list is not closed; put ] at its end",
        "p = { a = 1 | 1:5 a table between { and } stands on one line; put } at its end",
        "p = { a = 1, } | 1:14 between { and } no comma stands in front of }",
        "[layout | 1:8 this header is not closed; put ] at its end",
        "[[ball] | 1:7 this header is not closed; put ]] at its end",
        "[] | 1:2 a name is missing in front of the ]",
        "[layout] x = 1 | 1:10 found x = 1 after the header",
      })
  void aSlipIsToldInPlainWordsWithItsPlace(String text, String message) {
    assertThat(told(text)).startsWith(message).hasLineCount(1);
  }

  @Test
  void whatIsGivenTwiceNamesBothLines() {
    assertThat(told("a = 1\nb = 2\na = 3"))
        .isEqualTo("3:1 a is already given on line 1; keep one of the two\n");
    assertThat(told("[a]\n\n[a]\nx = 1"))
        .startsWith("3:2 a is already given on line 1; put these keys there, or write [[ ]]")
        .hasLineCount(1);
    assertThat(told("[[ball]]\n[ball]"))
        .contains("2:2")
        .contains("write [[ ]] around this one too");
  }

  @Test
  void everyStatementIsReadWhateverTheOneBeforeWas() {
    String text =
        """
        a = 1 mm
        b = "open
        [layout
        c = True
        [layout2]
        d = 12,7
        at = ["0 mm", 5 mm,
          "3 mm",
        ]
        e = .5
        """;
    assertThat(told(text).lines().map(line -> line.substring(0, line.indexOf(' '))))
        .containsExactly("1:5", "2:5", "3:8", "4:5", "6:5", "7:15", "10:5");
  }

  @Test
  void aListThatIsNotClosedCostsNoStatementAfterIt() {
    assertThat(told("at = [\n  \"0 mm\",\n  \"1 mm\"\nb = 1 mm\n[layout]\nc = 2 mm\n"))
        .contains("1:6 this list is not closed")
        .contains("4:5 a number with a unit")
        .contains("6:5 a number with a unit")
        .hasLineCount(3);
    assertThat(told("at = [\"0 mm\",\n[layout]\nc = 2 mm\n")).hasLineCount(2);
  }

  @Test
  void aTableInBracesOverSeveralLinesIsOneMistake() {
    assertThat(told("p = {\n  a = 1,\n  b = 2\n}\nc = 3 mm\n"))
        .contains("1:5 a table between { and } stands on one line")
        .contains("5:5 a number with a unit")
        .hasLineCount(2);
  }

  @Test
  void aTextOverSeveralLinesThatIsNotClosedCostsNoStatementAfterIt() {
    assertThat(told("t = \"\"\"some\nwords\n[layout]\nc = 2 mm\n"))
        .contains("1:5 this text over several lines is never closed")
        .contains("4:5 a number with a unit")
        .hasLineCount(2);
  }

  @Test
  void aValueWithAMistakeStaysUnderItsKey() {
    TomlValue.Table root = TomlReader.read("a = 1 mm\nb \"x\"\nc = 2").root();
    assertThat(root.entries().get("a").value()).isEqualTo(new TomlValue.Unreadable(1, 5));
    assertThat(root.entries().get("b").value()).isInstanceOf(TomlValue.Unreadable.class);
    assertThat(root.entries().get("c").value()).isEqualTo(new TomlValue.Numeral(2, true, 3, 5));
  }

  @Test
  void aControlCharacterIsNamedByItsNumber() {
    assertThat(told("a = \"x\u0007\"")).startsWith("1:7 found the control character U+0007");
    assertThat(told("a = 1 # \u0000")).startsWith("1:9 found the control character U+0000");
    assertThat(told("a = 1\u001b")).startsWith("1:6 found the control character U+001B");
  }
}
