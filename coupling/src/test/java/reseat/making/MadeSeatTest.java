package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.making.MadeDimension.Kind;
import reseat.numerics.DistributionShape;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/** Every size of a seat that is stated is told to its maker, and no other. */
class MadeSeatTest {

  private static final double R = MeasuredSeats.BALL;
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static List<MadeFeature> features(Seat seat, Tolerance... tolerances) {
    return MadeHalf.of(MeasuredSeats.design(seat, tolerances), Half.BASE).features();
  }

  private static MadeFeature first(Seat seat, Tolerance... tolerances) {
    return features(seat, tolerances).get(0);
  }

  private static MadeFeature named(String seat, Tolerance... tolerances) {
    return first(MeasuredSeats.named(seat), tolerances);
  }

  /** Sizes in mm and degrees by their words and part, for the eye. */
  private static Map<String, Double> sizes(MadeFeature f) {
    Map<String, Double> sizes = new TreeMap<>();
    for (MadeDimension d : f.sizes()) {
      String words = (d.kind().words() + " " + d.part()).strip();
      double shown = d.kind().isAngle() ? Math.toDegrees(d.value()) : 1e3 * d.value();
      assertThat(sizes.put(words, Math.rint(1e6 * shown) / 1e6)).as("told once").isNull();
    }
    return sizes;
  }

  private static MadeDimension size(MadeFeature f, Kind kind, String part) {
    return f.sizes().stream()
        .filter(d -> d.kind() == kind && d.part().equals(part))
        .findFirst()
        .orElseThrow();
  }

  private static Tolerance of(ToleranceKind kind, double limit) {
    return Tolerance.ofEach(kind, limit, DistributionShape.UNIFORM);
  }

  @Test
  void aRightAngledVeeOfTenAndAHalfMillimetres() {
    // half as deep as wide; the ball's centre lies R root two over the root; the relief of 1.5 mm
    // begins 0.75 mm over the root and goes 0.5 mm below that
    assertThat(sizes(named("vee")))
        .containsOnlyKeys(
            "ball centre over face",
            "depth to floor",
            "depth to sharp root",
            "flank angle",
            "length",
            "mouth width",
            "root width")
        .containsEntry("ball centre over face", 3.730256)
        .containsEntry("depth to floor", 5.0)
        .containsEntry("depth to sharp root", 5.25)
        .containsEntry("flank angle", 45.0)
        .containsEntry("length", 19.0)
        .containsEntry("mouth width", 10.5)
        .containsEntry("root width", 1.5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"vee", "unlike vee"})
  void theFloorLiesAsFarBelowTheBallAsItsClearanceSays(String name) {
    Seat seat = MeasuredSeats.named(name);
    MadeFeature vee = first(seat);
    double overFloor =
        seat.clearances(MeasuredSeats.support(seat).ball()).stream()
            .filter(c -> c.feature() == SeatClearance.Feature.FLOOR)
            .mapToDouble(SeatClearance::distance)
            .sum();
    double underside = size(vee, Kind.BALL_OVER_FACE, "").value() - R;
    assertThat(size(vee, Kind.FLOOR_DEPTH, "").value())
        .isCloseTo(overFloor - underside, within(1e-15));
  }

  @Test
  void whatIsNotStatedIsNotTold() {
    var f = MeasuredSeats.named("vee").frame();
    GrooveExtent none = GrooveExtent.unlimited();
    assertThat(sizes(first(new VeeGroove(f, 0.8, 0.8, none)))).containsOnlyKeys("flank angle");
    GrooveExtent rooted = new GrooveExtent(INFINITE, 20e-3, 1e-3, 0.2e-3);
    assertThat(sizes(first(new VeeGroove(f, 0.8, 0.8, rooted))))
        .as("no face to count the floor's depth from")
        .containsOnlyKeys("flank angle", "length", "root width");
    GrooveExtent sharp = new GrooveExtent(10e-3, INFINITE, 0, 0);
    assertThat(sizes(first(new VeeGroove(f, 0.8, 0.8, sharp))))
        .containsOnlyKeys(
            "flank angle", "mouth width", "depth to sharp root", "ball centre over face");
    assertThat(sizes(first(new TrihedralSeat(f, 0.8, 0.8, 0.8, INFINITE, 0))))
        .containsOnlyKeys("flank angle");
    assertThat(sizes(first(new ConeSeat(f, 0.8, INFINITE, 0)))).containsOnlyKeys("flank angle");
    assertThat(sizes(first(new FlatSeat(f, INFINITE)))).containsOnlyKeys("ball centre over flat");
    List<MadeFeature> pins = features(new CylinderPair(f, 5e-3, 5e-3, 16e-3, INFINITE, INFINITE));
    assertThat(sizes(pins.get(0))).containsOnlyKeys("diameter left");
    assertThat(sizes(pins.get(2))).containsOnlyKeys("spacing of axes", "ball centre over pin axes");
    assertThat(pins.get(2).note()).isEqualTo("floor not stated");
    assertThat(pins.get(2).at().distanceTo(f.origin())).as("at the axes").isLessThan(1e-15);
  }

  @Test
  void flanksAtOneAngleHaveOneAndUnlikeOnesOneEach() {
    Tolerance all = of(ToleranceKind.FLANK_ANGLE, 2e-3);
    Tolerance right = of(ToleranceKind.FLANK_ANGLE, 1e-3).onPart("right");
    MadeFeature unlike = named("unlike vee", all, right);
    assertThat(size(unlike, Kind.FLANK_ANGLE, "left"))
        .isEqualTo(new MadeDimension(Kind.FLANK_ANGLE, "left", 0.7, 2e-3));
    assertThat(size(unlike, Kind.FLANK_ANGLE, "right"))
        .isEqualTo(new MadeDimension(Kind.FLANK_ANGLE, "right", 0.9, 1e-3));
    MadeFeature alike = named("vee", all, right);
    assertThat(size(alike, Kind.FLANK_ANGLE, "").tolerance()).as("the widest").isEqualTo(2e-3);
    assertThat(size(named("vee"), Kind.FLANK_ANGLE, "").isToleranced()).isFalse();
    assertThat(size(alike, Kind.FLANK_ANGLE, "").isToleranced()).isTrue();
    assertThat(sizes(named("unlike trihedral")))
        .containsKeys("flank angle first", "flank angle second", "flank angle third")
        .doesNotContainKey("flank angle");
    // the third alone is another, or the second
    var f = MeasuredSeats.named("trihedral").frame();
    assertThat(sizes(first(new TrihedralSeat(f, 0.8, 0.8, 0.9, 14e-3, 0))))
        .containsKey("flank angle third");
    assertThat(sizes(first(new TrihedralSeat(f, 0.8, 0.9, 0.8, 14e-3, 0))))
        .containsKey("flank angle third");
  }

  @ParameterizedTest
  @ValueSource(strings = {"vee", "trihedral", "cone", "flat"})
  void thePlaceOfAFlankIsToldOnlyWithATolerance(String name) {
    assertThat(sizes(named(name))).doesNotContainKey("flank position");
    MadeFeature proud = named(name, of(ToleranceKind.FLANK_POSITION, 4e-6));
    assertThat(size(proud, Kind.FLANK_POSITION, ""))
        .isEqualTo(new MadeDimension(Kind.FLANK_POSITION, "", 0, 4e-6));
  }

  @Test
  void aTrihedralSeatAndACone() {
    double a = Math.toRadians(54.7);
    assertThat(sizes(named("trihedral")))
        .hasSize(5)
        .containsEntry("circle inscribed in mouth", 14.0)
        .containsEntry("circle inscribed in root relief", 1.0)
        .containsEntry("flank angle", 54.7)
        .containsEntry("depth to sharp root", Math.rint(7e6 * Math.tan(a)) / 1e6);
    double b = Math.toRadians(50);
    assertThat(sizes(named("cone")))
        .hasSize(5)
        .containsEntry("mouth diameter", 13.0)
        .containsEntry("root diameter", 1.0)
        .containsEntry("flank angle", 50.0)
        .containsEntry("depth to sharp root", Math.rint(6.5e6 * Math.tan(b)) / 1e6)
        .containsEntry(
            "ball centre over face",
            Math.rint(1e6 * (1e3 * R / Math.cos(b) - 6.5 * Math.tan(b))) / 1e6);
  }

  @Test
  void aGothicGrooveHasRadiiAndTheOffsetOfTheirAxes() {
    Seat seat = MeasuredSeats.named("unlike gothic");
    MadeFeature arch =
        first(
            seat,
            of(ToleranceKind.FLANK_RADIUS, 20e-6),
            of(ToleranceKind.ARCH_OFFSET, 8e-6),
            of(ToleranceKind.SEAT_DEPTH, 6e-6));
    assertThat(sizes(arch))
        .hasSize(7)
        .containsEntry("flank radius left", 8.0)
        .containsEntry("flank radius right", 8.2)
        .containsEntry("axis from middle", 1.0)
        .containsKeys("mouth width", "length", "root width", "ball centre over face");
    assertThat(size(arch, Kind.FLANK_RADIUS, "right").tolerance()).isEqualTo(20e-6);
    assertThat(size(arch, Kind.ARCH_OFFSET, "").tolerance()).isEqualTo(8e-6);
    assertThat(size(arch, Kind.BALL_OVER_FACE, "").tolerance()).isEqualTo(6e-6);
    assertThat(arch.kind()).isEqualTo(MadeFeature.Kind.GOTHIC_GROOVE);
    // flanks of 8 mm whose axes stand 1 mm past the middle, cut 5.25 mm from it
    var drawn =
        new GothicGroove(seat.frame(), 8e-3, 8e-3, 1e-3, 1.2e-3, ((GothicGroove) seat).extent());
    double face = 1.2e-3 - Math.sqrt(8e-3 * 8e-3 - 6.25e-3 * 6.25e-3);
    double ball = drawn.frame().upward(MeasuredSeats.support(drawn).ball().centre());
    assertThat(size(first(drawn), Kind.BALL_OVER_FACE, "").value())
        .isCloseTo(ball - face, within(1e-15));
  }

  @Test
  void pinsStandHalfTheirSpacingToEitherSideOfTheBallOverTheFloorOfTheirPocket() {
    CylinderPair pair = (CylinderPair) MeasuredSeats.named("unlike pins");
    Support support = MeasuredSeats.support(pair);
    // the ball rests 3 mm along the pins from their middle
    Support moved =
        support.withSeat(pair.withFrame(pair.frame().at(pair.frame().point(-3e-3, 0, 0))));
    CouplingDesign design = CouplingDesign.builder().support(moved).build();
    List<MadeFeature> made = MadeHalf.of(design, Half.BASE).features();
    assertThat(made).extracting(MadeFeature::kind).hasSize(4);
    var f = pair.frame();
    assertThat(made.get(0).at().distanceTo(f.point(0, 7.5e-3, 0))).isLessThan(1e-15);
    assertThat(made.get(1).at().distanceTo(f.point(0, -7.5e-3, 0))).isLessThan(1e-15);
    assertThat(made.get(2).at().distanceTo(f.point(0, 0, -5e-3))).isLessThan(1e-15);
    assertThat(sizes(made.get(0)))
        .containsEntry("diameter left", 10.0)
        .containsEntry("length left", 30.0);
    assertThat(sizes(made.get(1)))
        .containsEntry("diameter right", 9.4)
        .containsEntry("length right", 30.0);
    assertThat(sizes(made.get(2)))
        .containsEntry("spacing of axes", 15.0)
        .containsEntry("pocket floor below axes", 5.0)
        .containsKey("ball centre over pin axes");
    assertThat(made.get(0).note()).isEqualTo("left pin of 52100");
    assertThat(made.get(1).note()).isEqualTo("right pin of 52100");
    assertThat(made.get(2).note()).isEmpty();
  }

  @Test
  void aFlatsPadAndTheBallOverIt() {
    MadeFeature flat = named("flat", of(ToleranceKind.SEAT_DEPTH, 6e-6));
    assertThat(sizes(flat)).hasSize(2).containsEntry("diameter", 8.0);
    assertThat(size(flat, Kind.BALL_OVER_FLAT, "").value()).isCloseTo(R, within(1e-15));
    assertThat(size(flat, Kind.BALL_OVER_FLAT, "").tolerance()).isEqualTo(6e-6);
    assertThat(flat.kind()).isEqualTo(MadeFeature.Kind.FLAT);
  }

  @Test
  void aHardCaseIsToldOfEveryPartButThePocket() {
    List<Double> told = new ArrayList<>();
    Support pins = MeasuredSeats.support(MeasuredSeats.named("pins"));
    Support hard =
        new Support(
            "one",
            pins.ball(),
            pins.ballMaterial(),
            pins.seat(),
            pins.seatMaterial(),
            0.6e-3,
            pins.mounting());
    for (MadeFeature f :
        MadeHalf.of(CouplingDesign.builder().support(hard).build(), Half.BASE).features()) {
      told.add(sizes(f).get("hard to at least"));
    }
    assertThat(told).containsExactly(0.6, 0.6, null, null);
  }

  @Test
  void whatRunsHasADirectionAndEverySeatItsPlace() {
    for (String name : List.of("vee", "gothic", "pins", "trihedral")) {
      double degrees = Math.toDegrees(named(name).direction().orElseThrow());
      assertThat(degrees).as(name).isCloseTo(27, within(1e-9));
    }
    assertThat(named("cone").direction()).isEqualTo(OptionalDouble.empty());
    assertThat(named("flat").direction()).isEmpty();
    for (Seat seat : MeasuredSeats.ALL.values()) {
      if (!(seat instanceof CylinderPair)) {
        assertThat(first(seat).at().distanceTo(seat.frame().origin())).isLessThan(1e-15);
        assertThat(first(seat).note()).isEqualTo("of 52100");
      }
    }
    MadeFeature vee =
        named(
            "vee",
            of(ToleranceKind.SEAT_ACROSS, 1e-6),
            of(ToleranceKind.SEAT_ALONG, 2e-6),
            of(ToleranceKind.SEAT_DEPTH, 3e-6),
            of(ToleranceKind.SEAT_DIRECTION, 4e-6),
            of(ToleranceKind.SEAT_PITCH, 5e-6),
            of(ToleranceKind.SEAT_ROLL, 6e-6));
    assertThat(vee.place()).isEqualTo(new PlaceTolerance(1e-6, 2e-6, 3e-6, 4e-6, 5e-6, 6e-6));
  }
}
