package reseat.cli.command;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Spoils a text file as slips of a hand, a spreadsheet, an editor or a disk do; the same luck, the
 * same bytes.
 */
final class SpoiledText {

  private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z0-9.])-?[0-9]+(\\.[0-9]+)?");
  private static final Pattern WORD = Pattern.compile("[A-Za-z_]{2,}");
  private static final Pattern UNIT =
      Pattern.compile("(?<=[0-9] )[^\\s\"\\],]+(?=\")|(?<=\\[)[^\\s\\[\\]]+(?=\\])");
  private static final Pattern VALUE = Pattern.compile("(?<= = )[^#\\n]*|(?<=,)[^,\\n]*");

  private static final List<String> NUMBERS =
      List.of(
          "nan",
          "NAN",
          "inf",
          "1e308",
          "-1e308",
          "1e-308",
          "0",
          "-0",
          "-1",
          "1,5",
          "1.2.3",
          "1e9",
          "1e-9",
          "999999999999999999999",
          "1/0",
          "0x10",
          "½",
          "1_000",
          "1e15",
          "1e-25",
          "360");

  private static final List<String> UNITS =
      List.of(
          "mm", "um", "in", "nm", "km", "N", "kN", "lbf", "kgf", "g", "kg", "deg", "rad", "arcmin",
          "Pa", "GPa", "K", "°C", "degF", "%", "ppm", "N·m", "N/um", "N/mm^2", "um/m/K", "mm^2",
          "m^2", "Hz", "s", "MM", "UM", "mN", "MN", "", "m/m", "''", "N/N", "mm/mm^0");

  private static final List<String> WORDS =
      List.of(
          "true", "vee", "flat", "cone", "", "ball", "\"", "[[", "]", "#", "=", "\u0000", "\uFEFF",
          "\r", "\r\n", "\t", "Ø", "𝛍", "{", "'''", "\"\"\"", ";", ",", "\\", "\\u0000", "%n",
          "${x}", "\ud800", "at", "name", "../..");

  private static final List<Charset> CHARSETS =
      List.of(
          StandardCharsets.ISO_8859_1,
          Charset.forName("windows-1252"),
          StandardCharsets.UTF_16,
          StandardCharsets.UTF_16LE,
          StandardCharsets.UTF_16BE);

  private final Random random;

  SpoiledText(long seed) {
    random = new Random(seed);
  }

  /**
   * Spoils one to three places, with pieces of the other text now and then. Every second time the
   * file can still be read, but for its numbers, which are of another size.
   */
  byte[] of(String text, String other) {
    String spoiled = text;
    if (random.nextBoolean()) {
      for (int n = 1 + random.nextInt(3); n > 0; n--) {
        spoiled = scaled(spoiled);
      }
      return spoiled.getBytes(StandardCharsets.UTF_8);
    }
    for (int n = 1 + random.nextInt(3); n > 0; n--) {
      spoiled = once(spoiled, other);
    }
    return bytes(spoiled);
  }

  private byte[] bytes(String text) {
    String ended =
        switch (random.nextInt(20)) {
          case 0 -> text.replace("\n", "\r\n");
          case 1 -> text.replace('\n', '\r');
          case 2 -> "\uFEFF" + text;
          default -> text;
        };
    Charset charset =
        random.nextInt(10) == 0
            ? CHARSETS.get(random.nextInt(CHARSETS.size()))
            : StandardCharsets.UTF_8;
    byte[] bytes = ended.getBytes(charset);
    if (bytes.length == 0) {
      return bytes;
    }
    int at = random.nextInt(bytes.length);
    return switch (random.nextInt(30)) {
      case 0, 1 -> {
        bytes[at] = (byte) random.nextInt(256);
        yield bytes;
      }
      case 2 -> {
        bytes[at] ^= (byte) (1 << random.nextInt(8));
        yield bytes;
      }
      case 3 -> joined(bytes, at, new byte[1 + random.nextInt(600)], at);
      case 4 -> joined(bytes, at, new byte[0], Math.min(bytes.length, at + random.nextInt(600)));
      default -> bytes;
    };
  }

  private static byte[] joined(byte[] bytes, int until, byte[] between, int from) {
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    joined.write(bytes, 0, until);
    joined.writeBytes(between);
    joined.write(bytes, from, bytes.length - from);
    return joined.toByteArray();
  }

  private String once(String text, String other) {
    return switch (random.nextInt(20)) {
      case 0, 1, 2 -> replaced(text, NUMBER, any(NUMBERS));
      case 3, 4, 5, 6 -> scaled(text);
      case 7, 8 -> replaced(text, UNIT, any(UNITS));
      case 9 -> replaced(text, WORD, any(WORDS));
      case 10 -> replaced(text, WORD, word(text));
      case 11 -> replaced(text, VALUE, any(NUMBERS));
      case 12 -> replaced(text, VALUE, value(text));
      case 13 -> replaced(text, VALUE, nested());
      case 14 -> withoutLines(text);
      case 15 -> withLines(text, text);
      case 16 -> withLines(text, other);
      case 17 -> text.substring(0, place(text));
      default -> {
        int at = place(text);
        yield text.substring(0, at)
            + any(WORDS).repeat(1 + random.nextInt(200))
            + text.substring(at);
      }
    };
  }

  private int place(String text) {
    return random.nextInt(text.length() + 1);
  }

  private String any(List<String> list) {
    return list.get(random.nextInt(list.size()));
  }

  /** Something deep or long. */
  private String nested() {
    int n = random.nextInt(8) == 0 ? 20_000 : 1 + random.nextInt(60);
    return switch (random.nextInt(8)) {
      case 0 -> "[".repeat(n);
      case 1 -> "[".repeat(n) + "]".repeat(n);
      case 2 -> "{ a = ".repeat(n) + "1" + " }".repeat(n);
      case 3 -> "[" + "\"1 mm\", ".repeat(n) + "]";
      case 4 -> "\"" + "1".repeat(n) + " mm\"";
      case 5 -> "1".repeat(n);
      case 6 -> "1\n" + "a.".repeat(n) + "a = 1";
      default -> "1\n[" + "a.".repeat(n) + "a]";
    };
  }

  /** A number that is still one, larger, smaller or on the other side of zero. */
  private String scaled(String text) {
    MatchResult m = found(text, NUMBER);
    if (m == null || m.group().length() > 15) {
      return text;
    }
    double value = Double.parseDouble(m.group());
    String by =
        switch (random.nextInt(6)) {
          case 0 -> String.valueOf(-value);
          case 1 -> "0";
          case 2, 3 -> String.valueOf(value * (0.5 + random.nextDouble()));
          case 4 -> String.valueOf(value * Math.pow(10, random.nextInt(5) - 2));
          default -> String.valueOf(value * Math.pow(10, random.nextInt(17) - 8));
        };
    return text.substring(0, m.start()) + by + text.substring(m.end());
  }

  private String word(String text) {
    MatchResult m = found(text, WORD);
    return m == null ? "" : m.group();
  }

  private String value(String text) {
    MatchResult m = found(text, VALUE);
    return m == null ? "" : m.group();
  }

  private String replaced(String text, Pattern what, String by) {
    MatchResult m = found(text, what);
    return m == null ? text : text.substring(0, m.start()) + by + text.substring(m.end());
  }

  private MatchResult found(String text, Pattern what) {
    List<MatchResult> found = what.matcher(text).results().toList();
    return found.isEmpty() ? null : found.get(random.nextInt(found.size()));
  }

  private String withoutLines(String text) {
    List<String> lines = lines(text);
    int from = random.nextInt(lines.size());
    int many = random.nextInt(4) == 0 ? 12 : 1;
    lines.subList(from, Math.min(lines.size(), from + many)).clear();
    return String.join("\n", lines);
  }

  private String withLines(String text, String source) {
    List<String> more = lines(source);
    int from = random.nextInt(more.size());
    int many = random.nextInt(4) == 0 ? 12 : 1;
    List<String> lines = lines(text);
    lines.addAll(
        random.nextInt(lines.size()), more.subList(from, Math.min(more.size(), from + many)));
    return String.join("\n", lines);
  }

  private static List<String> lines(String text) {
    return new ArrayList<>(List.of(text.split("\n", -1)));
  }
}
