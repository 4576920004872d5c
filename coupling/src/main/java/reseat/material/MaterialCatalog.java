package reseat.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.units.NearestWord;

/**
 * The materials the program knows, at room temperature, and those a user adds.
 *
 * <p>Typical values: 5 % either way on a modulus is normal between batches and tests, and the
 * strength of brittle materials hangs on their surface. Where a source prints a range the catalog
 * keeps it and says which value was taken. A user who has a test certificate should override.
 *
 * <p>Immutable; a design adds its own materials with {@link #with(Material)}.
 */
public final class MaterialCatalog {

  /**
   * Version of the shipped tables of materials and friction, a whole number that stands in every
   * result; to be raised by one with every change in them.
   */
  public static final int VERSION = 2;

  private static final MaterialCatalog STANDARD = new MaterialCatalog(Map.of());

  /** The user's materials by name; one that stands for a shipped material has its name. */
  private final Map<String, Material> own;

  private MaterialCatalog(Map<String, Material> own) {
    this.own = own;
  }

  /**
   * Returns the catalog that ships with the program.
   *
   * @return the catalog
   */
  public static MaterialCatalog standard() {
    return STANDARD;
  }

  /**
   * Finds a material.
   *
   * @param name its name or an alias, in upper or lower case, with or without spaces and hyphens; a
   *     word for the form of stock, such as bar or plate, may stand with it
   * @return the material, if the catalog has it
   */
  public Optional<Material> find(String name) {
    Optional<Material> found = called(plain(name));
    if (found.isPresent()) {
      return found;
    }
    String bare = ShopNames.withoutForm(name);
    return bare.equals(name) ? found : called(plain(bare));
  }

  private Optional<Material> called(String wanted) {
    for (Material material : own.values()) {
      if (isCalled(material, wanted)) {
        return Optional.of(material);
      }
    }
    int index = MaterialTable.shipped().indexOf(wanted);
    return index < 0 ? Optional.empty() : Optional.of(shippedOrOwn(index));
  }

  /**
   * Returns all materials.
   *
   * @return the materials, in the order of the shipped table, added ones last
   */
  public List<Material> materials() {
    MaterialTable table = MaterialTable.shipped();
    Map<String, Material> all = new LinkedHashMap<>();
    for (int i = 0; i < table.size(); i++) {
      all.put(table.name(i), table.material(i));
    }
    all.putAll(own);
    return List.copyOf(all.values());
  }

  /**
   * Returns the names by which a design file may call them.
   *
   * @return the names, without aliases
   */
  public List<String> names() {
    MaterialTable table = MaterialTable.shipped();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < table.size(); i++) {
      names.add(table.name(i));
    }
    for (String name : own.keySet()) {
      if (!names.contains(name)) {
        names.add(name);
      }
    }
    return List.copyOf(names);
  }

  /**
   * Names the materials that an unknown name may have meant.
   *
   * @param name as typed, not found
   * @return what a shop calls so; else the nearest name or alias, but no ceramic for a metal; empty
   *     if nothing is near
   */
  public List<String> meant(String name) {
    List<String> shop = ShopNames.choices(name);
    if (!shop.isEmpty()) {
      return shop;
    }
    boolean metal = ShopNames.metal(name);
    Map<String, String> known = new LinkedHashMap<>();
    for (Material m : materials()) {
      if (!metal || !m.brittle() || m.family().equals("cast iron")) {
        known.put(m.name(), m.name());
        for (String alias : m.aliases()) {
          known.putIfAbsent(alias, m.name());
        }
      }
    }
    return NearestWord.to(ShopNames.withoutForm(name), known.keySet())
        .map(known::get)
        .map(List::of)
        .orElse(List.of());
  }

  /**
   * Returns the catalog with a material added, or replaced if it has one of that name or alias.
   *
   * @param material the material
   * @return the changed copy
   */
  public MaterialCatalog with(Material material) {
    Map<String, Material> changed = new LinkedHashMap<>(own);
    Optional<Material> present = find(material.name());
    changed.put(present.isPresent() ? present.get().name() : material.name(), material);
    return new MaterialCatalog(changed);
  }

  /** A shipped material found by an alias may have been replaced under its name. */
  private Material shippedOrOwn(int index) {
    MaterialTable table = MaterialTable.shipped();
    Material replaced = own.get(table.name(index));
    return replaced != null ? replaced : table.material(index);
  }

  private static boolean isCalled(Material material, String plainName) {
    if (plain(material.name()).equals(plainName)) {
      return true;
    }
    for (String alias : material.aliases()) {
      if (plain(alias).equals(plainName)) {
        return true;
      }
    }
    return false;
  }

  /** Strips what people write in different ways: case, spaces, hyphens. */
  static String plain(String name) {
    StringBuilder kept = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c != ' ' && c != '-' && c != '_') {
        kept.append(Character.toLowerCase(c));
      }
    }
    return kept.toString();
  }
}
