package reseat.designfile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import reseat.design.Preload;
import reseat.toml.TomlDocument;
import reseat.toml.TomlReader;
import reseat.toml.TomlText;
import reseat.toml.TomlValue;
import reseat.units.PrintedNumber;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;

/**
 * A design file whose keys can be given other values, again and again.
 *
 * <p>A key is written as the file words it: names with dots between them. One of several tables
 * under a name is chosen in brackets by its name or by its number from 1, {@code
 * load_case[rough].force.X} or {@code preload[2].force}; where there is only one the brackets may
 * be left out. {@code [*]} means all of them. One of a list of three goes by {@code [x]}, {@code
 * [y]} or {@code [z]}. A key that may stand in the file but does not is added.
 *
 * <p>The text is parsed once. An altered document is read by the reader of every design file, which
 * gives the same messages; a problem has the place in the file of the value that was replaced, or
 * of the table that was added to. Values never change; quantities that were read once are recalled.
 * For use by several threads.
 */
public final class AlterableDesign {

  private final String text;
  private final TomlDocument document;
  private final DesignFile unaltered;
  private final KnownQuantities quantities = new KnownQuantities();

  private AlterableDesign(String text, TomlDocument document, DesignFile unaltered) {
    this.text = text;
    this.document = document;
    this.unaltered = unaltered;
  }

  /**
   * Reads a design file.
   *
   * @param file the file, UTF-8 text
   * @return the file; {@link #unaltered()} says whether it can be used
   * @throws IOException if the file cannot be read
   */
  public static AlterableDesign read(Path file) throws IOException {
    Problems problems = new Problems();
    String text = SourceText.of(file, problems);
    return problems.hasErrors()
        ? new AlterableDesign(text, TomlReader.read(""), new DesignFile(problems.sorted()))
        : of(text);
  }

  /**
   * Reads the text of a design file.
   *
   * @param text the whole text, lines ended by a line feed
   * @return the file; {@link #unaltered()} says whether it can be used
   */
  public static AlterableDesign of(String text) {
    TomlDocument document = TomlReader.read(text);
    return new AlterableDesign(text, document, DesignFile.of(document, new Problems()));
  }

  /**
   * Returns the file as it stands.
   *
   * @return its design with warnings, or its errors
   */
  public DesignFile unaltered() {
    return unaltered;
  }

  /**
   * Looks a key up.
   *
   * @param path as the user writes it
   * @return the key, with the kind of quantity that it takes
   * @throws IllegalArgumentException if no such key may stand in this file; the message names what
   *     may have been meant
   */
  public DesignKey key(String path) {
    List<KeyPath> each = KeyPath.of(path).each(document.root());
    TomlValue.Table probe = document.root();
    for (KeyPath one : each) {
      probe = one.with(probe, new TomlValue.Text("", 1, 1));
    }
    String inFile = each.get(0).inFile(probe);
    Problems problems = new Problems(true);
    DesignFile.of(new TomlDocument(probe, List.of()), problems);
    Optional<QuantityKind> kind = problems.keys().get(inFile);
    if (kind == null) {
      // an unknown table may keep the reader from others, so the file itself is asked too
      DesignFile.of(document, problems);
      throw new IllegalArgumentException(
          new KnownKeys(problems.keys().keySet()).unknown(path, inFile));
    }
    return new DesignKey(path, inFile, kind);
  }

  /**
   * Returns the value of a key in the file as it stands.
   *
   * @param key a key of this file
   * @return the value as it would be typed; empty if the key is absent or holds a list or a table,
   *     or if it means several that differ
   */
  public Optional<String> typed(DesignKey key) {
    Optional<String> common = Optional.empty();
    for (KeyPath path : KeyPath.of(key.path()).each(document.root())) {
      Optional<String> one = typed(path.find(document.root()));
      if (one.isEmpty() || (common.isPresent() && !common.equals(one))) {
        return Optional.empty();
      }
      common = one;
    }
    return common;
  }

  /**
   * Reads a quantity as the readers of this file do.
   *
   * @param text as typed
   * @param kind what must stand there
   * @return the quantity, or the one thing wrong with the text
   */
  public QuantityReading quantity(String text, QuantityKind kind) {
    return quantities.read(text, kind);
  }

  private static Optional<String> typed(TomlValue value) {
    if (value instanceof TomlValue.Text t) {
      return Optional.of(t.text());
    } else if (value instanceof TomlValue.Numeral n) {
      return Optional.of(
          n.whole() ? Long.toString((long) n.value()) : PrintedNumber.shortest(n.value()));
    } else if (value instanceof TomlValue.Flag f) {
      return Optional.of(Boolean.toString(f.value()));
    }
    return Optional.empty();
  }

  /**
   * Reads the design with other values.
   *
   * @param alterations keys of this file and their values, the last one counts
   * @return the design with its warnings, or every error that was found
   */
  public DesignFile with(List<Alteration> alterations) {
    return DesignFile.of(altered(alterations), new Problems(quantities));
  }

  /**
   * Reads nothing but the preloads, with other values, which takes a fraction of the time. They
   * depend on nothing else in the file than its own materials.
   *
   * @param alterations keys of this file and their values
   * @return the preloads of the design that {@link #with} would read; empty if they have errors
   */
  public Optional<List<Preload>> preloads(List<Alteration> alterations) {
    Problems problems = new Problems(quantities);
    List<Preload> preloads = DesignFile.preloads(altered(alterations), problems);
    return problems.hasErrors() ? Optional.empty() : Optional.of(List.copyOf(preloads));
  }

  /**
   * Returns what a search for the best design is to look for.
   *
   * @return the table [size]; nothing to vary if there is none
   */
  public SizeTargets size() {
    Section root = new Section(document.root(), "", new Problems());
    return root.child("size").map(SizeReader::read).orElse(SizeTargets.NONE);
  }

  private TomlDocument altered(List<Alteration> alterations) {
    TomlValue.Table root = document.root();
    for (Alteration a : alterations) {
      for (KeyPath path : KeyPath.of(a.key().path()).each(root)) {
        root = path.with(root, value(a, path.find(root)));
      }
    }
    return new TomlDocument(root, document.errors());
  }

  /**
   * Writes the file with other values: the user's text with only these values replaced, or lines
   * added.
   *
   * @param alterations keys of this file and their values
   * @return the whole text; reading it gives the design of {@link #with}
   */
  public String textWith(List<Alteration> alterations) {
    String altered = text;
    for (Alteration a : alterations) {
      for (KeyPath path : KeyPath.of(a.key().path()).each(document.root())) {
        altered = textWith(altered, path, a);
      }
    }
    return altered;
  }

  private static String textWith(String text, KeyPath path, Alteration a) {
    TomlValue.Table root = TomlReader.read(text).root();
    TomlValue old = path.find(root);
    TomlValue value = value(a, old);
    String written = value instanceof TomlValue.Text t ? TomlText.quoted(t.text()) : a.value();
    if (old == null) {
      return path.addedTo(text, root, written);
    }
    if (old instanceof TomlValue.Table t && !TomlText.isBraced(text, t)) {
      throw new IllegalArgumentException(
          a.key().path() + " is a table with a header of its own; alter its keys one by one");
    }
    return TomlText.replaced(text, old, written);
  }

  /** The value in the sort that the key takes: text with a unit, or TOML's own writing. */
  private static TomlValue value(Alteration a, TomlValue old) {
    String typed = a.value().strip();
    boolean nested = typed.startsWith("[") || typed.startsWith("{");
    boolean quantity = a.key().kind().map(k -> k != QuantityKind.RATIO).orElse(false);
    boolean word = a.key().kind().isEmpty() && old instanceof TomlValue.Text;
    Optional<TomlValue> plain =
        nested || !(quantity || word) ? TomlText.value(typed) : Optional.empty();
    return plain.orElse(new TomlValue.Text(a.value(), 1, 1));
  }
}
