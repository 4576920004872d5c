package reseat.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.DistributionShape;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

class TolerancesTest {

  private static final SeatFrame HERE = SeatFrame.level(Vec3.ZERO, 0);
  private static final double R = 0.005;
  private static final Seat VEE = VeeGroove.forBall(HERE, R, 0.8, GrooveExtent.unlimited());
  private static final Seat PINS = CylinderPair.forBall(HERE, R, 0.004, 0.012, 1, 1);
  private static final Seat GOTHIC =
      GothicGroove.forBall(HERE, R, 0.006, 0.8, GrooveExtent.unlimited());
  private static final Seat TRIHEDRAL = TrihedralSeat.forBall(HERE, R, 0.8, 1, 0);
  private static final Seat FLAT = FlatSeat.forBall(HERE, R, 1);

  private static DesignBuilder design(Seat seat) {
    Material steel = new Material("test steel", new ElasticConstants(206e9, 0.3));
    return CouplingDesign.builder()
        .support(
            new Support(
                "front", new Ball(Vec3.ZERO, R), steel, seat, steel, 1, BallMounting.rigid()));
  }

  private static List<Support> of(Seat seat) {
    return design(seat).build().supports();
  }

  private static Tolerance micron(ToleranceKind kind) {
    return Tolerance.ofEach(kind, 1e-6, DistributionShape.UNIFORM);
  }

  @Test
  void aKindOfSeatHasTheDimensionsItIsMadeWith() {
    assertThat(ToleranceKind.FLANK_ANGLE.partsOf(VEE)).containsExactly("left", "right");
    assertThat(ToleranceKind.FLANK_ANGLE.partsOf(TRIHEDRAL))
        .containsExactly("first", "second", "third");
    assertThat(ToleranceKind.FLANK_ANGLE.partsOf(PINS)).isEmpty();
    assertThat(ToleranceKind.PIN_SPACING.partsOf(PINS)).containsExactly("");
    assertThat(ToleranceKind.PIN_DIAMETER.partsOf(PINS)).containsExactly("left", "right");
    assertThat(ToleranceKind.PIN_DIAMETER.partsOf(GOTHIC)).isEmpty();
    assertThat(ToleranceKind.FLANK_RADIUS.partsOf(GOTHIC)).containsExactly("left", "right");
    assertThat(ToleranceKind.ARCH_OFFSET.partsOf(VEE)).isEmpty();
    assertThat(ToleranceKind.FLANK_POSITION.partsOf(FLAT)).containsExactly("flat");
    assertThat(ToleranceKind.FLANK_POSITION.partsOf(GOTHIC)).isEmpty();
    for (Seat seat : List.of(VEE, PINS, GOTHIC, TRIHEDRAL, FLAT)) {
      assertThat(ToleranceKind.SEAT_DEPTH.partsOf(seat)).containsExactly("");
      assertThat(ToleranceKind.BALL_FORM.partsOf(seat)).hasSize(seat.flanks().size());
      assertThat(ToleranceKind.TOOL_POINT.partsOf(seat)).isEmpty();
      assertThat(ToleranceKind.TEMPERATURE.partsOf(seat)).isEmpty();
    }
  }

  @Test
  void theToleranceAddressedMostCloselyGoverns() {
    Tolerance general = micron(ToleranceKind.FLANK_POSITION);
    Tolerance left = general.onPart("left").withLimit(2e-6);
    Tolerance front = general.at("front").withLimit(3e-6);
    Tolerance frontLeft = front.onPart("left").withLimit(4e-6);
    Tolerances all = Tolerances.of(front, frontLeft, general, left);
    assertThat(all.governing(ToleranceKind.FLANK_POSITION, "front", "left", false))
        .contains(frontLeft);
    assertThat(all.governing(ToleranceKind.FLANK_POSITION, "front", "right", false))
        .contains(front);
    assertThat(all.governing(ToleranceKind.FLANK_POSITION, "rear", "left", false)).contains(left);
    assertThat(all.governing(ToleranceKind.FLANK_POSITION, "rear", "right", false))
        .contains(general);
    assertThat(all.governing(ToleranceKind.FLANK_POSITION, "rear", "right", true)).isEmpty();
    assertThat(all.governing(ToleranceKind.SEAT_DEPTH, "rear", "", false)).isEmpty();
  }

  @Test
  void aDesignRefusesTolerancesOnWhatItDoesNotHave() {
    DesignBuilder vee = design(VEE);
    assertThatThrownBy(
            () ->
                vee.tolerances(Tolerances.of(micron(ToleranceKind.SEAT_DEPTH).at("rear"))).build())
        .hasMessageContaining("no support is called rear")
        .hasMessageContaining("front");
    assertThatThrownBy(
            () ->
                vee.tolerances(Tolerances.of(micron(ToleranceKind.TOOL_POINT).onPart("q"))).build())
        .hasMessageContaining("no machine axis is called q");
    assertThat(Tolerances.of(micron(ToleranceKind.PIN_SPACING)).haveDimension(of(VEE))).isFalse();
    assertThat(Tolerances.of(micron(ToleranceKind.PIN_SPACING)).haveDimension(of(PINS))).isTrue();
    Tolerance third = micron(ToleranceKind.BALL_FORM).onPart("third");
    assertThat(Tolerances.of(third).haveDimension(of(VEE))).isFalse();
    assertThat(Tolerances.of(third).haveDimension(of(TRIHEDRAL))).isTrue();
    assertThat(Tolerances.of(micron(ToleranceKind.TEMPERATURE)).haveDimension(of(VEE))).isTrue();
    CouplingDesign built = vee.tolerances(Tolerances.of(micron(ToleranceKind.SEAT_DEPTH))).build();
    assertThat(built.toBuilder().build().tolerances()).isEqualTo(built.tolerances());
    assertThat(design(VEE).build().tolerances()).isEqualTo(Tolerances.NONE);
  }

  @Test
  void whatIsNoToleranceIsRefused() {
    assertThatThrownBy(
            () -> Tolerance.ofEach(ToleranceKind.BALL_DIAMETER, 0.01, DistributionShape.UNIFORM))
        .hasMessageContaining("ball diameter")
        .hasMessageContaining("0.002");
    assertThatThrownBy(
            () -> Tolerance.ofEach(ToleranceKind.FLANK_ANGLE, 0.5, DistributionShape.UNIFORM))
        .hasMessageContaining("rad");
    assertThatThrownBy(() -> micron(ToleranceKind.TOOL_POINT).at("front"))
        .hasMessageContaining("does not belong to a support");
    assertThatThrownBy(() -> micron(ToleranceKind.SEAT_DEPTH).onPart("left"))
        .hasMessageContaining("whole support");
    Tolerance t = micron(ToleranceKind.SEAT_DEPTH);
    assertThatThrownBy(() -> Tolerances.of(t, t.withLimit(3e-6)))
        .hasMessageContaining("two tolerances");
    assertThatThrownBy(
            () -> Tolerance.shared(ToleranceKind.TOOL_POINT, 1e-6, DistributionShape.UNIFORM))
        .hasMessageContaining("not shared");
  }

  @Test
  void ballGradesAreFoundByTheirDesignation() {
    assertThat(BallGrade.of("G10")).isEqualTo(BallGrade.G10);
    assertThat(BallGrade.of(" 5 ")).isEqualTo(BallGrade.G5);
    assertThat(BallGrade.of("g100")).isEqualTo(BallGrade.G100);
    assertThatThrownBy(() -> BallGrade.of("G11"))
        .hasMessageContaining("G11")
        .hasMessageContaining("G10");
    // literature table, not opened: form 0.25 um, lot spread 0.5 um
    assertThat(BallGrade.G10.source()).contains("not opened");
    assertThat(BallGrade.G24.source()).contains("memory");
    assertThat(BallGrade.G10.tolerances())
        .extracting(t -> t.spread().limit())
        .containsExactly(0.25e-6, 0.125e-6);
  }
}
