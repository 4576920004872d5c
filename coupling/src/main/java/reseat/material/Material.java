package reseat.material;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A material: elastic constants always, other values as far as they are known, each with its
 * source.
 *
 * <p>A value that is not known is absent rather than guessed; the checks that need it say so.
 *
 * @param name trade designation by which a design file calls it
 * @param description what it is, and in what condition
 * @param aliases other designations, such as that of another standard
 * @param family the kind of surface it makes, under which friction is listed ({@code steel}, {@code
 *     carbide})
 * @param brittle true if it cracks before it yields
 * @param hardness hardness in words, empty if unknown
 * @param values what is known, by property
 * @param note a warning to print beside the material, empty if none
 */
public record Material(
    String name,
    String description,
    List<String> aliases,
    String family,
    boolean brittle,
    String hardness,
    Map<MaterialProperty, MaterialValue> values,
    String note) {

  /** Refuses a nameless material, one without elastic constants, and values out of range. */
  public Material {
    Objects.requireNonNull(name, "name of a material must be given, found null");
    Objects.requireNonNull(description, "description of a material must be given, found null");
    Objects.requireNonNull(aliases, "aliases of a material must be given, found null");
    Objects.requireNonNull(family, "family of a material must be given, found null");
    Objects.requireNonNull(hardness, "hardness of a material must be given, found null");
    Objects.requireNonNull(values, "values of a material must be given, found null");
    Objects.requireNonNull(note, "note of a material must be given, found null");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a material needs a name");
    }
    aliases = List.copyOf(aliases);
    EnumMap<MaterialProperty, MaterialValue> copy = new EnumMap<>(MaterialProperty.class);
    copy.putAll(values);
    values = Collections.unmodifiableMap(copy);
    for (MaterialProperty needed : List.of(MaterialProperty.MODULUS, MaterialProperty.POISSON)) {
      if (!values.containsKey(needed)) {
        throw new IllegalArgumentException("material " + name + " lacks its " + needed.words());
      }
    }
    for (Map.Entry<MaterialProperty, MaterialValue> known : values.entrySet()) {
      if (known.getKey() != MaterialProperty.POISSON && !(known.getValue().low() > 0)) {
        throw new IllegalArgumentException(
            "material " + name + ": " + known.getKey().words() + " must be positive");
      }
    }
    if (!(values.get(MaterialProperty.POISSON).high() < 0.5)) {
      throw new IllegalArgumentException(
          "material " + name + ": Poisson's ratio must be below 0.5");
    }
  }

  /**
   * Makes a material of which nothing but its elasticity is known.
   *
   * @param name trade designation
   * @param elastic elastic constants
   */
  public Material(String name, ElasticConstants elastic) {
    this(
        name,
        name,
        List.of(),
        "",
        false,
        "",
        Map.of(
            MaterialProperty.MODULUS, MaterialValue.given(elastic.modulus()),
            MaterialProperty.POISSON, MaterialValue.given(elastic.poisson())),
        "");
  }

  /**
   * Returns the elastic constants.
   *
   * @return nominal modulus and Poisson's ratio
   */
  public ElasticConstants elastic() {
    return new ElasticConstants(
        values.get(MaterialProperty.MODULUS).nominal(),
        values.get(MaterialProperty.POISSON).nominal());
  }

  /**
   * Returns one value with its source.
   *
   * @param property what is asked for
   * @return the value, if known
   */
  public Optional<MaterialValue> value(MaterialProperty property) {
    return Optional.ofNullable(values.get(property));
  }

  /**
   * Returns one value as a number.
   *
   * @param property what is asked for
   * @return the nominal value, SI, if known
   */
  public OptionalDouble nominal(MaterialProperty property) {
    MaterialValue value = values.get(property);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value.nominal());
  }

  /**
   * Returns the strength at which the material begins to flow.
   *
   * @return tensile yield strength, or where that is not known the compressive one
   */
  public Optional<MaterialValue> flowStrength() {
    return firstKnown(MaterialProperty.YIELD_STRENGTH, MaterialProperty.COMPRESSIVE_YIELD);
  }

  /**
   * Returns the strength at which the material begins to flow under a contact, which presses.
   *
   * @return compressive yield strength, or where that is not known the tensile one
   */
  public Optional<MaterialValue> pressedStrength() {
    return firstKnown(MaterialProperty.COMPRESSIVE_YIELD, MaterialProperty.YIELD_STRENGTH);
  }

  /**
   * Returns the strength that resists a dent.
   *
   * @return 1 % proof stress, the strain under a dent being 0.5 to 1.5 %, or where that is not
   *     known the strength at which the material begins to flow under a contact
   */
  public Optional<MaterialValue> dentStrength() {
    Optional<MaterialValue> proof = value(MaterialProperty.PROOF_1_PERCENT);
    return proof.isPresent() ? proof : pressedStrength();
  }

  /**
   * Returns the compressive strength at which a brittle material begins to flow under a ball.
   *
   * @return compressive yield strength, Pa, or where that is not known a third of the Vickers
   *     hardness
   */
  public OptionalDouble brittleFlow() {
    MaterialValue known = values.get(MaterialProperty.COMPRESSIVE_YIELD);
    MaterialValue hard = values.get(MaterialProperty.VICKERS_HARDNESS);
    return known != null
        ? OptionalDouble.of(known.nominal())
        : hard != null ? OptionalDouble.of(hard.nominal() / 3) : OptionalDouble.empty();
  }

  /**
   * Returns the mean pressure of a fully plastic dent, by the Brinell hardness.
   *
   * <p>Brinell's number is force over the curved area of the dent; this is force over its flat one:
   * {@code 2 (1 - sqrt(1 - x^2))/x^2} times as much, x the dent over the ball of the test, which is
   * pressed with 5 kgf/mm² of its diameter squared on light metals and 30 on others.
   *
   * @return Meyer hardness, Pa, if a Brinell hardness is known
   */
  public OptionalDouble meyerHardness() {
    MaterialValue hard = values.get(MaterialProperty.BRINELL_HARDNESS);
    if (hard == null) {
      return OptionalDouble.empty();
    }
    double test = (family.equals("aluminium") ? 5 : 30) * 9.80665e6;
    double depth = Math.min(1, 2 * test / (Math.PI * hard.nominal()));
    return OptionalDouble.of(hard.nominal() * 2 / (2 - depth));
  }

  /**
   * Returns the strength against tension at the surface.
   *
   * @return flexural strength, or where that is not known the tensile one
   */
  public Optional<MaterialValue> surfaceStrength() {
    return firstKnown(MaterialProperty.FLEXURAL_STRENGTH, MaterialProperty.TENSILE_STRENGTH);
  }

  private Optional<MaterialValue> firstKnown(MaterialProperty first, MaterialProperty second) {
    MaterialValue value = values.get(first);
    return Optional.ofNullable(value == null ? values.get(second) : value);
  }

  /**
   * Returns the material with one value changed or added.
   *
   * @param property which
   * @param value the value
   * @return the changed copy
   */
  public Material with(MaterialProperty property, MaterialValue value) {
    EnumMap<MaterialProperty, MaterialValue> changed = new EnumMap<>(values);
    changed.put(property, value);
    return new Material(name, description, aliases, family, brittle, hardness, changed, note);
  }

  /**
   * Returns the material under another name.
   *
   * @param newName trade designation
   * @param newDescription what it is
   * @return the changed copy, without the aliases of this one
   */
  public Material named(String newName, String newDescription) {
    return new Material(
        newName, newDescription, List.of(), family, brittle, hardness, values, note);
  }
}
