package reseat.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MaterialCatalogTest {

  private static final MaterialCatalog CATALOG = MaterialCatalog.standard();

  @Test
  void everyMaterialOfTheTradeIsThereWithWhatAContactNeeds() {
    assertThat(CATALOG.names())
        .contains(
            "52100",
            "440C",
            "A2",
            "D2",
            "O1",
            "M2",
            "17-4PH",
            "316",
            "1045",
            "mild steel",
            "grey iron 20",
            "6061-T6",
            "7075-T6",
            "C360",
            "tungsten carbide",
            "silicon nitride",
            "alumina",
            "zirconia",
            "sapphire",
            "ruby",
            "silicon carbide",
            "Invar 36",
            "granite");
    for (Material m : CATALOG.materials()) {
      assertThat(m.elastic().modulus()).as(m.name()).isBetween(40e9, 700e9);
      assertThat(m.elastic().poisson()).as(m.name()).isBetween(0.1, 0.4);
      assertThat(m.nominal(MaterialProperty.DENSITY).orElseThrow())
          .as(m.name())
          .isBetween(2000.0, 16000.0);
      assertThat(m.nominal(MaterialProperty.EXPANSION).orElseThrow())
          .as(m.name())
          .isBetween(1e-6, 30e-6);
      assertThat(m.family()).as(m.name()).isNotBlank();
      assertThat(m.values().values())
          .as(m.name())
          .allMatch(v -> !v.source().isBlank() && v.provenance() != Provenance.GIVEN);
    }
  }

  @Test
  void brittleMaterialsHaveHardnessAndToughnessAndDuctileOnesAStrengthThatResistsADent() {
    for (Material m : CATALOG.materials()) {
      if (m.brittle()) {
        assertThat(m.value(MaterialProperty.TOUGHNESS)).as(m.name()).isPresent();
        assertThat(m.value(MaterialProperty.VICKERS_HARDNESS)).as(m.name()).isPresent();
        assertThat(m.brittleFlow()).as(m.name()).isPresent();
      } else {
        assertThat(m.dentStrength()).as(m.name()).isPresent();
        assertThat(m.pressedStrength()).as(m.name()).isPresent();
      }
    }
  }

  @Test
  void hardnessAndStrengthOfAMetalAgree() {
    // fully plastic dents have 2.84 times the flow stress at a strain of some 8 % (Tabor): below
    // the proof stress, or over 2.5 times it, one of the two values is wrong
    int compared = 0;
    for (Material m : CATALOG.materials()) {
      double pressure =
          m.meyerHardness().orElse(m.nominal(MaterialProperty.VICKERS_HARDNESS).orElse(0));
      if (!m.brittle() && pressure > 0) {
        double strength = m.dentStrength().orElseThrow().nominal();
        assertThat(pressure / 2.84 / strength).as(m.name()).isBetween(0.79, 2.5);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(20);
  }

  @Test
  void meyerHardnessIsThatOfTheTestsDent() {
    // worked out by hand: dents of 0.255 of a 10 mm ball under 500 kgf, and under 3000 kgf
    assertThat(meyer("6061-T6")).isCloseTo(947e6, within(1e6));
    assertThat(meyer("1045")).isCloseTo(1766e6, within(1e6));
    assertThat(meyer("316")).isCloseTo(1572e6, within(1e6));
    assertThat(meyer("C360")).isCloseTo(1375e6, within(1e6));
    assertThat(CATALOG.find("52100").orElseThrow().meyerHardness()).isEmpty();
  }

  private static double meyer(String name) {
    return CATALOG.find(name).orElseThrow().meyerHardness().orElseThrow();
  }

  @Test
  void hardSteelsFollowOneRule() {
    double ratio = 0;
    for (String name : List.of("52100", "A2", "D2", "O1", "440C", "nitrided steel")) {
      Material m = CATALOG.find(name).orElseThrow();
      ratio =
          m.flowStrength().orElseThrow().nominal()
              / m.nominal(MaterialProperty.VICKERS_HARDNESS).orElseThrow();
      assertThat(ratio).as(name).isCloseTo(2034e6 / (746 * 9.80665e6), within(0.003));
    }
  }

  @Test
  void materialsAreFoundByNameAndAliasHoweverTyped() {
    assertThat(CATALOG.find("52100")).isEqualTo(CATALOG.find("100cr6"));
    assertThat(CATALOG.find("wc 6co").orElseThrow().name()).isEqualTo("tungsten carbide");
    assertThat(CATALOG.find("INVAR-36").orElseThrow().name()).isEqualTo("Invar 36");
    assertThat(CATALOG.find("unobtainium")).isEmpty();
    long spellings = CATALOG.materials().stream().mapToLong(m -> 1 + m.aliases().size()).sum();
    long found =
        CATALOG.materials().stream()
            .mapToLong(
                m ->
                    (CATALOG.find(m.name()).orElseThrow().equals(m) ? 1 : 0)
                        + m.aliases().stream()
                            .filter(a -> CATALOG.find(a).orElseThrow().equals(m))
                            .count())
            .sum();
    assertThat(found).as("no two materials share a designation").isEqualTo(spellings);
  }

  @Test
  void printedUnitsBecomeSi() {
    Material ball = CATALOG.find("52100").orElseThrow();
    assertThat(ball.elastic().modulus()).isCloseTo(203.4e9, within(1.0));
    assertThat(ball.nominal(MaterialProperty.EXPANSION).orElseThrow())
        .isCloseTo(11.9e-6, within(1e-18));
    MaterialValue yield = ball.value(MaterialProperty.YIELD_STRENGTH).orElseThrow();
    assertThat(yield.nominal()).isEqualTo(2034e6);
    assertThat(yield.provenance()).isEqualTo(Provenance.SEEN);
    assertThat(MaterialProperty.YIELD_STRENGTH.fromSi(2034e6)).isEqualTo(2034);
    assertThat(ball.flowStrength()).contains(yield);
  }

  @Test
  void userMayOverrideAValueAndAddAMaterial() {
    Material own =
        CATALOG
            .find("52100")
            .orElseThrow()
            .with(MaterialProperty.MODULUS, MaterialValue.given(208e9));
    MaterialCatalog changed =
        CATALOG.with(own).with(new Material("glass", new ElasticConstants(70e9, 0.22)));
    assertThat(changed.find("100Cr6").orElseThrow().elastic().modulus()).isEqualTo(208e9);
    assertThat(changed.find("glass")).isPresent();
    assertThat(changed.materials()).hasSize(CATALOG.materials().size() + 1);
    assertThat(CATALOG.find("glass")).isEmpty();
    assertThat(own.named("mine", "own lot").aliases()).isEmpty();
  }

  @Test
  void impossibleMaterialsAreRefused() {
    assertThatThrownBy(() -> new ElasticConstants(-1, 0.3)).hasMessageContaining("modulus");
    assertThatThrownBy(() -> new ElasticConstants(1e9, 0.5)).hasMessageContaining("Poisson");
    Material m = CATALOG.find("316").orElseThrow();
    assertThatThrownBy(() -> m.with(MaterialProperty.DENSITY, MaterialValue.given(0)))
        .hasMessageContaining("density must be positive");
    assertThatThrownBy(() -> m.with(MaterialProperty.POISSON, MaterialValue.given(0.6)))
        .hasMessageContaining("below 0.5");
    assertThatThrownBy(() -> new MaterialValue(2, 3, 4, Provenance.GIVEN, ""))
        .hasMessageContaining("rising order");
    assertThatThrownBy(() -> m.named(" ", "")).hasMessageContaining("name");
    assertThatThrownBy(() -> new Material("x", "", List.of(), "", false, "", Map.of(), ""))
        .hasMessageContaining("lacks its Young's modulus");
  }

  @Test
  void frictionOfAPairIsTheSameFromEitherSideAndAGuessIsMarked() {
    FrictionCatalog friction = FrictionCatalog.standard();
    Material steel = CATALOG.find("52100").orElseThrow();
    Material carbide = CATALOG.find("tungsten carbide").orElseThrow();
    Material granite = CATALOG.find("granite").orElseThrow();
    FrictionPair oiled = friction.between(steel, carbide, SurfaceState.OILED);
    assertThat(oiled).isEqualTo(friction.between(carbide, steel, SurfaceState.OILED));
    assertThat(oiled.provenance()).isNotEqualTo(Provenance.COMMON_PRACTICE);
    assertThat(oiled.nominal()).isBetween(oiled.low(), oiled.high());
    FrictionPair guess = friction.between(steel, granite, SurfaceState.DRY);
    assertThat(guess.provenance()).isEqualTo(Provenance.COMMON_PRACTICE);
    assertThat(guess.source()).contains("guess");
    assertThat(friction.between("DLC", "steel", SurfaceState.DRY).high()).isEqualTo(0.2);
    for (FrictionPair pair : friction.pairs()) {
      assertThat(pair.source()).isNotBlank();
      assertThat(
              friction.between(
                  /* first= */ pair.second(), /* second= */ pair.first(), pair.state()))
          .isSameAs(pair);
    }
    assertThatThrownBy(
            () -> new FrictionPair("a", "b", SurfaceState.DRY, 0.3, 0.2, 0.4, Provenance.GIVEN, ""))
        .hasMessageContaining("rising order");
  }

  /** Handbook: dry steel on steel spans 0.23 to 0.8 between tables (one read, one recalled). */
  @Test
  void drySteelSpansThePublishedDisagreement() {
    FrictionPair dry = FrictionCatalog.standard().between("steel", "steel", SurfaceState.DRY);
    assertThat(dry.low()).isEqualTo(0.15);
    assertThat(dry.nominal()).isEqualTo(0.31);
    assertThat(dry.high()).isEqualTo(0.8);
  }

  @Test
  void theTableIsReadToTheLastDigitWithItsRangesAndItsMarks() {
    // the line of the shipped table on 52100: 203.4 GPa, 203 to 210; density 7810 without a range
    Material steel = CATALOG.find("52100").orElseThrow();
    MaterialValue modulus = steel.values().get(MaterialProperty.MODULUS);
    assertThat(modulus.nominal()).isCloseTo(203.4e9, within(1.0));
    assertThat(modulus.low()).isCloseTo(203e9, within(1.0));
    assertThat(modulus.high()).isCloseTo(210e9, within(1.0));
    assertThat(modulus.provenance()).isEqualTo(Provenance.SEEN);
    MaterialValue density = steel.values().get(MaterialProperty.DENSITY);
    assertThat(density.low()).isEqualTo(density.nominal()).isEqualTo(density.high());
    assertThat(steel.values().get(MaterialProperty.EXPANSION).nominal())
        .isCloseTo(11.9e-6, within(1e-12));
    assertThat(steel.aliases())
        .containsExactly("100Cr6", "SUJ2", "1.3505", "bearing steel", "chrome steel", "AISI 52100");
    assertThat(CATALOG.find("suj2")).contains(steel);
    assertThat(CATALOG.names().stream().distinct()).hasSameSizeAs(CATALOG.names());
    assertThat(CATALOG.materials()).hasSameSizeAs(CATALOG.names());
  }

  @Test
  void aPrintedValueGoesToSiAndBack() {
    for (MaterialProperty p : MaterialProperty.values()) {
      assertThat(p.fromSi(p.toSi(7))).isCloseTo(7, within(1e-12));
      assertThat(p.words()).isNotBlank();
      assertThat(p.unit()).isNotNull();
    }
    assertThat(MaterialProperty.MODULUS.toSi(1)).isEqualTo(1e9);
    assertThat(MaterialProperty.MODULUS.unit()).isEqualTo("GPa");
    assertThat(MaterialProperty.EXPANSION.toSi(1)).isEqualTo(1e-6);
    assertThat(MaterialProperty.POISSON.unit()).isEmpty();
    for (Provenance p : Provenance.values()) {
      assertThat(p.words()).isNotBlank();
    }
  }

  @Test
  void aMaterialOfOnesOwnStandsBesideTheShippedOnesOrInPlaceOfOne() {
    Material own = CATALOG.find("A2").orElseThrow();
    Material renamed =
        new Material(
            "post steel", "", List.of(), own.family(), own.brittle(), "", own.values(), "");
    MaterialCatalog more = CATALOG.with(renamed);
    assertThat(more.names()).hasSize(CATALOG.names().size() + 1).contains("post steel");
    assertThat(more.find("Post Steel")).contains(renamed);
    Material other =
        new Material("52100", "", List.of(), own.family(), own.brittle(), "", own.values(), "");
    MaterialCatalog instead = CATALOG.with(other);
    assertThat(instead.names()).hasSameSizeAs(CATALOG.names());
    assertThat(instead.find("52100")).contains(other);
    assertThat(instead.find("SUJ2")).contains(other);
  }

  @Test
  void surfacesThatNoTableGivesAreGuessedWiderWhenDry() {
    FrictionCatalog friction = FrictionCatalog.standard();
    FrictionPair dry = friction.between("granite", "PTFE", SurfaceState.DRY);
    FrictionPair oiled = friction.between("granite", "PTFE", SurfaceState.OILED);
    assertThat(dry.high()).isEqualTo(0.8);
    assertThat(oiled.high()).isEqualTo(0.2);
    assertThat(dry.source()).startsWith("guess");
    assertThat(friction.pairs()).hasSizeGreaterThan(30);
    // the table's steel on steel, either way round
    assertThat(friction.between("steel", "aluminium", SurfaceState.DRY).nominal()).isEqualTo(0.35);
    assertThat(friction.between("aluminium", "steel", SurfaceState.DRY).nominal()).isEqualTo(0.35);
    assertThatThrownBy(
            () ->
                new FrictionPair("a", "b", SurfaceState.DRY, -0.1, 0.1, 0.2, Provenance.GIVEN, "s"))
        .isInstanceOf(IllegalArgumentException.class);
    FrictionPair exact =
        new FrictionPair("a", "b", SurfaceState.DRY, 0, 0, 0, Provenance.GIVEN, "s");
    assertThat(exact.nominal()).isZero();
  }

  @Test
  void equalConstantsAreOneKeyAndOtherConstantsAnother() {
    ElasticConstants steel = new ElasticConstants(206e9, 0.3);
    assertThat(steel).hasSameHashCodeAs(new ElasticConstants(206e9, 0.3));
    assertThat(steel.hashCode()).isNotEqualTo(new ElasticConstants(206e9, 0.29).hashCode());
    assertThat(steel.hashCode()).isNotEqualTo(new ElasticConstants(207e9, 0.3).hashCode());
  }
}
