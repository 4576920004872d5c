package reseat.designfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.Acceptance;
import reseat.design.CheckKind;
import reseat.toml.TomlValue;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/** Reads [[accepted]], the soft limits that the owner of a design accepts to be passed. */
final class AcceptanceReader {

  private static final String EXAMPLES =
      "a value with its unit such as \"3.4 GPa\" or \"2.5 um\", a share of the limit such as"
          + " \"110 %\", or a plain factor such as 1.1";

  /** What a value of the file may be; where two share a unit the former counts. */
  private static final List<QuantityKind> OF_A_FILE =
      List.of(
          QuantityKind.PRESSURE,
          QuantityKind.LENGTH,
          QuantityKind.FORCE,
          QuantityKind.ANGLE,
          QuantityKind.STIFFNESS,
          QuantityKind.TORQUE,
          QuantityKind.TURNING_STIFFNESS,
          QuantityKind.AREA,
          QuantityKind.MASS,
          QuantityKind.DENSITY,
          QuantityKind.TEMPERATURE_DIFFERENCE,
          QuantityKind.TEMPERATURE,
          QuantityKind.EXPANSION);

  private static final String NO_VALUE = ", which is no value; allowed is " + EXAMPLES;

  private AcceptanceReader() {}

  static List<Acceptance> read(Section root) {
    List<Section> tables = root.children("accepted");
    if (tables.isEmpty()) {
      return List.of();
    }
    List<Acceptance> accepted = new ArrayList<>();
    Map<String, CheckKind> checks = checks();
    for (Section s : tables) {
      Optional<CheckKind> check = s.requiredChoice("check", checks);
      String where = s.text("where", "");
      Optional<Quantity> upTo = upTo(s, check);
      String reason = reason(s);
      TomlValue.Table table = s.table();
      TomlValue place = s.find("where").orElse(table);
      if (check.isPresent() && check.get() == CheckKind.INPUT && where.isBlank()) {
        s.error("where", "is missing; write the key that is meant, such as \"preload[1].force\"");
      } else if (check.isPresent() && upTo.isPresent() && !reason.isBlank()) {
        accepted.add(
            new Acceptance(
                check.get(),
                where.strip(),
                upTo.get().value(),
                upTo.get().kind(),
                upTo.get().text().strip(),
                reason,
                place.line(),
                place.column()));
      }
      s.close();
    }
    return accepted;
  }

  private static Map<String, CheckKind> checks() {
    Map<String, CheckKind> words = new LinkedHashMap<>();
    for (CheckKind kind : CheckKind.values()) {
      if (kind != CheckKind.ASSUMPTION) { // an assumption is settled by stating the value
        words.put(kind.words(), kind);
      }
    }
    return words;
  }

  private static String reason(Section s) {
    if (!s.has("reason")) {
      s.error("reason", "is missing; write in a few words why this is accepted");
      return "";
    }
    return s.requiredText("reason", "");
  }

  private static Optional<Quantity> upTo(Section s, Optional<CheckKind> check) {
    Optional<TomlValue> value = s.find("up_to");
    if (value.isEmpty()) {
      s.error("up_to", "is missing; write how far the limit may be passed: " + EXAMPLES);
      return Optional.empty();
    }
    String text = s.plainText("up_to").orElse(null);
    if (text == null) {
      s.wrongSort("up_to", value.get(), EXAMPLES);
      return Optional.empty();
    }
    boolean any = check.isEmpty() || check.get() == CheckKind.INPUT;
    List<QuantityKind> kinds = new ArrayList<>(List.of(QuantityKind.RATIO));
    kinds.addAll(any ? OF_A_FILE : check.get().measured());
    for (QuantityKind kind : kinds) {
      if (QuantityText.read(text, kind) instanceof Quantity q && ValueRange.with(q.value(), kind)) {
        return Optional.of(q);
      }
    }
    s.error("up_to", "found \"" + text + "\"" + (any ? NO_VALUE : notOf(check.get())));
    return Optional.empty();
  }

  /** What else may stand beside a check. */
  private static String notOf(CheckKind check) {
    StringBuilder own = new StringBuilder();
    for (QuantityKind kind : check.measured()) {
      own.append(kind.allowed()).append("; ");
    }
    return ", which is nothing that the check \""
        + check.words()
        + "\" compares; allowed is "
        + own
        + "a share of the limit such as \"110 %\"; or a plain factor such as 1.1";
  }
}
