package reseat.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Pairs by hand, ends of what is allowed, and how the tables are cut into cells. */
class PairAndTableTest {

  /** A round body: E = 200 GPa, nu = 0.25, so G = 80 GPa. */
  private static final ElasticConstants STEEL = new ElasticConstants(200e9, 0.25);

  /** Another: E = 60 GPa, nu = 0.5 - 0.3 = 0.2, so G = 25 GPa. */
  private static final ElasticConstants GLASS = new ElasticConstants(60e9, 0.2);

  @Test
  void aPairGivesAsItsTwoBodiesTogether() {
    assertThat(STEEL.shearModulus()).isCloseTo(80e9, within(1.0));
    assertThat(GLASS.shearModulus()).isCloseTo(25e9, within(1.0));
    ElasticPair pair = new ElasticPair(STEEL, GLASS);
    // 0.9375/200 + 0.96/60 = 0.0206875 per GPa
    assertThat(1 / pair.reducedModulus()).isCloseTo(0.0206875e-9, within(1e-24));
    // 1.75/80 + 1.8/25 = 0.093875 per GPa
    assertThat(1 / pair.reducedShearModulus()).isCloseTo(0.093875e-9, within(1e-24));
    // 1/80 + 1/25 = 0.0525, 0.25/80 + 0.2/25 = 0.011125 per GPa
    assertThat(pair.shearCompliance()).isCloseTo(0.0525e-9, within(1e-24));
    assertThat(pair.poissonCompliance()).isCloseTo(0.011125e-9, within(1e-24));
  }

  @Test
  void bodiesAreAlikeOnlyIfBothConstantsAre() {
    assertThat(STEEL).isEqualTo(new ElasticConstants(200e9, 0.25));
    assertThat(STEEL).hasSameHashCodeAs(new ElasticConstants(200e9, 0.25));
    assertThat(STEEL).isNotEqualTo(new ElasticConstants(201e9, 0.25));
    assertThat(STEEL).isNotEqualTo(new ElasticConstants(200e9, 0.26));
    assertThat(
            Set.of(STEEL.hashCode(), GLASS.hashCode(), new ElasticConstants(200e9, 0.2).hashCode()))
        .as("a hash that tells bodies apart")
        .hasSize(3);
  }

  @Test
  void theEndsOfWhatIsAllowedAreAllowed() {
    assertThat(new ElasticConstants(1, 0).poisson()).isZero();
    assertThatThrownBy(() -> new ElasticConstants(1, 0.5)).hasMessageContaining("below 0.5");
    assertThatThrownBy(() -> new ElasticConstants(1, -1e-9)).hasMessageContaining("0 or more");
    assertThat(MaterialValue.given(0).low()).isZero();
    for (double[] v :
        new double[][] {{1, 2, 3}, {3, 1, 2}, {1, -1, 2}, {1, 1, Double.POSITIVE_INFINITY}}) {
      assertThatThrownBy(() -> new MaterialValue(v[0], v[1], v[2], Provenance.GIVEN, ""))
          .hasMessageContaining("rising order");
    }
    assertThat(friction(0, 0, 0).high()).isZero();
    for (double[] v :
        new double[][] {
          {-0.1, 0, 1}, {0.2, 0.1, 1}, {0, 0.2, 0.1}, {0, 1, Double.POSITIVE_INFINITY}
        }) {
      assertThatThrownBy(() -> friction(v[0], v[1], v[2])).hasMessageContaining("rising order");
    }
    Material steel = new Material("steel", STEEL);
    assertThatThrownBy(() -> steel.with(MaterialProperty.POISSON, MaterialValue.given(0.5)))
        .hasMessageContaining("below 0.5");
    assertThat(steel.with(MaterialProperty.POISSON, MaterialValue.given(0)).elastic().poisson())
        .isZero();
  }

  private static FrictionPair friction(double low, double nominal, double high) {
    return new FrictionPair(
        "a", "b", SurfaceState.DRY, low, nominal, high, Provenance.GIVEN, "test");
  }

  @Test
  void aPairIsBetweenBothItsSurfaces() {
    FrictionPair pair = friction(0.1, 0.2, 0.3);
    assertThat(pair.isBetween("a", "b")).isTrue();
    assertThat(pair.isBetween("b", "a")).isTrue();
    for (String other : List.of("a a", "b b", "a c", "c b", "b c", "c a")) {
      assertThat(pair.isBetween(other.substring(0, 1), other.substring(2))).as(other).isFalse();
    }
  }

  @Test
  void whatNoTableGivesIsGuessedWiderWhenDry() {
    FrictionCatalog catalog = FrictionCatalog.standard();
    FrictionPair dry = catalog.between("cheese", "chalk", SurfaceState.DRY);
    FrictionPair oiled = catalog.between("cheese", "chalk", SurfaceState.OILED);
    assertThat(dry.high() - dry.low()).isGreaterThan(oiled.high() - oiled.low());
    assertThat(dry.nominal()).isGreaterThan(oiled.high());
    assertThat(dry.state()).isEqualTo(SurfaceState.DRY);
    assertThat(catalog.pairs()).isNotEmpty().doesNotContain(dry);
  }

  @Test
  void ownMaterialsStandBesideThoseOfTheTableOrInTheirPlace() {
    MaterialCatalog standard = MaterialCatalog.standard();
    Material own = new Material("own steel", STEEL);
    Material ball =
        standard
            .find("52100")
            .orElseThrow()
            .with(MaterialProperty.DENSITY, MaterialValue.given(7000));
    MaterialCatalog catalog = standard.with(own).with(ball);
    assertThat(catalog.names()).hasSize(standard.names().size() + 1).contains("own steel");
    assertThat(catalog.names()).doesNotHaveDuplicates();
    assertThat(catalog.materials()).contains(own, ball).hasSize(standard.materials().size() + 1);
    assertThat(catalog.find("OWN_STEEL")).contains(own);
    assertThat(catalog.find("100Cr6")).contains(ball);
    Material renamed = own.with(MaterialProperty.DENSITY, MaterialValue.given(1));
    assertThat(catalog.with(renamed).find("own-steel")).contains(renamed);
    assertThat(catalog.with(renamed).names()).hasSameSizeAs(catalog.names());
    // under an alias of the table the place of the table is taken
    Material alias = ball.named("100Cr6", "own lot");
    assertThat(standard.with(alias).names()).isEqualTo(standard.names());
    assertThat(standard.with(alias).find("52100")).contains(alias);
  }

  @Test
  void cellsKeepTheirPlacesWhenTheyAreEmpty() {
    assertThat(TableResource.cells("a\t\tb\t", '\t')).containsExactly("a", "", "b", "");
    assertThat(TableResource.cells("a", '|')).containsExactly("a");
    assertThat(TableResource.cells("|a", '|')).containsExactly("", "a");
  }

  @Test
  void linesOfATableAreThoseThatAreNeitherEmptyNorRemarks() {
    List<String> lines = TableResource.lines("friction.tsv");
    assertThat(lines).hasSameSizeAs(FrictionCatalog.standard().pairs());
    for (String line : lines) {
      assertThat(TableResource.cells(line, '\t')).as(line).hasSize(8);
      assertThat(line).doesNotStartWith("#").doesNotContain("\n");
    }
    List<String> materials = TableResource.lines("materials.tsv");
    assertThat(materials.stream().filter(l -> l.startsWith("material\t")))
        .hasSameSizeAs(MaterialCatalog.standard().materials());
  }

  @Test
  void aPropertyIsPrintedInItsUnitAndHeldInSi() {
    assertThat(MaterialProperty.MODULUS.toSi(203)).isEqualTo(203e9);
    assertThat(MaterialProperty.MODULUS.fromSi(203e9)).isEqualTo(203);
    assertThat(MaterialProperty.EXPANSION.unit()).isEqualTo("1e-6/K");
    assertThat(MaterialProperty.YIELD_STRENGTH.words()).isEqualTo("yield strength");
    for (Provenance p : Provenance.values()) {
      assertThat(p.words()).isNotBlank();
    }
  }
}
