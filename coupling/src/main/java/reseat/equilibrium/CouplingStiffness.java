package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.Half;
import reseat.numerics.Lu6;
import reseat.space.Matrix6;
import reseat.space.Pose;
import reseat.space.Twist;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Stiffness of the coupling for small motions about a state, in one of two bounds.
 *
 * <p>Each contact is a spring along its normal; contacts that stick are springs across it too
 * (Mindlin). The ball mounting stands in series: it is shared by the contacts of its ball, so it
 * couples them. With contact springs k_c, displacement of contact c per twist J_c, and mounting
 * compliance C, the ball's own shift d is eliminated from the energy
 *
 * <pre>1/2 Σ (J_c x + d)ᵀ k_c (J_c x + d) + 1/2 dᵀ C⁻¹ d.</pre>
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
   * @param share share of the displacement along the force, 0 to 1
   */
  public record Share(String name, double share) {}

  /** The springs of one ball: its mounting and its contacts. */
  private static final class BallSprings {
    final String support;
    final double[] mounting;
    final List<String> names = new ArrayList<>();
    final List<Vec3> points = new ArrayList<>();
    final List<double[]> stiffness = new ArrayList<>();

    BallSprings(String support, double[] mounting) {
      this.support = support;
      this.mounting = mounting;
    }
  }

  private final List<BallSprings> balls;
  private final double[] atOrigin;

  private CouplingStiffness(List<BallSprings> balls) {
    this.balls = balls;
    this.atOrigin = new double[36];
    for (BallSprings ball : balls) {
      addBall(ball);
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
    double[] mountings = model.mountingCompliances();
    for (int b = 0; b < model.design().supports().size(); b++) {
      double[] mounting = new double[9];
      if (mountings.length > 0) {
        System.arraycopy(mountings, 9 * b, mounting, 0, 9);
        if (model.design().ballsOn() == Half.HOLDER) {
          mounting = turned(mounting, state.holderInBase());
        }
      }
      BallSprings springs = new BallSprings(model.design().supports().get(b).name(), mounting);
      for (Equilibrium.Contact c : state.contacts()) {
        if (c.line().ballIndex() == b) {
          springs.names.add(c.line().name());
          springs.points.add(c.line().point());
          springs.stiffness.add(spring(c, bound));
        }
      }
      balls.add(springs);
    }
    return new CouplingStiffness(balls);
  }

  private static double[] spring(Equilibrium.Contact c, Bound bound) {
    double[] k = new double[9];
    if (c.lifted()) {
      return k;
    }
    Vec3 n = c.line().normal();
    Small3.addOuter(k, c.normalStiffness(), n);
    if (bound == Bound.STICKING) {
      Vec3 a = c.line().longAxis().rejectedFrom(n).unit();
      Small3.addOuter(k, c.tangentialStiffnessLong(), a);
      Small3.addOuter(k, c.tangentialStiffnessShort(), n.cross(a));
    }
    return k;
  }

  private static double[] turned(double[] c, Pose pose) {
    double[] r = pose.rotationMatrix();
    return Small3.multiply(Small3.multiply(r, c), Small3.transposed(r));
  }

  private void addBall(BallSprings ball) {
    double[] sum = new double[9];
    double[][] kj = new double[3][6];
    for (int c = 0; c < ball.stiffness.size(); c++) {
      double[] k = ball.stiffness.get(c);
      double[][] j = jacobian(ball.points.get(c));
      for (int i = 0; i < 9; i++) {
        sum[i] += k[i];
      }
      for (int a = 0; a < 6; a++) {
        double[] kja = Small3.multiply(k, j[a]);
        for (int i = 0; i < 3; i++) {
          kj[i][a] += kja[i];
        }
        for (int b = 0; b < 6; b++) {
          atOrigin[6 * b + a] += Small3.dot(j[b], kja);
        }
      }
    }
    double[] relief = relief(ball.mounting, sum);
    for (int a = 0; a < 6; a++) {
      double[] g = {kj[0][a], kj[1][a], kj[2][a]};
      double[] d = Small3.multiply(relief, g);
      for (int b = 0; b < 6; b++) {
        atOrigin[6 * b + a] -= kj[0][b] * d[0] + kj[1][b] * d[1] + kj[2][b] * d[2];
      }
    }
  }

  /** (I + C S)^-1 C, which is (C^-1 + S)^-1 without needing C to be regular. */
  private static double[] relief(double[] c, double[] s) {
    double[] m = Small3.multiply(c, s);
    m[0] += 1;
    m[4] += 1;
    m[8] += 1;
    return Small3.multiply(Small3.inverse(m), c);
  }

  /** Displacement of a point for unit motions x, y, z, rx, ry, rz about the origin. */
  private static double[][] jacobian(Vec3 p) {
    return new double[][] {
      {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0, -p.z(), p.y()}, {p.z(), 0, -p.x()}, {-p.y(), p.x(), 0}
    };
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
    Lu6 lu = new Lu6();
    if (!lu.factor(atOrigin)) {
      throw new ArithmeticException("the contacts do not hold the holder against every motion");
    }
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
    double[] c = new double[9];
    for (int j = 0; j < 3; j++) {
      Vec3 u = motionUnder(Wrench.ofForce(unit[j], point)).displacementOf(point);
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
    for (BallSprings ball : balls) {
      double[] sum = new double[9];
      double[] g = new double[3];
      for (int c = 0; c < ball.stiffness.size(); c++) {
        double[] k = ball.stiffness.get(c);
        double[] f = Small3.multiply(k, array(x.displacementOf(ball.points.get(c))));
        for (int i = 0; i < 9; i++) {
          sum[i] += k[i];
        }
        for (int i = 0; i < 3; i++) {
          g[i] += f[i];
        }
      }
      double[] d = Small3.multiply(relief(ball.mounting, sum), g);
      for (int c = 0; c < ball.stiffness.size(); c++) {
        double[] e = array(x.displacementOf(ball.points.get(c)));
        for (int i = 0; i < 3; i++) {
          e[i] -= d[i];
        }
        double energy = Small3.dot(e, Small3.multiply(ball.stiffness.get(c), e));
        shares.add(new Share(ball.names.get(c), energy / total));
      }
      double[] q = Small3.multiply(sum, d);
      for (int i = 0; i < 3; i++) {
        q[i] = g[i] - q[i];
      }
      double mountingEnergy = Small3.dot(q, Small3.multiply(ball.mounting, q));
      if (mountingEnergy > 0) {
        shares.add(new Share(ball.support + " mounting", mountingEnergy / total));
      }
    }
    return shares;
  }

  private static double[] array(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }
}
