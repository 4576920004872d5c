package reseat.report.catalog;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Map;
import reseat.elementary.Elementary;
import reseat.material.FrictionCatalog;
import reseat.material.FrictionPair;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.units.FilledText;

/** The catalog of materials as text. */
public final class MaterialsText {

  private MaterialsText() {}

  /**
   * Lists all materials, a line each, and the friction table.
   *
   * @param catalog materials
   * @param friction friction pairs
   * @param out where to
   */
  public static void list(MaterialCatalog catalog, FrictionCatalog friction, PrintWriter out) {
    out.println(
        FilledText.of(
            "%-16s %7s %6s %7s %7s %8s  %s",
            "name", "E GPa", "nu", "kg/m3", "um/m/K", "flow MPa", "what it is"));
    for (Material m : catalog.materials()) {
      out.println(
          FilledText.of(
              "%-16s %7s %6s %7s %7s %8s  %s",
              m.name(),
              shown(m, MaterialProperty.MODULUS),
              shown(m, MaterialProperty.POISSON),
              shown(m, MaterialProperty.DENSITY),
              shown(m, MaterialProperty.EXPANSION),
              m.pressedStrength()
                  .map(v -> printed(MaterialProperty.YIELD_STRENGTH, v.nominal()))
                  .orElse("-"),
              m.description()));
    }
    out.println();
    out.println("Friction (a rough guide: tables of friction belong to the system they came from)");
    for (FrictionPair p : friction.pairs()) {
      out.println(
          FilledText.of(
              "  %-33s %-6s %.2f to %.2f, compute with %.2f  [%s] %s",
              p.first() + " / " + p.second(),
              p.state().name().toLowerCase(Locale.ROOT),
              p.low(),
              p.high(),
              p.nominal(),
              p.provenance().words(),
              p.source()));
    }
    out.println();
    out.println("'reseat materials NAME' tells one material with the source of every value.");
  }

  /**
   * Tells a material in one line.
   *
   * @param m the material
   * @param out where to
   */
  public static void line(Material m, PrintWriter out) {
    out.println(
        FilledText.of(
            "  %-16s %s%s",
            m.name(), m.description(), m.hardness().isEmpty() ? "" : ", " + m.hardness()));
  }

  /**
   * Tells one material.
   *
   * @param m the material
   * @param out where to
   */
  public static void one(Material m, PrintWriter out) {
    out.println(m.name() + ": " + m.description() + (m.brittle() ? " (brittle)" : ""));
    if (!m.aliases().isEmpty()) {
      out.println("  also found as " + String.join(", ", m.aliases()));
    }
    if (!m.hardness().isEmpty()) {
      out.println("  hardness " + m.hardness());
    }
    for (Map.Entry<MaterialProperty, MaterialValue> e : m.values().entrySet()) {
      MaterialProperty p = e.getKey();
      MaterialValue v = e.getValue();
      String range =
          v.low() == v.high()
              ? ""
              : " (" + printed(p, v.low()) + " to " + printed(p, v.high()) + ")";
      out.println(
          FilledText.of(
              "  %-27s %s %s%s  [%s] %s",
              p.words(),
              printed(p, v.nominal()),
              p.unit(),
              range,
              v.provenance().words(),
              v.source()));
    }
    if (!m.note().isEmpty()) {
      out.println("  " + m.note());
    }
  }

  private static String shown(Material m, MaterialProperty p) {
    return m.value(p).map(v -> printed(p, v.nominal())).orElse("-");
  }

  private static String printed(MaterialProperty p, double si) {
    double v = p.fromSi(si);
    String text = FilledText.of("%.4g", v);
    return v == Elementary.rint(v) && v < 1e6
        ? FilledText.of("%.0f", v)
        : text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }
}
