package reseat.designfile;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.units.Quantity;
import reseat.units.QuantityKind;

/** Reads [[material]] tables and looks up materials by name. */
final class MaterialReader {

  private static final Map<String, MaterialProperty> PRESSURES =
      Map.of(
          "youngs_modulus", MaterialProperty.MODULUS,
          "yield_strength", MaterialProperty.YIELD_STRENGTH,
          "compressive_yield_strength", MaterialProperty.COMPRESSIVE_YIELD,
          "proof_stress_1_percent", MaterialProperty.PROOF_1_PERCENT,
          "tensile_strength", MaterialProperty.TENSILE_STRENGTH,
          "flexural_strength", MaterialProperty.FLEXURAL_STRENGTH,
          "compressive_strength", MaterialProperty.COMPRESSIVE_STRENGTH);

  /** Stands in for a material that could not be read, so that reading goes on. */
  static final Material STAND_IN = new Material("unknown", new ElasticConstants(206e9, 0.3));

  private MaterialCatalog catalog = MaterialCatalog.standard();

  /** Names of the file's own materials, those that could not be read among them. */
  private final Set<String> declared = new HashSet<>();

  /** Adds the file's own materials to the catalog. */
  void read(List<Section> sections) {
    for (Section s : sections) {
      String name = s.requiredText("name", "unnamed");
      declared.add(name);
      Optional<Material> base = Optional.empty();
      if (s.has("based_on")) {
        String known = s.text("based_on", "");
        base = catalog.find(known);
        if (base.isEmpty()) {
          s.error("based_on", unknown(known));
        }
      }
      Map<MaterialProperty, MaterialValue> values = new EnumMap<>(MaterialProperty.class);
      base.ifPresent(m -> values.putAll(m.values()));
      // what follows from a value that the file replaces goes with it
      if (s.has("yield_strength")) {
        values.remove(MaterialProperty.COMPRESSIVE_YIELD);
        values.remove(MaterialProperty.PROOF_1_PERCENT);
      }
      if (s.has("hardness_hv")) {
        values.remove(MaterialProperty.COMPRESSIVE_YIELD);
      }
      PRESSURES.forEach((key, property) -> put(values, property, s, key, QuantityKind.PRESSURE));
      put(values, MaterialProperty.DENSITY, s, "density", QuantityKind.DENSITY);
      put(values, MaterialProperty.EXPANSION, s, "expansion", QuantityKind.EXPANSION);
      if (s.has("poisson_ratio")) {
        values.put(MaterialProperty.POISSON, MaterialValue.given(s.ratio("poisson_ratio", 0.3)));
      }
      if (s.has("hardness_hrc")) {
        values.put(
            MaterialProperty.ROCKWELL_C, MaterialValue.given(s.count("hardness_hrc", 60, 1, 80)));
      }
      number(values, MaterialProperty.VICKERS_HARDNESS, s, "hardness_hv");
      number(values, MaterialProperty.BRINELL_HARDNESS, s, "hardness_hb");
      number(values, MaterialProperty.TOUGHNESS, s, "toughness_mpa_root_m");
      put(values, MaterialProperty.FLAW_DEPTH, s, "flaw_depth", QuantityKind.LENGTH);
      boolean brittle = s.flag("brittle", base.map(Material::brittle).orElse(false));
      try {
        catalog =
            catalog.with(
                new Material(
                    name,
                    name,
                    List.of(),
                    base.map(Material::family).orElse(""),
                    brittle,
                    base.map(Material::hardness).orElse(""),
                    values,
                    "given in the design file"));
      } catch (IllegalArgumentException e) {
        s.refused(e);
      }
      s.close();
    }
  }

  private static void number(
      Map<MaterialProperty, MaterialValue> values, MaterialProperty p, Section s, String key) {
    if (s.has(key)) {
      values.put(p, MaterialValue.given(p.toSi(s.number(key, 1))));
    }
  }

  private static void put(
      Map<MaterialProperty, MaterialValue> values,
      MaterialProperty p,
      Section s,
      String key,
      QuantityKind kind) {
    OptionalDouble value = s.quantity(key, kind);
    if (value.isPresent() && value.getAsDouble() < 0) {
      String shown = s.asTyped(key).map(Quantity::text).orElse("");
      s.error(key, "found \"" + shown + "\"; it must not be below zero");
    } else if (value.isPresent()) {
      values.put(p, MaterialValue.given(value.getAsDouble()));
    }
  }

  /** The material named by a key of a section. */
  Material named(Section s, String key) {
    String name = s.requiredText(key, "");
    if (name.isEmpty()) {
      return STAND_IN;
    }
    Optional<Material> found = catalog.find(name);
    if (found.isEmpty() && !declared.contains(name)) {
      s.error(key, unknown(name));
    }
    return found.orElse(STAND_IN);
  }

  private String unknown(String name) {
    List<String> meant = catalog.meant(name);
    String question =
        meant.isEmpty()
            ? ""
            : meant.size() == 1
                ? "; did you mean \"" + meant.get(0) + "\"?"
                : "; choose one of \"" + String.join("\", \"", meant) + "\"";
    return "found \""
        + name
        + "\", which is no material of the catalog or of this file"
        + question
        + "; known: "
        + String.join(", ", catalog.names());
  }
}
