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
    assertThat(first.peakPressure()).isCloseTo(1.6492292 * 255e6, within(1e-6 * 420e6));
    assertThat(first.provenance()).isEqualTo(Provenance.SEEN);
  }

  @Test
  void onlySteelOfFiftyEightRockwellHasTheBearingLimit() {
    assertThat(kinds(limits(BALL, BALL))).contains(Kind.STATIC_BRINELLING);
    assertThat(kinds(limits(ALUMINIUM, CARBIDE))).doesNotContain(Kind.STATIC_BRINELLING);
    Material soft = BALL.with(MaterialProperty.ROCKWELL_C, MaterialValue.given(57.9));
    assertThat(kinds(limits(soft, soft))).doesNotContain(Kind.STATIC_BRINELLING);
    assertThat(ContactLimits.STATIC_BRINELLING_PRESSURE).isEqualTo(4200e6);
  }

  @Test
  void brittleBodiesAreLimitedByTensionAtTheEdgeAndByCrushing() {
    ContactLimits limits = limits(CARBIDE, CARBIDE);
    assertThat(kinds(limits)).containsOnly(Kind.EDGE_CRACK, Kind.CRUSHING);
    Limit crack =
        limits.limits().stream().filter(l -> l.kind() == Kind.EDGE_CRACK).findFirst().orElseThrow();
    // edge tension of a circle at nu = 0.22 is 0.18666667 p0
    assertThat(crack.peakPressure()).isCloseTo(1830e6 / 0.18666667, within(1e-6 * 1e10));
    assertThat(limits.governing().orElseThrow().peakPressure()).isEqualTo(0.5 * 4780e6);
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
