package reseat.cli.command;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Spoils a text file as slips of a hand, a spreadsheet or a disk do; the same luck, the same text.
 */
final class SpoiledText {

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
  private static final Pattern WORD = Pattern.compile("[A-Za-z_]{2,}");

  private static final List<String> NUMBERS =
      List.of(
          "NaN",
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
          "1_000");

  private static final List<String> WORDS =
      List.of(
          "mm", "um", "in", "N", "lbf", "deg", "Pa", "kgf", "true", "vee", "flat", "cone", "",
          "ball", "\"", "[[", "]", "#", "=", "\u0000", "\uFEFF", "\r", "\r\n", "\t", "Ø", "𝛍", "{",
          "'''");

  private final Random random;

  SpoiledText(long seed) {
    random = new Random(seed);
  }

  /** Spoils one to three places. */
  byte[] of(String text) {
    String spoiled = text;
    for (int n = 1 + random.nextInt(3); n > 0; n--) {
      spoiled = once(spoiled);
    }
    byte[] bytes =
        spoiled.getBytes(
            switch (random.nextInt(20)) {
              case 0 -> StandardCharsets.ISO_8859_1;
              case 1 -> StandardCharsets.UTF_16;
              default -> StandardCharsets.UTF_8;
            });
    if (bytes.length > 0 && random.nextInt(10) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private String once(String text) {
    return switch (random.nextInt(9)) {
      case 0, 1, 2 -> replaced(text, NUMBER, any(NUMBERS));
      case 3, 4 -> replaced(text, WORD, any(WORDS));
      case 5 -> withoutLine(text);
      case 6 -> withLineTwice(text);
      case 7 -> text.substring(0, random.nextInt(text.length() + 1));
      default -> {
        int at = random.nextInt(text.length() + 1);
        yield text.substring(0, at)
            + any(WORDS).repeat(1 + random.nextInt(200))
            + text.substring(at);
      }
    };
  }

  private String any(List<String> list) {
    return list.get(random.nextInt(list.size()));
  }

  private String replaced(String text, Pattern what, String by) {
    List<MatchResult> found = what.matcher(text).results().toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult m = found.get(random.nextInt(found.size()));
    return text.substring(0, m.start()) + by + text.substring(m.end());
  }

  private String withoutLine(String text) {
    List<String> lines = new java.util.ArrayList<>(List.of(text.split("\n", -1)));
    lines.remove(random.nextInt(lines.size()));
    return String.join("\n", lines);
  }

  private String withLineTwice(String text) {
    List<String> lines = new java.util.ArrayList<>(List.of(text.split("\n", -1)));
    lines.add(random.nextInt(lines.size()), lines.get(random.nextInt(lines.size())));
    return String.join("\n", lines);
  }
}
