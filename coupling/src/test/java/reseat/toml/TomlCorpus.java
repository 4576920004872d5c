package reseat.toml;

import java.util.Random;

/** Random TOML documents, right ones and broken ones, from a seed. */
final class TomlCorpus {

  private static final String[] NAMES = {
    "a", "b", "c", "b-1", "_x", "12", "\"q r\"", "'lit'", "\"\""
  };
  private static final String[] SCALARS = {
    "1",
    "0",
    "-0",
    "+17",
    "1_000",
    "0x1F",
    "0o17",
    "0b101",
    "0xdead_beef",
    "9223372036854775807",
    "3.25",
    "-0.5",
    "1e3",
    "6.02E+23",
    "1_0.0_1",
    "2e-2",
    "inf",
    "-inf",
    "+inf",
    "nan",
    "true",
    "false",
    "1979-05-27",
    "07:32:00",
    "07:32:00.5",
    "1979-05-27T07:32:00",
    "1979-05-27 07:32:00.125",
    "1979-05-27T07:32:00Z",
    "1979-05-27T00:32:00.5-07:00",
    "\"12.7 mm\"",
    "\"\"",
    "''",
    "'C:\\n'",
    "\"tab\\there\"",
    "\"quote \\\" \\u00b5 \\U0001F600\"",
    "\"µ 😀 °\"",
    "\"\"\"one\"\"\"",
    "\"\"\"\ntwo \\\n   lines \"\" \"\"\"",
    "'''x\n'y' ''z'''",
    "\"\"\"\"\"four\"\"\"\"\""
  };
  private static final String[] BROKEN = {
    "01",
    "1__0",
    "1_",
    "_1",
    ".5",
    "5.",
    "1e",
    "1.e3",
    "0x",
    "0xg",
    "+0x1",
    "0o8",
    "0b2",
    "True",
    "1979-13-01",
    "1979-02-30",
    "25:00:00",
    "07:32",
    "1979-05-27T",
    "1979-05-27T07:32:00+25:00",
    "\"\\q\"",
    "\"open",
    "'open",
    "\"\"\"open",
    "12.7 mm",
    "12,7",
    "mm",
    "--1",
    "+-1",
    "1 2",
    "[1 2]",
    "[1",
    "[,]",
    "{a=1,}",
    "{a=1",
    "{,}",
    "{a}",
    "{a=1 b=2}",
    "\"\\uD800\"",
    "\"\\u12\"",
    "infinity",
    "Inf",
    "0_1",
    "1e1_0_",
    "1.0_",
    "00:00:60",
    "9223372036854775808",
    "\"a\"b\"",
    "{\n}",
    "#",
    ""
  };

  private final Random random;

  TomlCorpus(Random random) {
    this.random = random;
  }

  /** A document; most of its statements are right. */
  String document() {
    StringBuilder text = new StringBuilder();
    int statements = 1 + random.nextInt(8);
    for (int i = 0; i < statements; i++) {
      text.append(blanks()).append(statement()).append(end());
    }
    return random.nextInt(4) == 0 ? mutated(text.toString()) : text.toString();
  }

  private String statement() {
    return switch (random.nextInt(10)) {
      case 0 -> "[" + blanks() + key() + blanks() + "]";
      case 1 -> "[[" + blanks() + key() + blanks() + "]]";
      case 2 -> "";
      default -> key() + blanks() + "=" + blanks() + value(0);
    };
  }

  private String key() {
    StringBuilder key = new StringBuilder(name());
    while (random.nextInt(4) == 0) {
      key.append(random.nextInt(5) == 0 ? " . " : ".").append(name());
    }
    return key.toString();
  }

  private String name() {
    return NAMES[random.nextInt(random.nextInt(3) == 0 ? NAMES.length : 4)];
  }

  private String value(int depth) {
    int kind = random.nextInt(depth > 2 ? 7 : 10);
    if (kind < 7) {
      return random.nextInt(40) == 0
          ? BROKEN[random.nextInt(BROKEN.length)]
          : SCALARS[random.nextInt(SCALARS.length)];
    }
    StringBuilder text = new StringBuilder();
    int count = random.nextInt(4);
    if (kind < 9) {
      text.append('[').append(space());
      for (int i = 0; i < count; i++) {
        boolean comma = i < count - 1 || random.nextInt(4) == 0;
        text.append(value(depth + 1)).append(space()).append(comma ? "," : "").append(space());
      }
      return text.append(']').toString();
    }
    text.append('{').append(blanks());
    for (int i = 0; i < count; i++) {
      text.append(key()).append(blanks()).append('=').append(blanks()).append(value(depth + 1));
      text.append(blanks()).append(i < count - 1 ? "," : "").append(blanks());
    }
    return text.append('}').toString();
  }

  private String blanks() {
    return random.nextInt(3) == 0 ? (random.nextBoolean() ? " " : "\t ") : "";
  }

  private String space() {
    return switch (random.nextInt(6)) {
      case 0 -> "\n";
      case 1 -> " # remark, ] }\n ";
      case 2 -> " ";
      default -> "";
    };
  }

  private String end() {
    return switch (random.nextInt(8)) {
      case 0 -> " # remark µ\n";
      case 1 -> "\r\n";
      case 2 -> "\n\n";
      default -> "\n";
    };
  }

  private String mutated(String good) {
    StringBuilder text = new StringBuilder(good);
    String spice = "\"'[]{}=,.#\n\r\t _-+e0x:\\abc\u0000\u007fµ";
    for (int i = random.nextInt(3); i >= 0 && text.length() > 0; i--) {
      int at = random.nextInt(text.length());
      char c = spice.charAt(random.nextInt(spice.length()));
      switch (random.nextInt(3)) {
        case 0 -> text.deleteCharAt(at);
        case 1 -> text.insert(at, c);
        default -> text.setCharAt(at, c);
      }
    }
    return text.toString();
  }
}
