package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.DistributionShape;
import reseat.numerics.RandomStream;
import reseat.space.Pose;
import reseat.space.Vec3;

class OffsetPredictionTest {

  private static final double U = 0.5e-6;

  private static MeasuredPart balls(CouplingDesign made, String name, double uncertainty) {
    List<MeasuredPoint> points = new ArrayList<>();
    for (Support s : made.supports()) {
      points.add(new MeasuredPoint(s.name(), s.ball().centre(), s.ball().diameter(), uncertainty));
    }
    return new MeasuredPart(
        name, points, Optional.of(new MeasuredPoint("", made.toolPoint(), 0, uncertainty)));
  }

  /** Where balls of the drawn size rest in the seats as made: the rest pose of the drawn balls. */
  private static MeasuredPart seats(CouplingDesign drawn, CouplingDesign made, String name) {
    List<Support> mixed = new ArrayList<>();
    for (int b = 0; b < 3; b++) {
      mixed.add(drawn.supports().get(b).withSeat(made.supports().get(b).seat()));
    }
    List<MeasuredPoint> points = new ArrayList<>();
    for (int b = 0; b < 3; b++) {
      // one seat alone holds the ball but along the groove: a coupling of the drawn balls in the
      // other seats as drawn and this one as made finds the place
      List<Support> one = new ArrayList<>(drawn.supports());
      one.set(b, mixed.get(b));
      Pose pose = CouplingModel.of(drawn.toBuilder().supports(one).build()).restPose();
      points.add(
          new MeasuredPoint(
              drawn.supports().get(b).name(),
              pose.apply(drawn.supports().get(b).ball().centre()),
              0,
              U));
    }
    return new MeasuredPart(name, points, Optional.empty());
  }

  @Test
  void measuredHoldersStandWhereTheyWereMade() {
    CouplingDesign d = TolerancedCouplings.toolPost();
    ToleranceModel model = ToleranceModel.of(d);
    OffsetPrediction prediction = new OffsetPrediction(model);
    Vec3 drawn = CouplingModel.of(d).standing().holderInBase().apply(d.toolPoint());
    for (int h = 0; h < 10; h++) {
      RandomStream stream = RandomStream.of(17, h);
      double[] deviations =
          model.contributors().stream()
              .mapToDouble(
                  c -> {
                    double drawn1 = c.spread().draw(stream);
                    boolean unseen =
                        c.kind() == ToleranceKind.BALL_FORM
                            || c.kind() == ToleranceKind.TEMPERATURE;
                    return unseen ? 0 : drawn1;
                  })
              .toArray();
      CouplingDesign made = model.made(deviations);
      Vec3 truth =
          CouplingModel.of(made).standing().holderInBase().apply(made.toolPoint()).minus(drawn);
      OffsetPrediction.Offset o =
          prediction.of(seats(d, made, "post"), List.of(balls(made, "holder " + h, U))).get(0);
      // seats are told by one point each: what their tilts do beyond that is of second order
      assertThat(o.offset().distanceTo(d.axes().of(truth))).isLessThan(2e-8);
      assertThat(truth.norm()).isGreaterThan(1e-6);
      assertThat(o.lifted()).isFalse();
    }
  }

  @Test
  void uncertaintyOfMeasuringGoesThroughTheSensitivities() {
    // three balls measured to U in every coordinate and diameter, tool point at the middle: along
    // the normals each contact is uncertain by U (position) and U/2 (diameter, common to a ball)
    CouplingDesign d = TolerancedCouplings.threeVees().build();
    OffsetPrediction.Offset o =
        new OffsetPrediction(ToleranceModel.of(d))
            .of(MeasuredPart.asDrawn("post"), List.of(balls(d, "a", U)))
            .get(0);
    assertThat(o.offset().norm()).isLessThan(1e-15);
    assertThat(o.common()).isEqualTo(Vec3.ZERO);
    // closed form for radial vees at 45 degrees: height of a ball u and diameter u/2 / c combine
    // over three balls; sideways two of three balls share; the tool point adds its own U
    double height = U * Math.sqrt((1 + 0.5) / 3 + 1);
    assertThat(o.own().z()).isCloseTo(height, within(1e-12));
    double across = U * Math.sqrt(2.0 / 3 + 1);
    assertThat(o.own().x()).isCloseTo(across, within(1e-12));
    assertThat(o.own().y()).isCloseTo(across, within(1e-12));
  }

  @Test
  void whatWasNotMeasuredKeepsItsTolerance() {
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .tolerances(
                Tolerances.of(
                    Tolerance.ofEach(ToleranceKind.BALL_HEIGHT, 3e-6, DistributionShape.UNIFORM),
                    Tolerance.shared(ToleranceKind.BALL_DIAMETER, 2e-6, DistributionShape.UNIFORM),
                    Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 6e-6, DistributionShape.UNIFORM)))
            .build();
    OffsetPrediction prediction = new OffsetPrediction(ToleranceModel.of(d));
    OffsetPrediction.Offset nothing =
        prediction.of(MeasuredPart.asDrawn("post"), List.of(MeasuredPart.asDrawn("a"))).get(0);
    double lot = 2e-6 / Math.sqrt(3) / Math.sqrt(2);
    double heights = 3e-6 / Math.sqrt(3) / Math.sqrt(3);
    assertThat(nothing.own().z()).isCloseTo(Math.hypot(lot, heights), within(1e-12));
    assertThat(nothing.common().z()).isCloseTo(6e-6 / 3, within(1e-12));
    // one ball measured, its diameter too: the lot's error is left on the other two
    MeasuredPoint front =
        new MeasuredPoint(
            "ball 90", d.supports().get(0).ball().centre(), 2 * TolerancedCouplings.BALL, 0);
    OffsetPrediction.Offset one =
        prediction
            .of(
                MeasuredPart.asDrawn("post"),
                List.of(new MeasuredPart("a", List.of(front), Optional.empty())))
            .get(0);
    assertThat(one.own().z())
        .isCloseTo(Math.hypot(2 * lot / 3, heights * Math.sqrt(2.0 / 3)), within(1e-12));
  }

  @Test
  void ballsOnTheBaseMakeTheSeatsTheHoldersOwn() {
    CouplingDesign d = TolerancedCouplings.zoo().get("vees, balls on the base");
    OffsetPrediction prediction = new OffsetPrediction(ToleranceModel.of(d));
    Vec3 lift = new Vec3(0, 0, 4e-6);
    List<MeasuredPoint> higher = new ArrayList<>();
    for (Support s : d.supports()) {
      higher.add(new MeasuredPoint(s.name(), s.ball().centre().plus(lift), 0, 0));
    }
    MeasuredPart holder = new MeasuredPart("a", higher, Optional.empty());
    MeasuredPart post = new MeasuredPart("post", higher, Optional.empty());
    Vec3 seatsHigher = prediction.of(MeasuredPart.asDrawn("post"), List.of(holder)).get(0).offset();
    // seats that sit higher in the holder let it down by as much
    assertThat(seatsHigher.z()).isCloseTo(-4e-6, within(1e-11));
    Vec3 ballsHigher = prediction.of(post, List.of(MeasuredPart.asDrawn("a"))).get(0).offset();
    assertThat(ballsHigher.z()).isCloseTo(4e-6, within(1e-11));
  }

  @Test
  void measurementsThatCannotBeMeantAreRefused() {
    CouplingDesign d = TolerancedCouplings.toolPost();
    OffsetPrediction prediction = new OffsetPrediction(ToleranceModel.of(d));
    MeasuredPart inch =
        new MeasuredPart(
            "a",
            List.of(new MeasuredPoint("ball 90", new Vec3(0, 0.00197, 0), 0, 0)),
            Optional.empty());
    assertThatThrownBy(() -> prediction.of(MeasuredPart.asDrawn("post"), List.of(inch)))
        .hasMessageContaining("a: ball 90")
        .hasMessageContaining("48.030 mm")
        .hasMessageContaining("check the unit");
    MeasuredPart other =
        new MeasuredPart(
            "b", List.of(new MeasuredPoint("left", Vec3.ZERO, 0, 0)), Optional.empty());
    assertThatThrownBy(() -> prediction.of(MeasuredPart.asDrawn("post"), List.of(other)))
        .hasMessageContaining("no support is called left");
    MeasuredPoint p = new MeasuredPoint("left", Vec3.ZERO, 0, 0);
    assertThatThrownBy(() -> new MeasuredPart("c", List.of(p, p), Optional.empty()))
        .hasMessageContaining("measured twice");
    assertThatThrownBy(() -> new MeasuredPoint("left", Vec3.ZERO, 0, -1))
        .hasMessageContaining("uncertainty");
  }
}
