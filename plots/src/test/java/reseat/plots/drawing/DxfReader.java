package reseat.plots.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A strict reader of release 12 in ASCII, written apart from the writer, for tests only. */
final class DxfReader {

  /** One group: a code and its value. */
  record Pair(int code, String value) {}

  /** One entity: its kind and its groups, the last of each code. */
  record Entity(String kind, Map<Integer, String> groups) {

    double number(int code) {
      return Double.parseDouble(groups.get(code));
    }

    String layer() {
      return groups.get(8);
    }
  }

  private final List<Pair> pairs = new ArrayList<>();

  DxfReader(byte[] file) {
    for (byte b : file) {
      if (b != '\n' && (b < 0x20 || b > 0x7E)) {
        throw new IllegalArgumentException("not printable ASCII: " + b);
      }
    }
    String[] lines = new String(file, StandardCharsets.US_ASCII).split("\n", -1);
    for (int i = 0; i + 1 < lines.length; i += 2) {
      pairs.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
    }
    Pair last = pairs.get(pairs.size() - 1);
    if (lines.length % 2 == 0 || last.code() != 0 || !last.value().equals("EOF")) {
      throw new IllegalArgumentException("the file does not end with EOF");
    }
  }

  List<Pair> pairs() {
    return pairs;
  }

  /** Everything between a section's head and its end. */
  List<Pair> section(String name) {
    List<Pair> inside = new ArrayList<>();
    boolean within = false;
    for (int i = 0; i < pairs.size(); i++) {
      Pair p = pairs.get(i);
      if (p.code() == 2
          && p.value().equals(name)
          && pairs.get(i - 1).equals(new Pair(0, "SECTION"))) {
        within = true;
      } else if (within && p.equals(new Pair(0, "ENDSEC"))) {
        return inside;
      } else if (within) {
        inside.add(p);
      }
    }
    throw new IllegalArgumentException("no section " + name);
  }

  List<Entity> entities() {
    return grouped(section("ENTITIES"));
  }

  List<String> layers() {
    return grouped(section("TABLES")).stream()
        .filter(e -> e.kind().equals("LAYER"))
        .map(e -> e.groups().get(2))
        .toList();
  }

  private static List<Entity> grouped(List<Pair> pairs) {
    List<Entity> entities = new ArrayList<>();
    Map<Integer, String> groups = new LinkedHashMap<>();
    for (Pair p : pairs) {
      if (p.code() == 0) {
        groups = new LinkedHashMap<>();
        entities.add(new Entity(p.value(), groups));
      } else {
        groups.put(p.code(), p.value());
      }
    }
    return entities;
  }
}
