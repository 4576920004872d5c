package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignKey;
import reseat.units.Quantity;
import reseat.units.QuantityKind;

/** The keys of a design file that levers move, and what the file has there. */
final class FileKeys {

  private final AlterableDesign file;

  FileKeys(AlterableDesign file) {
    this.file = file;
  }

  AlterableDesign file() {
    return file;
  }

  CouplingDesign design() {
    return file.unaltered().design().orElseThrow();
  }

  /** Tables of supports: the shorthand, or one for each. */
  List<String> supports() {
    if (!tables("layout")) {
      List<String> each = new ArrayList<>();
      for (int i = 1; i <= design().supports().size(); i++) {
        each.add("support[" + i + "]");
      }
      return each;
    }
    return List.of("layout");
  }

  private boolean tables(String path) {
    return typed(path + ".circle_diameter").isPresent();
  }

  /** Tables of seats: of the shorthand by their names, or one for each support. */
  List<String> seats() {
    List<String> each = new ArrayList<>();
    for (String support : supports()) {
      if (support.equals("layout")) {
        each.add("layout.groove");
        each.add("layout.trihedral");
        each.add("layout.cone");
        each.add("layout.flat");
      } else {
        each.add(support + ".seat");
      }
    }
    return each;
  }

  List<String> preloads() {
    List<String> each = new ArrayList<>();
    for (int i = 1; i <= design().preloads().size(); i++) {
      each.add("preload[" + i + "]");
    }
    return each;
  }

  static List<String> below(List<String> tables, String name) {
    List<String> keys = new ArrayList<>();
    for (String table : tables) {
      keys.add(table + "." + name);
    }
    return keys;
  }

  /** A value as typed; empty if the key is absent or holds a list or a table. */
  Optional<String> typed(String path) {
    try {
      return file.typed(new DesignKey(path, path, Optional.empty()));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  Optional<Quantity> quantity(String path, QuantityKind kind) {
    return typed(path)
        .flatMap(
            t -> file.quantity(t, kind) instanceof Quantity q ? Optional.of(q) : Optional.empty());
  }

  /** The keys among these that have a quantity in the file. */
  List<Held> held(List<String> paths, QuantityKind kind) {
    List<Held> found = new ArrayList<>();
    for (String path : paths) {
      Optional<Quantity> q = quantity(path, kind);
      if (q.isPresent() && q.get().value() > 0) {
        found.add(new Held(path, q.get()));
      }
    }
    return found;
  }

  /** A key and the quantity that it holds. */
  record Held(String path, Quantity quantity) {

    Alteration to(String value) {
      return new Alteration(new DesignKey(path, path, Optional.of(quantity.kind())), value);
    }
  }

  static Alteration word(String path, String value) {
    return new Alteration(new DesignKey(path, path, Optional.empty()), value);
  }

  static Alteration quantity(String path, QuantityKind kind, String value) {
    return new Alteration(new DesignKey(path, path, Optional.of(kind)), value);
  }
}
