package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.Half;
import reseat.design.Support;
import reseat.numerics.Lu6;
import reseat.space.Matrix6;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Stiffness of the coupling for small motions about a state, in one of two bounds.
 *
 * <p>Each contact is a spring along its normal; contacts that stick are springs across it too
 * (Mindlin). The ball mounting stands in series: it is shared by the contacts of its ball, so it
 * couples them; the ball shifts and, where contacts stick, tilts on it.
 *
 * <p>True stiffness for small vibrations lies near the sticking bound; for a load large enough to
 * make contacts slide it falls toward the frictionless one. Lifted contacts count as no spring.
 */
public final class CouplingStiffness {

  /** How the contacts behave across their normals. */
  public enum Bound {
    /** Contacts slide freely: the soft bound. */
    FRICTIONLESS,
    /** Contacts stick: the stiff bound. */
    STICKING
  }

  /**
   * Part of the give at a point that sits in one spring.
   *
   * @param name contact, or support with the word mounting
   * @param mounting whether the spring is a ball mounting rather than a contact
   * @param share share of the displacement along the force, 0 to 1
   */
  public record Share(String name, boolean mounting, double share) {}

  private final List<BallSprings> balls;
  private final double[] atOrigin;

  private CouplingStiffness(List<BallSprings> balls) {
    this.balls = balls;
    this.atOrigin = new double[36];
    for (BallSprings ball : balls) {
      ball.addTo(atOrigin);
    }
  }

  /**
   * Takes the springs of a state.
   *
   * @param state the state; contact stiffness depends on its forces
   * @param bound whether contacts slide or stick
   * @return the stiffness
   */
  public static CouplingStiffness of(Equilibrium state, Bound bound) {
    CouplingModel model = state.model();
    List<BallSprings> balls = new ArrayList<>();
    List<Support> supports = model.design().supports();
    boolean onHolder = model.design().ballsOn() == Half.HOLDER;
    for (int b = 0; b < supports.size(); b++) {
      BallMounting mounting = supports.get(b).mounting();
      Vec3 axis = onHolder ? state.holderInBase().rotate(mounting.axis()) : mounting.axis();
      BallSprings springs = null;
      for (Equilibrium.Contact c : state.contacts()) {
        ContactLines.Line line = c.line();
        if (line.ballIndex() == b) {
          if (springs == null) {
            springs =
                new BallSprings(
                    line.support(),
                    line.ballCentre(),
                    mounting.compliance().toMatrix(axis, line.ballCentre()));
          }
          springs.add(line, spring(c, bound));
        }
      }
      if (springs != null) {
        balls.add(springs);
      }
    }
    return new CouplingStiffness(balls);
  }

  private static double[] spring(Equilibrium.Contact c, Bound bound) {
    double[] k = new double[9];
    if (c.lifted()) {
      return k;
    }
    Vec3 n = c.line().normal();
    Matrix3.addOuter(k, c.normalStiffness(), n);
    if (bound == Bound.STICKING) {
      Vec3 a = c.line().longAxis().rejectedFrom(n).unit();
      Matrix3.addOuter(k, c.tangentialStiffnessLong(), a);
      Matrix3.addOuter(k, c.tangentialStiffnessShort(), n.cross(a));
    }
    return k;
  }

  /**
   * Returns the stiffness matrix.
   *
   * @param point reference point, m
   * @return 6x6, base axes
   */
  public Matrix6 at(Vec3 point) {
    return Matrix6.of(atOrigin, Vec3.ZERO).stiffnessAt(point);
  }

  /**
   * Finds the small motion that an additional load causes.
   *
   * @param load additional load
   * @return twist about the origin
   * @throws ArithmeticException if the springs do not hold the holder
   */
  public Twist motionUnder(Wrench load) {
    return motionUnder(load, factored());
  }

  private Lu6 factored() {
    Lu6 lu = new Lu6();
    if (!lu.factor(atOrigin)) {
      throw new ArithmeticException("the contacts do not hold the holder against every motion");
    }
    return lu;
  }

  private static Twist motionUnder(Wrench load, Lu6 lu) {
    Wrench w = load.movedTo(Vec3.ZERO);
    double[] x = {
      w.force().x(), w.force().y(), w.force().z(), w.moment().x(), w.moment().y(), w.moment().z()
    };
    lu.solve(x, x);
    return new Twist(new Vec3(x[0], x[1], x[2]), new Vec3(x[3], x[4], x[5]), Vec3.ZERO);
  }

  /**
   * Finds how stiff a point is against a force on it.
   *
   * @param point the point, m
   * @param direction unit vector of the force
   * @return force over displacement along it, N/m, the holder free to tilt
   */
  public double stiffnessAlong(Vec3 point, Vec3 direction) {
    return 1 / motionUnder(Wrench.ofForce(direction, point)).displacementOf(point).dot(direction);
  }

  /**
   * Finds the compliance of a point against forces on it.
   *
   * @param point the point, m
   * @return 3x3 row by row, base axes, m/N, the holder free to tilt
   */
  public double[] pointCompliance(Vec3 point) {
    Vec3[] unit = {Vec3.X, Vec3.Y, Vec3.Z};
    Lu6 lu = factored();
    double[] c = new double[9];
    for (int j = 0; j < 3; j++) {
      Vec3 u = motionUnder(Wrench.ofForce(unit[j], point), lu).displacementOf(point);
      for (int i = 0; i < 3; i++) {
        c[3 * i + j] = u.component(i);
      }
    }
    return c;
  }

  /**
   * Finds which springs give way under a force at a point.
   *
   * @param point the point, m
   * @param direction unit vector of the force
   * @return shares of the displacement along the force; they add to 1
   */
  public List<Share> shares(Vec3 point, Vec3 direction) {
    Twist x = motionUnder(Wrench.ofForce(direction, point));
    double total = x.displacementOf(point).dot(direction);
    List<Share> shares = new ArrayList<>();
    double[] motion = {
      x.translation().x(), x.translation().y(), x.translation().z(),
      x.rotation().x(), x.rotation().y(), x.rotation().z()
    };
    for (BallSprings ball : balls) {
      ball.addShares(motion, total, shares);
    }
    return shares;
  }
}
