package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.KeepClear;
import reseat.design.ShopFloor;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadScatter;
import reseat.interchange.LinearStack;
import reseat.interchange.Sensitivity;
import reseat.interchange.ToleranceModel;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** The room at a place is that which a coupling with its tool point there shows. */
class ClearanceTest {

  private static final Vec3 PLACE = new Vec3(-18e-3, 25e-3, -9e-3);

  private static CouplingDesign toolPost() {
    CouplingDesign design = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    return design.toBuilder().shop(ShopFloor.UNKNOWN).build();
  }

  private static List<Clearance> all(CouplingDesign design) {
    Equilibrium standing = CouplingModel.of(design).standing();
    return Clearance.all(
        standing,
        CaseResponse.all(standing, CouplingStiffness.of(standing, Bound.STICKING)),
        PreloadScatter.all(standing));
  }

  @Test
  void everyPartIsWhatAToolPointAtThePlaceWouldSee() {
    CouplingDesign design = toolPost();
    KeepClear place = new KeepClear("dowel", PLACE, OptionalDouble.of(0.2e-3), Optional.empty());
    CouplingDesign asked =
        design.toBuilder().shop(new ShopFloor(List.of(), List.of(), List.of(place))).build();
    Clearance c = all(asked).get(0);
    assertThat(c.place()).isEqualTo(place);

    Tolerances parts =
        new Tolerances(
            design.tolerances().entries().stream()
                .filter(t -> t.kind() != ToleranceKind.TOOL_POINT)
                .toList());
    CouplingDesign there = design.toBuilder().toolPoint(PLACE).tolerances(parts).build();
    Equilibrium standing = CouplingModel.of(there).standing();
    assertThat(c.rest().along()).isEqualTo(Math.abs(standing.displacementOf(PLACE).z()));
    double sideways = 0;
    double along = 0;
    for (CaseResponse r :
        CaseResponse.all(standing, CouplingStiffness.of(standing, Bound.STICKING))) {
      sideways = Math.max(sideways, Math.hypot(r.motion().shift().x(), r.motion().shift().y()));
      along = Math.max(along, Math.abs(r.motion().shift().z()));
    }
    assertThat(c.loads().sideways()).isCloseTo(sideways, within(1e-12));
    assertThat(c.loads().along()).isCloseTo(along, within(1e-12));
    PreloadScatter p = PreloadScatter.all(standing).get(0);
    assertThat(c.scatter().along())
        .isCloseTo(
            Math.max(Math.abs(p.stronger().shift().z()), Math.abs(p.weaker().shift().z())),
            within(1e-11));
    // the machine's height is the coupling's z
    Vec3 worst =
        new LinearStack(Sensitivity.of(ToleranceModel.of(there)))
            .sum(LinearStack.EVERYTHING)
            .worstCase();
    assertThat(c.tolerances().along()).isCloseTo(worst.z(), within(1e-9));
    assertThat(c.tolerances().sideways())
        .isBetween(Math.max(worst.x(), worst.y()), worst.x() + worst.y());
  }

  @Test
  void aGapSmallerThanTheLeastOneFailsAndOneThatIsNotStatedDoesNot() {
    CouplingDesign design = toolPost();
    double least = all(design).get(0).leastGap();
    for (double factor : new double[] {0.99, 1.01}) {
      KeepClear bolt =
          new KeepClear(
              "bolt",
              design.preloads().get(0).at(),
              OptionalDouble.of(factor * least),
              Optional.empty());
      Clearance c =
          all(design.toBuilder().shop(new ShopFloor(List.of(), List.of(), List.of(bolt))).build())
              .get(0);
      assertThat(c.leastGap()).isCloseTo(least, within(1e-15));
      assertThat(c.holds()).isEqualTo(factor > 1);
    }
    assertThat(all(design)).allMatch(Clearance::holds).hasSize(7);
  }

  @Test
  void aPlaceNamedAfterAPreloadTakesThePlaceOfThatPreload() {
    CouplingDesign asRead = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    assertThat(asRead.preloads().get(0).name()).isEqualTo("drawbolt");
    assertThat(all(asRead))
        .extracting(c -> c.place().name())
        .filteredOn(name -> name.contains("drawbolt"))
        .containsExactly("drawbolt shank in its hole");
  }

  @Test
  void betweenTwoFacesOnlyTheMotionAcrossTheGapCounts() {
    CouplingDesign design = toolPost();
    Clearance round = at(design, Optional.empty());
    Clearance level = at(design, Optional.of(Vec3.Z.times(-7)));
    assertThat(level.leastGap()).isCloseTo(round.least().along(), within(1e-15));
    Vec3 slanted = new Vec3(1, 0, 1);
    assertThat(at(design, Optional.of(slanted)).leastGap())
        .isLessThan(round.leastGap())
        .isCloseTo(at(design, Optional.of(slanted.negated())).leastGap(), within(1e-15));
  }

  private static Clearance at(CouplingDesign design, Optional<Vec3> across) {
    KeepClear place = new KeepClear("cover", PLACE, OptionalDouble.empty(), across);
    ShopFloor shop = new ShopFloor(List.of(), List.of(), List.of(place));
    return all(design.toBuilder().shop(shop).build()).get(0);
  }

  @Test
  void widerTolerancesNeedMoreRoomAndNothingElse() {
    CouplingDesign design = toolPost();
    Tolerances twice =
        new Tolerances(
            design.tolerances().entries().stream()
                .map(t -> t.withLimit(2 * t.spread().limit()))
                .toList());
    Clearance one = all(design).get(0);
    Clearance two = all(design.toBuilder().tolerances(twice).build()).get(0);
    assertThat(two.tolerances().along()).isCloseTo(2 * one.tolerances().along(), within(1e-12));
    assertThat(two.rest()).isEqualTo(one.rest());
    assertThat(two.loads()).isEqualTo(one.loads());
  }

  @Test
  void aBallIsCaughtUntilItRidesOnTheEdgeOfTheMouth() {
    CouplingDesign design = toolPost();
    VeeGroove vee = (VeeGroove) design.supports().get(0).seat();
    double caught = CatchRange.of(design);
    SeatFrame f = vee.frame();
    double radius = design.supports().get(0).ball().radius();
    // off by that much and lifted until it touches the left flank alone
    double rise = (radius + caught * Math.sin(vee.leftAngle())) / Math.cos(vee.leftAngle());
    Vec3 centre = f.point(0, caught, rise);
    Vec3 touches = vee.flanks().get(0).contactPoint(centre, radius);
    assertThat(vee.flanks().get(0).gap(centre, radius)).isCloseTo(0, within(1e-15));
    assertThat(f.toLeft(touches)).isCloseTo(vee.extent().mouthWidth() / 2, within(1e-12));
    assertThat(CatchRange.of(design.supports().get(0))).isEqualTo(caught);
  }
}
