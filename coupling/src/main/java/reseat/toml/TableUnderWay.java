package reseat.toml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table that is still being filled, with TOML's rules on what may be added to it.
 *
 * <p>A table is opened once by a header. Dotted keys may go on filling a table that dotted keys of
 * the same header made, never one with a header of its own. A table written between braces and a
 * list written between brackets are closed.
 */
final class TableUnderWay {

  /** How a table came to be. */
  private enum Origin {
    /** Named in front of another in a header. */
    IMPLIED,
    /** Opened by a header. */
    HEADER,
    /** Named in front of another in a dotted key. */
    DOTTED
  }

  /** One part of a key. */
  record Key(String name, Place place) {}

  private final Map<String, Slot> slots = new LinkedHashMap<>();
  private final Place place;
  private Origin origin;
  private int section;

  private TableUnderWay(Place place, Origin origin, int section) {
    this.place = place;
    this.origin = origin;
    this.section = section;
  }

  /** A table that a header, a brace or the document itself opens. */
  static TableUnderWay opened(Place place) {
    return new TableUnderWay(place, Origin.HEADER, 0);
  }

  /** What stands under a key: exactly one of a value, a table and a list of tables. */
  private record Slot(
      Place key, TomlValue value, TableUnderWay table, List<TableUnderWay> tables) {}

  /**
   * Puts a value under a dotted key.
   *
   * @param keys parts of the key
   * @param value what to put there
   * @param currentSection number of the header the key stands under
   */
  void put(List<Key> keys, TomlValue value, int currentSection) {
    TableUnderWay table = this;
    for (int i = 0; i < keys.size() - 1; i++) {
      table = table.dotted(keys.get(i), currentSection);
    }
    Key last = keys.get(keys.size() - 1);
    Slot earlier = table.slots.get(last.name());
    if (earlier != null) {
      throw new TomlMistake(
          last.place(),
          TomlWording.key(last.name())
              + " is already given on line "
              + earlier.key.line()
              + "; keep one of the two");
    }
    table.slots.put(last.name(), new Slot(last.place(), value, null, null));
  }

  private TableUnderWay dotted(Key key, int currentSection) {
    Slot slot = slots.get(key.name());
    if (slot == null) {
      TableUnderWay made = new TableUnderWay(key.place(), Origin.DOTTED, currentSection);
      slots.put(key.name(), new Slot(key.place(), null, made, null));
      return made;
    }
    TableUnderWay table = slot.table;
    boolean open =
        table != null
            && (table.origin == Origin.IMPLIED
                || (table.origin == Origin.DOTTED && table.section == currentSection));
    if (!open) {
      throw new TomlMistake(
          key.place(),
          TomlWording.key(key.name())
              + " is already given on line "
              + slot.key.line()
              + "; put all its keys there");
    }
    table.origin = Origin.DOTTED;
    table.section = currentSection;
    return table;
  }

  /**
   * Opens the table of a header.
   *
   * @param keys parts of the header
   * @param at where the header begins
   * @return the table to fill
   */
  TableUnderWay open(List<Key> keys, Place at) {
    TableUnderWay parent = parent(keys, at);
    Key last = keys.get(keys.size() - 1);
    Slot slot = parent.slots.get(last.name());
    if (slot == null) {
      TableUnderWay made = opened(at);
      parent.slots.put(last.name(), new Slot(last.place(), null, made, null));
      return made;
    }
    if (slot.table == null || slot.table.origin != Origin.IMPLIED) {
      throw new TomlMistake(
          last.place(),
          TomlWording.key(last.name())
              + " is already given on line "
              + slot.key.line()
              + (slot.tables != null
                  ? " as a list of tables; write [[ ]] around this one too"
                  : "; put these keys there, or write [[ ]] around each header if there are"
                      + " several"));
    }
    slot.table.origin = Origin.HEADER;
    return slot.table;
  }

  /**
   * Adds a table to the list of a double header.
   *
   * @param keys parts of the header
   * @param at where the header begins
   * @return the table to fill
   */
  TableUnderWay append(List<Key> keys, Place at) {
    TableUnderWay parent = parent(keys, at);
    Key last = keys.get(keys.size() - 1);
    Slot slot = parent.slots.get(last.name());
    TableUnderWay made = opened(at);
    if (slot == null) {
      List<TableUnderWay> tables = new ArrayList<>();
      tables.add(made);
      parent.slots.put(last.name(), new Slot(last.place(), null, null, tables));
    } else if (slot.tables != null) {
      slot.tables.add(made);
    } else {
      throw new TomlMistake(
          last.place(),
          TomlWording.key(last.name())
              + " is already given on line "
              + slot.key.line()
              + ", not as a list of tables; write [[ ]] around each header");
    }
    return made;
  }

  private TableUnderWay parent(List<Key> keys, Place at) {
    TableUnderWay table = this;
    for (int i = 0; i < keys.size() - 1; i++) {
      Key key = keys.get(i);
      Slot slot = table.slots.get(key.name());
      if (slot == null) {
        TableUnderWay made = new TableUnderWay(at, Origin.IMPLIED, 0);
        table.slots.put(key.name(), new Slot(key.place(), null, made, null));
        table = made;
      } else if (slot.table != null) {
        table = slot.table;
      } else if (slot.tables != null) {
        table = slot.tables.get(slot.tables.size() - 1);
      } else {
        throw new TomlMistake(
            key.place(),
            TomlWording.key(key.name())
                + " is already given on line "
                + slot.key.line()
                + " as "
                + slot.value.sort()
                + " and cannot be added to");
      }
    }
    return table;
  }

  /** The finished table. */
  TomlValue.Table finished() {
    Map<String, TomlValue.Entry> entries = new LinkedHashMap<>();
    for (Map.Entry<String, Slot> e : slots.entrySet()) {
      Slot slot = e.getValue();
      TomlValue value = slot.value;
      if (slot.table != null) {
        value = slot.table.finished();
      } else if (slot.tables != null) {
        List<TomlValue> tables = new ArrayList<>();
        for (TableUnderWay table : slot.tables) {
          tables.add(table.finished());
        }
        Place first = slot.tables.get(0).place;
        value = new TomlValue.Array(tables, first.line(), first.column());
      }
      entries.put(e.getKey(), new TomlValue.Entry(value, slot.key.line(), slot.key.column()));
    }
    return new TomlValue.Table(entries, place.line(), place.column());
  }
}
