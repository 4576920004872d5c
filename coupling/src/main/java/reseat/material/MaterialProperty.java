package reseat.material;

/** A property of a material; values are SI, and printed in the unit the trade uses. */
public enum MaterialProperty {
  /** Young's modulus, Pa. */
  MODULUS("Young's modulus", "GPa", 1e9),
  /** Poisson's ratio. */
  POISSON("Poisson's ratio", "", 1),
  /** Density, kg/m3. */
  DENSITY("density", "kg/m3", 1),
  /** Coefficient of linear expansion near room temperature, 1/K. */
  EXPANSION("expansion", "1e-6/K", 1e-6),
  /** Hardness, Rockwell C. */
  ROCKWELL_C("hardness", "HRC", 1),
  /** Hardness, Vickers: force over the area of the pyramid's sides, Pa. */
  VICKERS_HARDNESS("hardness", "HV", 9.80665e6),
  /** Hardness, Brinell: force over the curved area of the dent, Pa. */
  BRINELL_HARDNESS("hardness", "HB", 9.80665e6),
  /** Yield strength or 0.2 % proof stress in tension, Pa. */
  YIELD_STRENGTH("yield strength", "MPa", 1e6),
  /** 1 % proof stress in tension, Pa: nearer to the strain under a dent than 0.2 %. */
  PROOF_1_PERCENT("1 % proof stress", "MPa", 1e6),
  /** Yield strength in compression, Pa. */
  COMPRESSIVE_YIELD("compressive yield strength", "MPa", 1e6),
  /** Ultimate strength in tension, Pa. */
  TENSILE_STRENGTH("tensile strength", "MPa", 1e6),
  /** Strength of a bar in bending, Pa. */
  FLEXURAL_STRENGTH("flexural strength", "MPa", 1e6),
  /** Crushing strength, Pa. */
  COMPRESSIVE_STRENGTH("compressive strength", "MPa", 1e6),
  /** Fracture toughness KIc, Pa m^0.5. */
  TOUGHNESS("fracture toughness", "MPa m^0.5", 1e6),
  /** Depth of the scratches or pores that its finish leaves at the surface, m. */
  FLAW_DEPTH("depth of surface flaws", "um", 1e-6);

  private final String words;
  private final String unit;
  private final double scale;

  MaterialProperty(String words, String unit, double scale) {
    this.words = words;
    this.unit = unit;
    this.scale = scale;
  }

  /**
   * Returns the property in words.
   *
   * @return words, lower case
   */
  public String words() {
    return words;
  }

  /**
   * Returns the unit it is printed in.
   *
   * @return unit, empty for a pure number
   */
  public String unit() {
    return unit;
  }

  /**
   * Turns a number in the printed unit into SI.
   *
   * @param printed value in {@link #unit()}
   * @return value in SI
   */
  public double toSi(double printed) {
    return printed * scale;
  }

  /**
   * Turns SI into the printed unit.
   *
   * @param si value in SI
   * @return value in {@link #unit()}
   */
  public double fromSi(double si) {
    return si / scale;
  }
}
