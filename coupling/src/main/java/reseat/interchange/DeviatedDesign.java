package reseat.interchange;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.seat.Ball;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/**
 * A coupling as made, built as a design of its own.
 *
 * <p>The plain road, one record at a time; {@link DeviatedGeometry} does the same in arrays for the
 * simulation, and the two are tested against each other.
 */
final class DeviatedDesign {

  private final CouplingDesign drawn;
  private final DeviationLayout layout;
  private final double[] state;

  private DeviatedDesign(CouplingDesign drawn, DeviationLayout layout, double[] state) {
    this.drawn = drawn;
    this.layout = layout;
    this.state = state;
  }

  static CouplingDesign of(CouplingDesign drawn, DeviationLayout layout, double[] state) {
    return new DeviatedDesign(drawn, layout, state).build();
  }

  private CouplingDesign build() {
    double growth = drawn.remount().holderExpansion() * state[layout.first(TEMPERATURE)];
    List<Support> made = new ArrayList<>();
    int contact = 0;
    for (int b = 0; b < drawn.supports().size(); b++) {
      Support s = drawn.supports().get(b);
      made.add(s.withBall(ball(s, b)).withSeat(seat(s, b, contact, growth)));
      contact += s.seat().contacts();
    }
    Vec3 shift = drawn.axes().toCoupling(vector(layout.first(ToleranceKind.TOOL_POINT), 0, 1, 2));
    return drawn.toBuilder()
        .supports(made)
        .toolPoint(drawn.toolPoint().plus(shift).times(1 + growth))
        .build();
  }

  private static final ToleranceKind TEMPERATURE = ToleranceKind.TEMPERATURE;

  private Vec3 vector(int from, int x, int y, int z) {
    return new Vec3(state[from + x], state[from + y], state[from + z]);
  }

  private double of(ToleranceKind kind, int index) {
    return state[layout.first(kind) + index];
  }

  private Ball ball(Support s, int b) {
    SeatFrame f = s.seat().frame();
    Vec3 centre =
        s.ball()
            .centre()
            .plus(f.axis().times(of(ToleranceKind.BALL_ALONG, b)))
            .plus(f.left().times(of(ToleranceKind.BALL_ACROSS, b)))
            .plus(f.up().times(of(ToleranceKind.BALL_HEIGHT, b)));
    double radius = s.ball().radius() + of(ToleranceKind.BALL_DIAMETER, b) / 2;
    if (drawn.ballsOn() == Half.BASE) {
      return new Ball(centre, radius);
    }
    double kelvin = state[layout.first(TEMPERATURE)];
    return new Ball(
        centre.times(1 + drawn.remount().holderExpansion() * kelvin),
        radius * (1 + ballExpansion(drawn, s) * kelvin));
  }

  /** Expansion of a ball, where unknown that of the holder, 1/K. */
  static double ballExpansion(CouplingDesign design, Support s) {
    return s.ballExpansion(design.remount().holderExpansion());
  }

  private reseat.seat.Seat seat(Support s, int b, int contact, double growth) {
    SeatFrame f = s.seat().frame();
    Vec3 origin =
        f.point(
            of(ToleranceKind.SEAT_ALONG, b),
            of(ToleranceKind.SEAT_ACROSS, b),
            -of(ToleranceKind.SEAT_DEPTH, b));
    Vec3 turn =
        f.axis()
            .times(of(ToleranceKind.SEAT_ROLL, b))
            .plus(f.left().times(of(ToleranceKind.SEAT_PITCH, b)))
            .plus(f.up().times(of(ToleranceKind.SEAT_DIRECTION, b)));
    int flanks = s.seat().contacts();
    double[] angle = new double[flanks];
    double[] position = new double[flanks];
    double[] radius = new double[flanks];
    double[] form = new double[flanks];
    for (int i = 0; i < flanks; i++) {
      angle[i] = of(ToleranceKind.FLANK_ANGLE, contact + i);
      position[i] = of(ToleranceKind.FLANK_POSITION, contact + i);
      radius[i] =
          of(ToleranceKind.FLANK_RADIUS, contact + i)
              + of(ToleranceKind.PIN_DIAMETER, contact + i) / 2;
      form[i] = of(ToleranceKind.BALL_FORM, contact + i);
    }
    return s.seat()
        .accept(
            new DeviatedSeat(
                DeviatedSeat.turned(f, origin, turn),
                angle,
                position,
                radius,
                form,
                of(ToleranceKind.PIN_SPACING, b),
                of(ToleranceKind.ARCH_OFFSET, b),
                drawn.ballsOn() == Half.BASE ? 1 + growth : 1));
  }
}
