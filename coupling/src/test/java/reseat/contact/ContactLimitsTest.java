package reseat.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.contact.ContactLimits.Body;
import reseat.contact.ContactLimits.Kind;
import reseat.contact.ContactLimits.Limit;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.material.Provenance;

class ContactLimitsTest {

  private static final Material BALL = material("52100");
  private static final Material CARBIDE = material("tungsten carbide");
  private static final Material ALUMINIUM = material("6061-T6");

  @Test
  void theSofterBodyGovernsAtItsOwnPoissonRatio() {
    ContactLimits limits = limits(BALL, ALUMINIUM);
    Limit first = limits.governing().orElseThrow();
    assertThat(first.kind()).isEqualTo(Kind.FIRST_YIELD);
    assertThat(first.body()).isEqualTo(Body.SECOND);
    assertThat(first.material()).isEqualTo(ALUMINIUM);
    // p0/Y at first yield of a circle, nu = 0.33: 1.6492292, computed independently
    assertThat(first.peakPressure()).isCloseTo(1.6492292 * 276e6, within(1e-6 * 460e6));
    assertThat(first.provenance()).isEqualTo(Provenance.SEEN);
  }

  @Test
  void onlyTwoHardSteelsHaveTheBearingLimitAndTheCaseMustBeDeep() {
    assertThat(kinds(limits(BALL, BALL))).contains(Kind.STATIC_BRINELLING);
    for (Material other : List.of(ALUMINIUM, CARBIDE, material("silicon nitride"))) {
      assertThat(kinds(limits(BALL, other)))
          .as(other.name())
          .doesNotContain(Kind.STATIC_BRINELLING);
    }
    Material soft = BALL.with(MaterialProperty.ROCKWELL_C, MaterialValue.given(57.9));
    assertThat(kinds(limits(BALL, soft))).doesNotContain(Kind.STATIC_BRINELLING);
    assertThat(ContactLimits.STATIC_BRINELLING_PRESSURE).isEqualTo(4200e6);
    // at 4.2 GPa the patch has a radius of 0.37 mm: greatest shear 0.18 mm deep
    EllipticContact contact = contact(BALL, BALL);
    assertThat(kinds(ContactLimits.of(contact, BALL, BALL, 0.5e-3)))
        .doesNotContain(Kind.STATIC_BRINELLING);
    assertThat(kinds(ContactLimits.of(contact, BALL, BALL, 0.6e-3)))
        .contains(Kind.STATIC_BRINELLING);
  }

  @Test
  void carbideFlowsBeforeItCracksAndNothingIsSaidOfCrushing() {
    ContactLimits limits = limits(CARBIDE, CARBIDE);
    assertThat(kinds(limits)).containsOnly(Kind.FLOW_BRITTLE, Kind.RING_CRACK);
    Limit first = limits.governing().orElseThrow();
    assertThat(first.kind()).isEqualTo(Kind.FLOW_BRITTLE);
    // 1.5205788 of the compressive proof stress, circle, nu = 0.22
    assertThat(first.peakPressure()).isCloseTo(1.5205788 * 3290e6, within(1e-6 * 5e9));
    assertThat(first.peakPressure()).isCloseTo(5.0e9, within(0.01e9));
    Limit crack =
        limits.limits().stream().filter(l -> l.kind() == Kind.RING_CRACK).findFirst().orElseThrow();
    // oiled friction 0.12 of carbide on carbide; 8.35 GPa at 0.1
    assertThat(limits.friction()).isEqualTo(0.12);
    assertThat(crack.peakPressure()).isBetween(7.5e9, 8.35e9);
    assertThat(crack.breaks()).isCloseTo(1.566 * crack.peakPressure(), within(0.01e9));
    assertThat(limits.dent(836)).isPresent();
  }

  @Test
  void ceramicsOnHardSteelAreLimitedByTheSteel() {
    for (String name : List.of("silicon nitride", "zirconia", "alumina")) {
      for (Limit limit : List.of(limits(material(name), BALL).governing().orElseThrow())) {
        assertThat(limit.kind()).as(name).isEqualTo(Kind.FIRST_YIELD);
        assertThat(limit.material()).as(name).isEqualTo(BALL);
      }
    }
  }

  @Test
  void likeCeramicsRankAsTheShopHasThem() {
    double last = Double.POSITIVE_INFINITY;
    for (String name : List.of("silicon nitride", "zirconia", "alumina", "silicon carbide")) {
      Material m = material(name);
      double bears = limits(m, m).governing().orElseThrow().peakPressure();
      assertThat(bears).as(name).isBetween(2e9, last);
      last = bears;
    }
  }

  @Test
  void aBrittleBodyOfUnknownToughnessIsHeldToTheTensionAtItsSlidingEdge() {
    Material glass =
        new Material("glass", new ElasticConstants(70e9, 0.22))
            .with(MaterialProperty.FLEXURAL_STRENGTH, MaterialValue.given(60e6));
    Material brittle = new Material("glass", "", List.of(), "", true, "", glass.values(), "");
    ContactLimits limits = limits(BALL, brittle);
    Limit crack =
        limits.limits().stream().filter(l -> l.kind() == Kind.EDGE_CRACK).findFirst().orElseThrow();
    // (1 - 2 nu)/3 = 0.187 and 0.12 of pi (4 + nu)/8, the guessed friction
    assertThat(crack.peakPressure())
        .isCloseTo(60e6 / (0.18666667 + 0.12 * Math.PI * 4.22 / 8), within(1e3));
    assertThat(crack.breaks()).isEqualTo(2 * crack.peakPressure());
  }

  @Test
  void aBodyOfUnknownStrengthIsListedAndNotCalledSafe() {
    Material unknown = new Material("billet", new ElasticConstants(200e9, 0.3));
    ContactLimits limits = limits(unknown, unknown);
    assertThat(limits.governing()).isEmpty();
    assertThat(limits.unrated()).containsExactly(unknown);
    assertThat(limits(BALL, unknown).unrated()).containsExactly(unknown);
    assertThat(limits(BALL, BALL).unrated()).isEmpty();
  }

  @Test
  void theGreatestShearLiesBelowTheSurface() {
    ContactLimits limits = limits(BALL, CARBIDE);
    EllipticContact contact = contact(BALL, CARBIDE);
    double force = 200;
    double depth = limits.maxShearDepth(Body.FIRST, force);
    assertThat(depth).isBetween(0.45 * contact.semiMinor(force), 0.5 * contact.semiMinor(force));
    assertThat(limits.maxShear(Body.SECOND, force))
        .isCloseTo(0.32882217 * contact.peakPressure(force), within(1e-7 * 4e9));
    assertThat(depth).isGreaterThan(limits.maxShearDepth(Body.SECOND, force));
  }

  @Test
  void materialsOtherThanThoseOfTheContactAreRefused() {
    assertThatThrownBy(() -> ContactLimits.of(contact(BALL, BALL), BALL, CARBIDE))
        .hasMessageContaining("other elastic constants");
  }

  private static List<Kind> kinds(ContactLimits limits) {
    return limits.limits().stream().map(Limit::kind).toList();
  }

  private static ContactLimits limits(Material first, Material second) {
    return ContactLimits.of(contact(first, second), first, second);
  }

  private static EllipticContact contact(Material first, Material second) {
    return EllipticContact.of(
        RelativeCurvature.ballOnPlane(6.35e-3), new ElasticPair(first.elastic(), second.elastic()));
  }

  private static Material material(String name) {
    return MaterialCatalog.standard().find(name).orElseThrow();
  }
}
