package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Preload;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.numerics.Distribution;
import reseat.space.Vec3;

/** What a maker gets to know of a half. */
class MadeHalfTest {

  private static final double NANOMETRE = 1e-9;

  private static CouplingDesign design(String text) {
    return DesignFile.read(text).design().orElseThrow();
  }

  private static CouplingDesign postTurnedBy(double degrees) {
    String first = "first_ball_at = \"0 deg\"";
    String text = Starter.TOOL_POST.text();
    assertThat(text).contains(first);
    return design(text.replace(first, "first_ball_at = \"" + degrees + " deg\""));
  }

  private static MadeDimension size(MadeFeature f, MadeDimension.Kind kind) {
    return f.sizes().stream().filter(d -> d.kind() == kind).findFirst().orElseThrow();
  }

  private static void samePlace(Vec3 a, Vec3 b) {
    assertThat(a.distanceTo(b)).isLessThan(NANOMETRE);
  }

  @ParameterizedTest
  @EnumSource(Half.class)
  void turningAHalfOverTwiceChangesNothing(Half half) {
    MakerView view = new MakerView(half);
    Vec3 p = new Vec3(0.012, -0.034, 0.056);
    samePlace(view.turnedOver(view.turnedOver(p)), p);
  }

  @ParameterizedTest
  @EnumSource(Half.class)
  void theMakersAxesAreRightHandedAndLookOutOfTheWorkedFace(Half half) {
    MakerView view = new MakerView(half);
    samePlace(view.right().cross(view.up()), view.outOfFace());
    assertThat(view.outOfFace().z()).isEqualTo(half == Half.BASE ? 1 : -1);
  }

  @Test
  void theHoldersPlanIsTheMirrorImageOfTheBases() {
    Vec3 direction = Vec3.atAzimuth(Math.toRadians(30.96));
    double base = new MakerView(Half.BASE).azimuth(direction);
    double holder = new MakerView(Half.HOLDER).azimuth(direction);
    assertThat(Math.toDegrees(base)).isCloseTo(30.96, within(1e-9));
    assertThat(Math.toDegrees(holder)).isCloseTo(360 - 30.96, within(1e-9));
    assertThat(new MakerView(Half.HOLDER).words()).contains("mirror image");
    assertThat(new MakerView(Half.BASE).words()).doesNotContain("mirror");
  }

  @Test
  void theBallsOfOneHalfLieWhereTheSeatsOfTheOtherHoldThem() {
    for (Starter kind : List.of(Starter.TOOL_POST, Starter.PALLET, Starter.SENSOR_MOUNT)) {
      CouplingDesign design = design(kind.text());
      List<MadeFeature> balls = MadeHalf.of(design, Half.HOLDER).ofKind(MadeFeature.Kind.BALL);
      List<MadeFeature> rests = MadeHalf.of(design, Half.BASE).ofKind(MadeFeature.Kind.BALL_REST);
      assertThat(balls).hasSameSizeAs(rests).hasSize(3);
      for (int i = 0; i < balls.size(); i++) {
        Vec3 inBase = new MakerView(Half.HOLDER).turnedOver(balls.get(i).at());
        samePlace(inBase, rests.get(i).at());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {17, 60, 123.4, -91})
  void coordinatesTurnWithTheWholeCoupling(double degrees) {
    for (Half half : Half.values()) {
      List<MadeFeature> straight = MadeHalf.of(postTurnedBy(0), half).features();
      List<MadeFeature> turned = MadeHalf.of(postTurnedBy(degrees), half).features();
      double angle = Math.toRadians(half == Half.HOLDER ? -degrees : degrees);
      assertThat(turned).hasSameSizeAs(straight);
      for (int i = 0; i < straight.size(); i++) {
        MadeFeature a = straight.get(i);
        MadeFeature b = turned.get(i);
        if (a.kind() == MadeFeature.Kind.TOOL_POINT) {
          samePlace(a.at(), b.at()); // the file leaves the tool where it is
          continue;
        }
        samePlace(turned(a.at(), angle), b.at());
        for (int k = 0; k < a.sizes().size(); k++) {
          MadeDimension before = a.sizes().get(k);
          MadeDimension after = b.sizes().get(k);
          assertThat(after.kind()).isEqualTo(before.kind());
          assertThat(after.value()).isCloseTo(before.value(), within(NANOMETRE));
          assertThat(after.tolerance()).isEqualTo(before.tolerance());
        }
        if (a.direction().isPresent()) {
          double more = b.direction().getAsDouble() - a.direction().getAsDouble() - angle;
          assertThat(Math.cos(more)).isCloseTo(1, within(1e-12));
        }
      }
    }
  }

  private static Vec3 turned(Vec3 p, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Vec3(c * p.x() - s * p.y(), s * p.x() + c * p.y(), p.z());
  }

  @Test
  void aToleranceOfEachAndOneOfTheLotAddAndTheMostSpecialGoverns() {
    CouplingDesign design = postTurnedBy(0);
    List<MadeFeature> balls = MadeHalf.of(design, Half.HOLDER).ofKind(MadeFeature.Kind.BALL);
    // G28: 1.4 µm spread in a lot, half of it to either side, and 2.5 µm for the lot's mean
    assertThat(size(balls.get(0), MadeDimension.Kind.DIAMETER).tolerance())
        .isCloseTo(3.2e-6, within(1e-12));
    assertThat(balls.get(0).place().height()).isEqualTo(3e-6);
    assertThat(balls.get(1).place().height()).isEqualTo(5e-6);
    assertThat(balls.get(0).place().direction()).isInfinite();
  }

  @Test
  void aStudsHoleLiesItsStickOutBelowTheBall() {
    MadeHalf holder = MadeHalf.of(postTurnedBy(0), Half.HOLDER);
    MadeFeature hole = holder.ofKind(MadeFeature.Kind.STUD_HOLE).get(0);
    samePlace(hole.at(), new Vec3(0.034925, 0, -0.45 * 0.0254));
    assertThat(hole.note()).isEqualTo("tapped 3/8-40");
    assertThat(size(hole, MadeDimension.Kind.THREAD_DIAMETER).value())
        .isCloseTo(0.375 * 0.0254, within(NANOMETRE));
  }

  @Test
  void whatLeansIsTold() {
    String text =
        Starter.TOOL_POST
            .text()
            .replace("direction = \"-z\"\nat =", "direction = [0.1, 0, -1]\nat =");
    MadeFeature pull =
        MadeHalf.of(design(text), Half.BASE).ofKind(MadeFeature.Kind.LINE_OF_PULL).get(0);
    assertThat(pull.note()).endsWith("leans 5.71 deg toward 180.00 deg");
    MadeFeature fromBelow =
        MadeHalf.of(design(text), Half.HOLDER).ofKind(MadeFeature.Kind.LINE_OF_PULL).get(0);
    assertThat(fromBelow.note()).endsWith("leans 5.71 deg toward 0.00 deg");
  }

  private static MadeFeature pull(Half half, Vec3 direction, Vec3 at, String device) {
    Preload pull =
        new Preload(
            "pull",
            300,
            direction,
            at,
            Distribution.NONE,
            Distribution.NONE,
            Distribution.NONE,
            device);
    CouplingDesign one = MeasuredSeats.design(MeasuredSeats.CONE);
    return MadeHalf.of(one.toBuilder().preloads(List.of(pull)).build(), half)
        .ofKind(MadeFeature.Kind.LINE_OF_PULL)
        .get(0);
  }

  @Test
  void aLineOfPullIsToldWhereItPiercesThePlaneOfTheBallCentres() {
    Vec3 at = new Vec3(10e-3, 5e-3, -20e-3);
    double lean = Math.toRadians(30);
    Vec3 down = new Vec3(Math.sin(lean), 0, -Math.cos(lean));
    // on the way up from 20 mm below it comes back by 20 mm tan 30 degrees
    Vec3 pierced = new Vec3(10e-3 - 20e-3 * Math.tan(lean), 5e-3, 0);
    for (Vec3 direction : List.of(down, down.negated())) {
      MadeFeature pull = pull(Half.BASE, direction, at, "");
      samePlace(pull.at(), pierced);
      assertThat(pull.note()).isEqualTo("leans 30.00 deg toward 180.00 deg");
    }
    samePlace(pull(Half.HOLDER, down, at, "").at(), new Vec3(pierced.x(), -pierced.y(), 0));
    MadeFeature along = pull(Half.BASE, new Vec3(1, 0, -0.05), at, "cord");
    samePlace(along.at(), at);
    assertThat(along.note()).startsWith("cord; leans 87.");
    assertThat(pull(Half.BASE, Vec3.Z.negated(), at, "cord").note()).isEqualTo("cord");
  }

  @Test
  void theToolPointBelongsToTheHolderAndIsToldAlongEveryMachineAxis() {
    CouplingDesign post = postTurnedBy(0);
    assertThat(MadeHalf.of(post, Half.BASE).ofKind(MadeFeature.Kind.TOOL_POINT)).isEmpty();
    List<MadeDimension> along =
        MadeHalf.of(post, Half.HOLDER).ofKind(MadeFeature.Kind.TOOL_POINT).get(0).sizes();
    assertThat(along).extracting(MadeDimension::part).containsExactly("X", "Z", "height");
    assertThat(along).extracting(MadeDimension::value).containsExactly(47e-3, 0.0, 15.2e-3);
    assertThat(along).extracting(MadeDimension::tolerance).containsOnly(50e-6);
    assertThat(MadeHalf.of(post, Half.HOLDER).carriesBalls()).isTrue();
    assertThat(MadeHalf.of(post, Half.BASE).carriesBalls()).isFalse();
  }

  @Test
  void aSeatThatOpensAslantSaysWhichWay() {
    String text =
        Starter.SENSOR_MOUNT
            .text()
            .replace("kind = \"vee\"", "kind = \"vee\"\nopens = [0, 0.5, 1]");
    MadeFeature vee =
        MadeHalf.of(design(text), Half.BASE).ofKind(MadeFeature.Kind.VEE_GROOVE).get(0);
    assertThat(vee.note()).isEqualTo("of 440C; opens 26.57 deg off square toward 90.00 deg");
  }

  @Test
  void aHardCaseIsTold() {
    String text =
        Starter.TOOL_POST
            .text()
            .replace("kind = \"vee\"  ", "case_depth = \"0.8 mm\"\nkind = \"vee\"  ");
    MadeFeature groove =
        MadeHalf.of(design(text), Half.BASE).ofKind(MadeFeature.Kind.VEE_GROOVE).get(0);
    assertThat(groove.note()).isEqualTo("of A2");
    assertThat(size(groove, MadeDimension.Kind.CASE_DEPTH).value()).isEqualTo(0.8e-3);
  }
}
