package reseat.material;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The table of materials that ships with the program.
 *
 * <p>A material is made when it is first asked for: one check needs two of them, and start-up is
 * short.
 */
final class MaterialTable {

  private static final class Shipped {
    static final MaterialTable TABLE = new MaterialTable(TableResource.lines("materials.tsv"));
  }

  /** One material's lines: its head cut into cells, its values not yet. */
  private static final class Entry {
    final String[] head;
    final String[] aliases;
    final List<String> values = new ArrayList<>(10);
    Material made;

    Entry(String[] head) {
      this.head = head;
      this.aliases = head[3].isEmpty() ? new String[0] : TableResource.cells(head[3], '|');
    }
  }

  private final List<Entry> entries = new ArrayList<>();

  private MaterialTable(List<String> lines) {
    Entry open = null;
    for (String line : lines) {
      if (line.startsWith("material\t")) {
        open = new Entry(TableResource.cells(line, '\t'));
        entries.add(open);
      } else {
        open.values.add(line);
      }
    }
  }

  static MaterialTable shipped() {
    return Shipped.TABLE;
  }

  int size() {
    return entries.size();
  }

  String name(int index) {
    return entries.get(index).head[1];
  }

  /** Returns the place of a material called so, by {@link MaterialCatalog#plain}, or -1. */
  int indexOf(String plainName) {
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      if (MaterialCatalog.plain(entry.head[1]).equals(plainName)) {
        return i;
      }
      for (String alias : entry.aliases) {
        if (MaterialCatalog.plain(alias).equals(plainName)) {
          return i;
        }
      }
    }
    return -1;
  }

  Material material(int index) {
    Entry entry = entries.get(index);
    synchronized (entry) {
      if (entry.made == null) {
        entry.made = make(entry);
      }
      return entry.made;
    }
  }

  /** Head: material, name, description, aliases, family, brittle or ductile, hardness, note. */
  private static Material make(Entry entry) {
    Map<MaterialProperty, MaterialValue> values = new EnumMap<>(MaterialProperty.class);
    for (String line : entry.values) {
      String[] row = TableResource.cells(line, '\t');
      MaterialProperty property = MaterialProperty.valueOf(row[0].toUpperCase(Locale.ROOT));
      values.put(property, value(property, row));
    }
    String[] head = entry.head;
    return new Material(
        head[1],
        head[2],
        List.of(entry.aliases),
        head[4],
        head[5].equals("brittle"),
        head[6],
        values,
        head[7]);
  }

  /** Row: property, nominal, low, high (all in the property's printed unit), mark, source. */
  private static MaterialValue value(MaterialProperty property, String[] row) {
    double nominal = property.toSi(Double.parseDouble(row[1]));
    return new MaterialValue(
        nominal,
        row[2].isEmpty() ? nominal : property.toSi(Double.parseDouble(row[2])),
        row[3].isEmpty() ? nominal : property.toSi(Double.parseDouble(row[3])),
        Provenance.valueOf(row[4]),
        row[5]);
  }
}
