package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import reseat.ballmount.ScrewThread;
import reseat.design.CouplingDesign;
import reseat.design.KeepClear;
import reseat.design.Preload;
import reseat.design.ShopFloor;
import reseat.design.Support;
import reseat.numerics.Distribution;
import reseat.preload.AirCylinder;
import reseat.preload.DeadWeight;
import reseat.preload.DiscSpring;
import reseat.preload.DiscSpringStack;
import reseat.preload.ForceScatter;
import reseat.preload.HelicalSpring;
import reseat.preload.MagnetPair;
import reseat.preload.PlainForce;
import reseat.preload.PreloadDevice;
import reseat.preload.TightenedScrew;
import reseat.preload.TighteningMethod;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/** Where the halves come close by the nature of a coupling: at its pulls, faces and floors. */
class PlacesToKeepClearTest {

  private static final Vec3 SLANT = new Vec3(0, 0.6, -0.8);
  private static final Vec3 AT = new Vec3(4e-3, -7e-3, 2e-3);

  private static Preload pull(String name, PreloadDevice device) {
    return new Preload(
        name,
        device.nominalForce(),
        SLANT,
        AT,
        Distribution.NONE,
        Distribution.NONE,
        Distribution.NONE,
        "as modelled",
        Optional.of(device));
  }

  private static List<KeepClear> places(List<KeepClear> named, Preload... preloads) {
    return PlacesToKeepClear.of(
        MeasuredSeats.design(MeasuredSeats.named("flat")).toBuilder()
            .preloads(List.of(preloads))
            .shop(new ShopFloor(List.of(), List.of(), named))
            .build());
  }

  private static KeepClear of(PreloadDevice device) {
    return places(List.of(), pull("pull", device)).get(0);
  }

  @Test
  void everyDeviceSaysWhatOfItPassesFromHalfToHalf() {
    ScrewThread m6 = ScrewThread.parse("M6");
    PreloadDevice screw =
        new TightenedScrew(
            m6,
            TightenedScrew.byNutFactor(m6, 0.2),
            2.0,
            25e-3,
            206e9,
            0,
            TighteningMethod.TORQUE_FROM_ESTIMATED_FRICTION.scatter());
    PreloadDevice discs =
        DiscSpringStack.of(DiscSpring.ofSteel(25e-3, 12.2e-3, 0.9e-3, 1.6e-3), 1, 6, 2.4e-3, 0);
    PreloadDevice spring =
        new HelicalSpring(2e-3, 16e-3, 6, 8, 40e-3, 10e-3, 0, 79.3e9, 0.1, 0, 800e6);
    for (PreloadDevice bolted : List.of(screw, discs, spring)) {
      assertThat(of(bolted).name()).isEqualTo("pull: bolt shank in its hole");
    }
    assertThat(of(new PlainForce(300, ForceScatter.NONE)).name())
        .isEqualTo("pull: bolt shank or magnet faces");
    assertThat(of(new DeadWeight(2, 9.8, 0)).name()).isEqualTo("pull: hanger of the weight");
    assertThat(of(new AirCylinder(25e-3, 0, 0.4e6, 0, 0, 0)).name()).isEqualTo("pull: piston rod");
    Preload unknown =
        new Preload(
            "pull", 300, SLANT, AT, Distribution.NONE, Distribution.NONE, Distribution.NONE, "");
    KeepClear place = places(List.of(), unknown).get(0);
    assertThat(place.name()).isEqualTo("pull: bolt shank or magnet faces");
    assertThat(place.at()).isEqualTo(AT);
    assertThat(place.gap()).as("not known").isEmpty();
    assertThat(place.across()).as("all round").isEmpty();
  }

  @Test
  void magnetsHaveTheirGapAtItsLeastAlongTheirPull() {
    KeepClear faces =
        of(new MagnetPair(MagnetPair.Counterpart.EQUAL_MAGNET, 5e-3, 5e-3, 1.2, 4e-4, 3e-5, 0, 0));
    assertThat(faces.name()).isEqualTo("pull: magnet faces");
    assertThat(faces.gap().orElseThrow()).isCloseTo(3.7e-4, within(1e-18));
    assertThat(faces.across().orElseThrow().distanceTo(SLANT)).isLessThan(1e-15);
  }

  @Test
  void aPullThatTheUserNamesInAnyCaseIsNotToldAgain() {
    KeepClear mine =
        new KeepClear("shank of the LEFT pull", AT, OptionalDouble.of(1e-3), Optional.empty());
    List<KeepClear> all =
        places(
            List.of(mine),
            pull("Left Pull", new DeadWeight(2, 9.8, 0)),
            pull("right pull", new DeadWeight(2, 9.8, 0)));
    assertThat(all)
        .extracting(KeepClear::name)
        .containsExactly(
            "shank of the LEFT pull",
            "right pull: hanger of the weight",
            "one: faces of the halves");
  }

  /** A ball between pins, in binary fractions so that what is left under it is exact. */
  private static List<KeepClear> ofPins(double centre, double radius, double floorDepth) {
    SeatFrame f = SeatFrame.level(Vec3.ZERO, 0);
    CylinderPair pins = new CylinderPair(f, 5e-3, 5e-3, 16e-3, 30e-3, floorDepth);
    Support s = MeasuredSeats.support(pins).withBall(new Ball(f.point(0, 0, centre), radius));
    return PlacesToKeepClear.of(CouplingDesign.builder().support(s).build());
  }

  @Test
  void aBallOverAFloorHasTheRoomBelowItAndOneThatIsLetInHasNone() {
    KeepClear floor = ofPins(0.0078125, 0.0068359375, 0.00390625).get(1);
    assertThat(floor.name()).isEqualTo("one: ball over the floor of its seat");
    // its underside stands 7.8125 - 6.8359375 mm over the axes, the floor 3.90625 mm under them
    assertThat(floor.gap()).isEqualTo(OptionalDouble.of(0.0048828125));
    assertThat(floor.across()).contains(Vec3.Z);
    List<KeepClear> touching = ofPins(0.00390625, 0.0078125, 0.00390625);
    assertThat(touching.get(1).gap()).isEqualTo(OptionalDouble.of(0));
    assertThat(ofPins(0.00390625, 0.0087890625, 0.00390625)).as("only the faces").hasSize(1);
    assertThat(ofPins(0.0078125, 0.0068359375, Double.POSITIVE_INFINITY)).hasSize(1);
  }
}
