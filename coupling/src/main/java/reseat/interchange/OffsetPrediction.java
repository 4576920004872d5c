package reseat.interchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.seat.Ball;
import reseat.seat.SeatFrame;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.units.FilledText;

/**
 * Predicts the offset of each holder on a post from what a measuring machine found.
 *
 * <p>The offset is the shift of the tool point against the coupling as drawn, both standing under
 * preload and weight, by exact geometry. Its uncertainty has two sources: the measuring, and the
 * dimensions that were not measured, which keep their tolerances. What comes from the post is the
 * same for all holders and does not make them differ.
 */
public final class OffsetPrediction {

  /** How far a measured centre may lie from the drawn one before it is taken for a mistake, m. */
  public static final double FARTHEST = 2e-3;

  private final ToleranceModel tolerances;
  private final CouplingDesign design;
  private final PoseResponse response;
  private final Vec3 drawnToolPoint;

  /**
   * Prepares predictions.
   *
   * @param tolerances the coupling as drawn, with the tolerances of what is not measured
   * @throws reseat.equilibrium.NoEquilibriumException if the coupling as drawn finds no rest
   */
  public OffsetPrediction(ToleranceModel tolerances) {
    this.tolerances = tolerances;
    design = tolerances.design();
    response = new PoseResponse(design);
    drawnToolPoint = standing(design);
  }

  /**
   * The predicted offset of one holder.
   *
   * @param holder name of the holder
   * @param offset shift of the tool point against the drawing along the machine axes, m
   * @param rotation rotation of the holder against the drawing, base axes, rad
   * @param own standard uncertainty from this holder along the machine axes, m
   * @param common standard uncertainty from the post along the machine axes, the same for all
   *     holders, m
   * @param lifted whether a contact would have to pull, so that the holder does not stand like this
   */
  public record Offset(
      String holder, Vec3 offset, Vec3 rotation, Vec3 own, Vec3 common, boolean lifted) {}

  private static Vec3 standing(CouplingDesign d) {
    return CouplingModel.of(d).standing().holderInBase().apply(d.toolPoint());
  }

  /**
   * Predicts.
   *
   * @param post the post as measured, or as drawn
   * @param holders the holders as measured
   * @return one offset per holder, in their order
   * @throws IllegalArgumentException if a support is not in the design, or a measured centre is
   *     farther than {@value #FARTHEST} m from the drawn one
   * @throws reseat.equilibrium.NoEquilibriumException if a holder finds no rest
   */
  public List<Offset> of(MeasuredPart post, List<MeasuredPart> holders) {
    check(post);
    Vec3 common = uncertainty(post, Owner.POST);
    List<Offset> offsets = new ArrayList<>();
    for (MeasuredPart holder : holders) {
      check(holder);
      CouplingDesign made = made(post, holder);
      Equilibrium e = CouplingModel.of(made).standing();
      Vec3 shift = e.holderInBase().apply(made.toolPoint()).minus(drawnToolPoint);
      Pose drawn = CouplingModel.of(design).standing().holderInBase();
      offsets.add(
          new Offset(
              holder.name(),
              design.axes().of(shift),
              e.holderInBase().compose(drawn.inverse()).rotationVector(),
              uncertainty(holder, Owner.HOLDER),
              common,
              e.lifted()));
    }
    return List.copyOf(offsets);
  }

  private void check(MeasuredPart part) {
    List<String> names = design.supports().stream().map(Support::name).toList();
    for (MeasuredPoint p : part.points()) {
      if (!names.contains(p.support())) {
        throw new IllegalArgumentException(
            part.name() + ": no support is called " + p.support() + ", only " + names);
      }
    }
  }

  private boolean carriesBalls(Owner half) {
    return (half == Owner.HOLDER) == (design.ballsOn() == Half.HOLDER);
  }

  private CouplingDesign made(MeasuredPart post, MeasuredPart holder) {
    MeasuredPart ballHalf = carriesBalls(Owner.HOLDER) ? holder : post;
    MeasuredPart seatHalf = carriesBalls(Owner.HOLDER) ? post : holder;
    List<Support> supports = new ArrayList<>();
    for (Support s : design.supports()) {
      Support made = s;
      Optional<MeasuredPoint> ball = ballHalf.at(s.name());
      if (ball.isPresent()) {
        Vec3 centre = ball.get().centre();
        checkNear(ballHalf, s.name(), centre.minus(s.ball().centre()));
        double diameter = ball.get().diameter();
        made = made.withBall(new Ball(centre, diameter > 0 ? diameter / 2 : s.ball().radius()));
      }
      Optional<MeasuredPoint> seat = seatHalf.at(s.name());
      if (seat.isPresent()) {
        Vec3 moved =
            seat.get().centre().minus(response.ballHalfInSeatHalf().apply(s.ball().centre()));
        checkNear(seatHalf, s.name(), moved);
        SeatFrame f = s.seat().frame();
        made = made.withSeat(s.seat().withFrame(f.at(f.origin().plus(moved))));
      }
      supports.add(made);
    }
    return design.toBuilder()
        .supports(supports)
        .toolPoint(holder.toolPoint().map(MeasuredPoint::centre).orElse(design.toolPoint()))
        .build();
  }

  private static void checkNear(MeasuredPart part, String support, Vec3 away) {
    if (!(away.norm() <= FARTHEST)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "%s: %s was measured %.3f mm from where it is drawn, more than %.0f mm; check the"
                  + " unit and the frame of the measurement",
              part.name(), support, 1e3 * away.norm(), 1e3 * FARTHEST));
    }
  }

  /** Standard uncertainty that a part brings in, along the machine axes. */
  private Vec3 uncertainty(MeasuredPart part, Owner half) {
    double[] variance = new double[3];
    boolean balls = carriesBalls(half);
    for (int b = 0; b < design.supports().size(); b++) {
      MeasuredPoint p = part.at(design.supports().get(b).name()).orElse(null);
      if (p == null) {
        continue;
      }
      for (ToleranceKind kind : balls ? BALL_PLACE : SEAT_PLACE) {
        add(variance, new DeviationLayout.Dimension(kind, b, -1, ""), p.uncertainty());
      }
      if (balls && p.diameter() > 0) {
        add(
            variance,
            new DeviationLayout.Dimension(ToleranceKind.BALL_DIAMETER, b, -1, ""),
            p.uncertainty());
      }
    }
    if (half == Owner.HOLDER && part.toolPoint().isPresent()) {
      for (int k = 0; k < 3; k++) {
        String axis = design.axes().axis(k).name();
        add(
            variance,
            new DeviationLayout.Dimension(ToleranceKind.TOOL_POINT, -1, -1, axis),
            part.toolPoint().get().uncertainty());
      }
    }
    for (Contributor c : tolerances.contributors()) {
      if (c.owner() == half) {
        addUnmeasured(variance, c, part, balls);
      }
    }
    return new Vec3(Math.sqrt(variance[0]), Math.sqrt(variance[1]), Math.sqrt(variance[2]));
  }

  private static final List<ToleranceKind> BALL_PLACE =
      List.of(ToleranceKind.BALL_ALONG, ToleranceKind.BALL_ACROSS, ToleranceKind.BALL_HEIGHT);

  private static final List<ToleranceKind> SEAT_PLACE =
      List.of(ToleranceKind.SEAT_ALONG, ToleranceKind.SEAT_ACROSS, ToleranceKind.SEAT_DEPTH);

  private void add(double[] variance, DeviationLayout.Dimension d, double deviation) {
    Vec3 shift = design.axes().of(response.to(d).shift()).times(deviation);
    for (int k = 0; k < 3; k++) {
      variance[k] += shift.component(k) * shift.component(k);
    }
  }

  /** Adds what a contributor does through those of its dimensions that were not measured. */
  private void addUnmeasured(double[] variance, Contributor c, MeasuredPart part, boolean balls) {
    Vec3 shift = Vec3.ZERO;
    for (int i = 0; i < c.count(); i++) {
      DeviationLayout.Dimension d = tolerances.layout().at(c.place(i));
      if (!measured(d, part, balls)) {
        shift = shift.plus(response.to(d).shift());
      }
    }
    Vec3 standard = design.axes().of(shift).times(c.spread().standardDeviation());
    for (int k = 0; k < 3; k++) {
      variance[k] += standard.component(k) * standard.component(k);
    }
  }

  private boolean measured(DeviationLayout.Dimension d, MeasuredPart part, boolean balls) {
    if (d.kind() == ToleranceKind.TOOL_POINT) {
      return part.toolPoint().isPresent();
    }
    if (d.support() < 0) {
      return false;
    }
    MeasuredPoint p = part.at(design.supports().get(d.support()).name()).orElse(null);
    if (p == null) {
      return false;
    }
    return switch (d.kind()) {
      case BALL_DIAMETER -> p.diameter() > 0;
      case BALL_FORM -> false;
      default -> balls == (d.kind().carrier() == ToleranceKind.Carrier.BALLS);
    };
  }
}
