package reseat.interchange;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactGeometry;
import reseat.seat.SeatFrame;
import reseat.space.Pose;
import reseat.space.Vec3;

/**
 * Writes the balls and flanks of a coupling as made into arrays, without allocating.
 *
 * <p>Does what {@link DeviatedDesign} does, a million times over. Not for use by several threads.
 */
final class DeviatedGeometry {

  private static final int AXIS = 0;
  private static final int LEFT = 3;
  private static final int UP = 6;
  private static final int ORIGIN = 9;
  private static final int FRAME = 12;

  private final boolean ballsOnHolder;
  private final double expansion;
  private final int supports;
  private final int contacts;
  private final double[] frames;
  private final double[] ballCentre;
  private final double[] ballRadius;
  private final double[] ballExpansion;
  private final int[] firstContact;
  private final int[] supportOf;
  private final FlankShape[] shape;
  private final ApproachLaw[] law;
  private final double[] toolPoint;
  private final double[] machineAxes;
  private final DeviationLayout at;

  private final double[] turn = new double[9];
  private final double[] local = new double[3];
  private final double[] point = new double[3];
  private final double[] direction = new double[3];
  private final double[] origin = new double[3];

  DeviatedGeometry(CouplingDesign design, DeviationLayout layout) {
    at = layout;
    ballsOnHolder = design.ballsOn() == Half.HOLDER;
    expansion = design.remount().holderExpansion();
    List<Support> list = design.supports();
    supports = list.size();
    contacts = design.contactCount();
    frames = new double[FRAME * supports];
    ballCentre = new double[3 * supports];
    ballRadius = new double[supports];
    ballExpansion = new double[supports];
    firstContact = new int[supports + 1];
    supportOf = new int[contacts];
    shape = new FlankShape[contacts];
    law = new ApproachLaw[contacts];
    for (int b = 0; b < supports; b++) {
      Support s = list.get(b);
      SeatFrame f = s.seat().frame();
      put(f.axis(), frames, FRAME * b + AXIS);
      put(f.left(), frames, FRAME * b + LEFT);
      put(f.up(), frames, FRAME * b + UP);
      put(f.origin(), frames, FRAME * b + ORIGIN);
      put(s.ball().centre(), ballCentre, 3 * b);
      ballRadius[b] = s.ball().radius();
      ballExpansion[b] = DeviatedDesign.ballExpansion(design, s);
      FlankShape[] shapes = FlankShape.of(s.seat());
      for (int i = 0; i < shapes.length; i++) {
        int c = firstContact[b] + i;
        shape[c] = shapes[i];
        supportOf[c] = b;
        law[c] = ApproachLaw.of(s, shapes[i]);
      }
      firstContact[b + 1] = firstContact[b] + shapes.length;
    }
    toolPoint = new double[3];
    put(design.toolPoint(), toolPoint, 0);
    machineAxes = new double[9];
    for (int k = 0; k < 3; k++) {
      put(design.axes().axis(k).direction(), machineAxes, 3 * k);
    }
  }

  private static void put(Vec3 v, double[] out, int from) {
    out[from] = v.x();
    out[from + 1] = v.y();
    out[from + 2] = v.z();
  }

  /** Writes the balls as made. */
  void writeBalls(double[] state, ContactGeometry g) {
    double grow = ballsOnHolder ? 1 + expansion * state[at.temperature] : 1;
    for (int b = 0; b < supports; b++) {
      local[0] = state[at.ballAlong + b];
      local[1] = state[at.ballAcross + b];
      local[2] = state[at.ballHeight + b];
      for (int k = 0; k < 3; k++) {
        point[k] = (ballCentre[3 * b + k] + outward(b, k)) * grow;
      }
      g.placeBall(b, point, radius(state, b));
    }
  }

  private double radius(double[] state, int b) {
    double grow = ballsOnHolder ? 1 + ballExpansion[b] * state[at.temperature] : 1;
    return (ballRadius[b] + state[at.ballDiameter + b] / 2) * grow;
  }

  /** Component k, in the seat half, of the vector that {@code local} holds in the seat's axes. */
  private double outward(int b, int k) {
    int f = FRAME * b + k;
    return local[0] * frames[f + AXIS] + local[1] * frames[f + LEFT] + local[2] * frames[f + UP];
  }

  /** Writes the flanks as made; proud spots of the balls are in them. */
  void writeSeats(double[] state, ContactGeometry g) {
    double grow = ballsOnHolder ? 1 : 1 + expansion * state[at.temperature];
    for (int b = 0; b < supports; b++) {
      local[0] = state[at.seatAlong + b];
      local[1] = state[at.seatAcross + b];
      local[2] = -state[at.seatDepth + b];
      for (int k = 0; k < 3; k++) {
        origin[k] = frames[FRAME * b + ORIGIN + k] + outward(b, k);
      }
      Pose.rotationMatrix(
          state[at.seatRoll + b], state[at.seatPitch + b], state[at.seatDirection + b], turn);
      double spacing = state[at.pinSpacing + b] / 2;
      double arch = state[at.archOffset + b];
      for (int c = firstContact[b]; c < firstContact[b + 1]; c++) {
        if (shape[c].plane()) {
          writePlane(state, g, b, c, grow);
        } else {
          writeCylinder(state, g, b, c, grow, spacing + arch);
        }
      }
    }
  }

  private void writePlane(double[] state, ContactGeometry g, int b, int c, double grow) {
    double angle = shape[c].angle() + state[at.flankAngle + c];
    double sine = Elementary.sin(angle);
    turned(shape[c].pushAlong() * sine, shape[c].pushLeft() * sine, Elementary.cos(angle));
    double proud = state[at.flankPosition + c] + state[at.ballForm + c];
    for (int k = 0; k < 3; k++) {
      direction[k] = outward(b, k);
      point[k] = (origin[k] + proud * direction[k]) * grow;
    }
    g.placeFlank(c, point, direction, 0);
  }

  private void writeCylinder(
      double[] state, ContactGeometry g, int b, int c, double grow, double aside) {
    turned(0, shape[c].left() + shape[c].pushLeft() * aside, shape[c].up());
    for (int k = 0; k < 3; k++) {
      point[k] = (origin[k] + outward(b, k)) * grow;
    }
    turned(1, 0, 0);
    for (int k = 0; k < 3; k++) {
      direction[k] = outward(b, k);
    }
    g.placeFlank(c, point, direction, flankRadius(state, c) * grow);
  }

  private double flankRadius(double[] state, int c) {
    double form = state[at.ballForm + c];
    return shape[c].radius()
        + state[at.flankRadius + c]
        + state[at.pinDiameter + c] / 2
        + (shape[c].hollow() ? -form : form);
  }

  private void turned(double x, double y, double z) {
    for (int i = 0; i < 3; i++) {
      local[i] = turn[3 * i] * x + turn[3 * i + 1] * y + turn[3 * i + 2] * z;
    }
  }

  /**
   * Writes the constants of the contacts' laws as made: C of N = C δ^(3/2), N/m^1.5; the slope for
   * a third of a ring, N/m.
   */
  void writeConstants(double[] state, double[] out) {
    double grow = ballsOnHolder ? 1 : 1 + expansion * state[at.temperature];
    for (int c = 0; c < contacts; c++) {
      double ball = radius(state, supportOf[c]) - ballRadius[supportOf[c]];
      out[c] = law[c].constant(ball, flankRadius(state, c) * grow - shape[c].radius());
    }
  }

  /** Writes where the tool point of this holder is in its axes, m. */
  void writeToolPoint(double[] state, double[] out) {
    double grow = 1 + expansion * state[at.temperature];
    for (int k = 0; k < 3; k++) {
      double at0 = toolPoint[k];
      for (int axis = 0; axis < 3; axis++) {
        at0 += state[at.toolPoint + axis] * machineAxes[3 * axis + k];
      }
      out[k] = at0 * grow;
    }
  }
}
