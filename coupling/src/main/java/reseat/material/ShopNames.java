package reseat.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a shop calls its materials where one word stands for several: the ones to choose from.
 *
 * <p>Which materials a word stands for is common practice, no source.
 */
final class ShopNames {

  /** Words for the form in which stock is sold; they say nothing of the material. */
  private static final List<String> FORMS =
      List.of(
          "bar",
          "barstock",
          "rod",
          "plate",
          "sheet",
          "stock",
          "round",
          "flat",
          "block",
          "billet",
          "ball",
          "balls");

  private static final List<String> HARDENED = List.of("52100", "440C", "A2", "D2", "O1", "M2");

  /** Materials to choose from, by plain name. */
  private static final Map<String, List<String>> CHOICES =
      Map.ofEntries(
          Map.entry("steel", List.of("mild steel", "1018", "12L14", "1045", "4140", "A2", "52100")),
          Map.entry("hardenedsteel", HARDENED),
          Map.entry("hardsteel", HARDENED),
          Map.entry("toolsteel", List.of("A2", "D2", "O1", "M2")),
          Map.entry("gaugepin", List.of("52100", "A2", "tungsten carbide")),
          Map.entry("dowelpin", List.of("52100", "4140", "440C")),
          Map.entry("dowel", List.of("52100", "4140", "440C")),
          Map.entry("drillblank", List.of("M2", "tungsten carbide")),
          Map.entry("alloysteel", List.of("4140", "52100", "screw 12.9")),
          Map.entry("stainless", List.of("303", "304", "316", "17-4PH", "420", "440C")),
          Map.entry("stainlesssteel", List.of("303", "304", "316", "17-4PH", "420", "440C")),
          Map.entry("castiron", List.of("grey iron 20", "grey iron 40")),
          Map.entry("iron", List.of("grey iron 20", "grey iron 40", "mild steel")),
          Map.entry("screw", List.of("screw 8.8", "screw 12.9")),
          Map.entry("bolt", List.of("screw 8.8", "screw 12.9")),
          Map.entry("setscrew", List.of("screw 12.9")),
          Map.entry("bronze", List.of("C932")),
          Map.entry(
              "ceramic", List.of("silicon nitride", "alumina", "zirconia", "silicon carbide")));

  /** Beginnings of the names of metals; what is called so is not a ceramic. */
  private static final List<String> METALS =
      List.of(
          "alum",
          "steel",
          "stainless",
          "iron",
          "brass",
          "bronze",
          "copper",
          "titan",
          "zinc",
          "nickel",
          "chrom",
          "magnes",
          "invar",
          "inconel",
          "tool",
          "alloy",
          "bearing");

  private ShopNames() {}

  /**
   * Leaves out the words for the form of stock.
   *
   * @param name as typed
   * @return the name without them, or as it is if nothing would be left
   */
  static String withoutForm(String name) {
    List<String> kept = new ArrayList<>();
    int start = 0;
    String text = name.strip() + " ";
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == ' ') {
        String word = text.substring(start, i);
        if (!word.isEmpty() && !FORMS.contains(word.toLowerCase(Locale.ROOT))) {
          kept.add(word);
        }
        start = i + 1;
      }
    }
    return kept.isEmpty() ? name : String.join(" ", kept);
  }

  /**
   * Names what a shop word may stand for.
   *
   * @param name as typed
   * @return names of the catalog; empty if the word is none of a shop's
   */
  static List<String> choices(String name) {
    List<String> found = CHOICES.get(MaterialCatalog.plain(name));
    if (found == null) {
      found = CHOICES.get(MaterialCatalog.plain(withoutForm(name)));
    }
    String singular = MaterialCatalog.plain(withoutForm(name));
    if (found == null && singular.endsWith("s")) {
      found = CHOICES.get(singular.substring(0, singular.length() - 1));
    }
    return found == null ? List.of() : found;
  }

  /**
   * Says whether a name is that of a metal.
   *
   * @param name as typed
   * @return whether a word in it begins like a metal, or is a number, as grades of steel are
   */
  static boolean metal(String name) {
    for (String word : name.toLowerCase(Locale.ROOT).split("[ _-]", -1)) {
      for (String beginning : METALS) {
        if (word.startsWith(beginning)) {
          return true;
        }
      }
      if (!word.isEmpty() && word.chars().allMatch(c -> c >= '0' && c <= '9')) {
        return true;
      }
    }
    return false;
  }
}
