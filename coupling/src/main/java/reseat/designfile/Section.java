package reseat.designfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.space.Vec3;
import reseat.toml.TomlValue;
import reseat.units.PrintedNumber;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;
import reseat.units.Unit;
import reseat.units.UnitProblem;

/**
 * A table of a file, read with types.
 *
 * <p>Every question notes the key as known and registers a problem if the value does not fit; the
 * answer is then empty or a harmless value, so that reading goes on and all problems come out
 * together. {@link #close()} reports the keys nobody asked for.
 */
final class Section extends TableView {

  private static final String[] AXES = {"[x]", "[y]", "[z]"};

  private final Map<String, Quantity> typed = new LinkedHashMap<>();

  Section(TomlValue.Table table, String path, Problems problems) {
    super(table, path, problems);
  }

  /** The quantity as it was typed, once it has been read. */
  Optional<Quantity> asTyped(String name) {
    return Optional.ofNullable(typed.get(name));
  }

  /** Text, or a number as it would be typed; empty for any other sort of value. */
  Optional<String> plainText(String name) {
    Optional<TomlValue> value = find(name);
    if (value.isPresent() && value.get() instanceof TomlValue.Text text) {
      return Optional.of(text.text());
    }
    return value.isPresent() && value.get() instanceof TomlValue.Numeral n
        ? Optional.of(plain(n))
        : Optional.empty();
  }

  /** A quantity that may be missing. */
  OptionalDouble quantity(String name, QuantityKind kind) {
    Optional<TomlValue> value = find(name);
    return value.isEmpty() ? OptionalDouble.empty() : quantityOf(name, "", value.get(), kind);
  }

  /** Reads a value of a key; the choice is that of a list, such as {@code [x]}. */
  private OptionalDouble quantityOf(
      String name, String choice, TomlValue value, QuantityKind kind) {
    if (problems().keepsKeys()) {
      problems().asked(key(name), kind);
    }
    if (value instanceof TomlValue.Text text) {
      QuantityReading reading = problems().quantity(text.text(), kind);
      if (reading instanceof UnitProblem p) {
        problems().error(text.line(), text.column() + 1 + p.offset(), key(name), p.message());
      } else if (reading instanceof Quantity q && ValueRange.with(q.value(), kind)) {
        typed.put(name, q);
        problems().written(new Written(key(name) + choice, q, text.line(), text.column()));
        return OptionalDouble.of(q.value());
      } else {
        problems()
            .error(text.line(), text.column() + 1, key(name), ValueRange.refusal(text.text()));
      }
      return OptionalDouble.empty();
    }
    if (value instanceof TomlValue.Numeral number) {
      String shown =
          number.whole()
              ? Long.toString((long) number.value())
              : PrintedNumber.shortest(number.value());
      problems()
          .error(
              number.line(),
              number.column(),
              key(name),
              QuantityText.read(shown, kind) instanceof UnitProblem p
                  ? p.message()
                  : "found the bare number " + shown + "; allowed is " + kind.allowed());
      return OptionalDouble.empty();
    }
    wrongSort(name, value, kind.allowed() + ", as text with its unit");
    return OptionalDouble.empty();
  }

  /** A quantity with a value to use when it is missing or wrong. */
  double quantity(String name, QuantityKind kind, double otherwise) {
    return quantity(name, kind).orElse(otherwise);
  }

  /** A quantity that must be there; the harmless value stands in when it is missing or wrong. */
  double required(String name, QuantityKind kind, double harmless) {
    if (!has(name)) {
      error(name, "is missing; write " + kind.allowed());
      return harmless;
    }
    return quantity(name, kind).orElse(harmless);
  }

  /** A quantity that must be above zero. */
  double positive(String name, QuantityKind kind, double harmless) {
    double value = required(name, kind, harmless);
    return checkPositive(name, value, harmless);
  }

  /** A quantity above zero that may be missing. */
  double positiveOr(String name, QuantityKind kind, double otherwise) {
    double value = quantity(name, kind, otherwise);
    return checkPositive(name, value, otherwise);
  }

  private double checkPositive(String name, double value, double harmless) {
    if (!(value > 0)) {
      String shown = asTyped(name).map(Quantity::text).orElse(PrintedNumber.shortest(value));
      error(name, "found \"" + shown + "\"; it must be above zero");
      return harmless;
    }
    return value;
  }

  /** A share, as text with % or as a plain number. */
  double ratio(String name, double otherwise) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get() instanceof TomlValue.Numeral number) {
      if (ValueRange.with(number.value(), QuantityKind.RATIO)) {
        Quantity q = new Quantity(number.value(), QuantityKind.RATIO, plain(number), Unit.ONE);
        problems().written(new Written(key(name), q, number.line(), number.column()));
        return number.value();
      }
      wrongSort(name, number, "a plain number of usual size or a text such as \"2 %\"");
      return otherwise;
    }
    return quantityOf(name, "", value.get(), QuantityKind.RATIO).orElse(otherwise);
  }

  /** A plain positive number without unit that must be there. */
  double number(String name, double harmless) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      error(name, "is missing; write a plain number");
      return harmless;
    }
    if (value.get() instanceof TomlValue.Numeral n
        && n.value() > 0
        && ValueRange.with(n.value(), QuantityKind.RATIO)) {
      return n.value();
    }
    error(
        name,
        "found "
            + (value.get() instanceof TomlValue.Numeral n ? plain(n) : value.get().sort())
            + "; allowed is a plain number above zero, without unit and quotation marks");
    return harmless;
  }

  /** A whole number. */
  int count(String name, int otherwise, int least, int most) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get() instanceof TomlValue.Numeral n
        && n.whole()
        && n.value() >= least
        && n.value() <= most) {
      return (int) n.value();
    }
    error(
        name,
        "found "
            + (value.get() instanceof TomlValue.Numeral n ? plain(n) : value.get().sort())
            + "; allowed is a whole number from "
            + least
            + " to "
            + most);
    return otherwise;
  }

  private static String plain(TomlValue.Numeral n) {
    return n.whole() ? Long.toString((long) n.value()) : PrintedNumber.shortest(n.value());
  }

  /** A list of lengths above zero that may be missing. */
  List<Double> sizes(String name) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return List.of();
    }
    List<Double> sizes = new ArrayList<>();
    if (value.get() instanceof TomlValue.Array array) {
      for (TomlValue one : array.values()) {
        String choice = "[" + (sizes.size() + 1) + "]";
        double size = quantityOf(name, choice, one, QuantityKind.LENGTH).orElse(1);
        if (!(size > 0)) {
          error(name, "found a length that is not above zero");
          return List.of();
        }
        sizes.add(size);
      }
      return sizes;
    }
    wrongSort(name, value.get(), "a list of lengths, such as [\"6 mm\", \"1/2 in\"]");
    return List.of();
  }

  /** A point or another vector: a list of three quantities along x, y and z. */
  Optional<Vec3> vector(String name, QuantityKind kind) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof TomlValue.Array array && array.values().size() == 3) {
      double[] c = new double[3];
      boolean good = true;
      for (int i = 0; i < 3; i++) {
        OptionalDouble q = quantityOf(name, AXES[i], array.values().get(i), kind);
        good &= q.isPresent();
        c[i] = q.orElse(0);
      }
      return good ? Optional.of(new Vec3(c[0], c[1], c[2])) : Optional.empty();
    }
    error(
        name,
        "found "
            + (value.get() instanceof TomlValue.Array array
                ? "a list of " + array.values().size()
                : value.get().sort())
            + "; allowed is a list of three, each "
            + kind.allowed());
    return Optional.empty();
  }

  /** A table below this one. */
  Optional<Section> child(String name) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof TomlValue.Table t) {
      return Optional.of(new Section(t, key(name), problems()));
    }
    wrongSort(name, value.get(), "a table: [" + key(name) + "] or { ... }");
    return Optional.empty();
  }

  /** A table that must be there. */
  Optional<Section> requiredChild(String name, String purpose) {
    if (!has(name)) {
      error(name, "is missing; write " + purpose);
      return Optional.empty();
    }
    return child(name);
  }

  /** Tables repeated under one name, [[name]]. */
  List<Section> children(String name) {
    Optional<TomlValue> value = find(name);
    if (value.isEmpty()) {
      return List.of();
    }
    List<Section> sections = new ArrayList<>();
    if (value.get() instanceof TomlValue.Array array) {
      for (int i = 0; i < array.values().size(); i++) {
        if (array.values().get(i) instanceof TomlValue.Table t) {
          sections.add(new Section(t, key(name) + "[" + (i + 1) + "]", problems()));
        } else {
          wrongSort(name, array.values().get(i), "a table");
        }
      }
      return sections;
    }
    wrongSort(name, value.get(), "one or more tables headed [[" + key(name) + "]]");
    return List.of();
  }
}
