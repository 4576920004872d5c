package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.numerics.Lu6;
import reseat.space.Matrix6;
import reseat.space.Vec3;

/**
 * The springs of one ball: those of its contacts, and in series with all of them its mounting.
 *
 * <p>The ball shifts by d and turns by r against its half, so the contact at p moves by {@code e =
 * J x + G (d, r)} with {@code G (d, r) = d + r x (p - centre)}. The shift that makes the energy
 *
 * <pre>1/2 Σ eᵀ k e + 1/2 (d, r)ᵀ C⁻¹ (d, r)</pre>
 *
 * <p>least is {@code -(I + C S)⁻¹ C g} with {@code S = Σ Gᵀ k G} and {@code g = Σ Gᵀ k J x}; C need
 * not be regular. All arrays run x, y, z, rx, ry, rz; base axes, turns about the ball's centre.
 */
final class BallSprings {

  /**
   * The spring of one contact, k; its arm runs from the ball's centre to the contact. J and G take
   * motions of holder and ball to displacements of the contact, 3 to each of 6 unit motions; kJ and
   * kG take them to forces.
   */
  private static final class Spring {
    final ContactLines.Line line;
    final Vec3 arm;
    final double[] stiffness;
    final double[][] ofHolder = new double[6][];
    final double[][] ofBall = new double[6][];
    final double[][] pullOfHolder = new double[6][];
    final double[][] pullOfBall = new double[6][];

    Spring(ContactLines.Line line, Vec3 arm, double[] stiffness) {
      this.line = line;
      this.arm = arm;
      this.stiffness = stiffness;
      for (int a = 0; a < 6; a++) {
        ofHolder[a] = unitMoved(a, line.point());
        ofBall[a] = unitMoved(a, arm);
        pullOfHolder[a] = Matrix3.multiply(stiffness, ofHolder[a]);
        pullOfBall[a] = Matrix3.multiply(stiffness, ofBall[a]);
      }
    }
  }

  private final String support;
  private final Vec3 centre;
  private final double[] mounting;
  private final List<Spring> springs = new ArrayList<>();

  /**
   * A ball without contacts.
   *
   * @param support name of its support
   * @param centre its centre, base axes, m
   * @param mounting compliance of its mounting at the centre, base axes
   */
  BallSprings(String support, Vec3 centre, Matrix6 mounting) {
    this.support = support;
    this.centre = centre;
    this.mounting = mounting.toArray();
  }

  /** Adds a contact with its stiffness, 9 values row by row, base axes, N/m. */
  void add(ContactLines.Line line, double[] stiffness) {
    springs.add(new Spring(line, line.point().minus(centre), stiffness));
  }

  /** Adds the stiffness of this ball about the origin to 36 values, row by row. */
  void addTo(double[] atOrigin) {
    double[][] coupling = new double[6][6];
    for (int a = 0; a < 6; a++) {
      for (Spring s : springs) {
        double[] f = s.pullOfHolder[a];
        for (int b = 0; b < 6; b++) {
          coupling[a][b] += Matrix3.dot(s.ofBall[b], f);
          atOrigin[6 * b + a] += Matrix3.dot(s.ofHolder[b], f);
        }
      }
    }
    Lu6 relief = relief();
    for (int a = 0; a < 6; a++) {
      double[] shift = shift(relief, coupling[a]);
      for (int b = 0; b < 6; b++) {
        atOrigin[6 * b + a] += dot(coupling[b], shift);
      }
    }
  }

  /** Adds the parts of the displacement {@code total} that sit in each spring under a motion. */
  void addShares(double[] motion, double total, List<CouplingStiffness.Share> shares) {
    double[] g = pull(motion);
    double[] shift = shift(relief(), g);
    double[] load = g;
    for (Spring s : springs) {
      double[] e = moved(motion, s.line.point());
      double[] own = moved(shift, s.arm);
      for (int i = 0; i < 3; i++) {
        e[i] += own[i];
      }
      double energy = Matrix3.dot(e, Matrix3.multiply(s.stiffness, e));
      shares.add(new CouplingStiffness.Share(s.line.name(), false, energy / total));
      double[] f = Matrix3.multiply(s.stiffness, own);
      for (int a = 0; a < 6; a++) {
        load[a] += Matrix3.dot(s.ofBall[a], f);
      }
    }
    double mountingEnergy = dot(load, times(mounting, load));
    if (mountingEnergy > 0) {
      shares.add(new CouplingStiffness.Share(support + " mounting", true, mountingEnergy / total));
    }
  }

  /** Load of the contacts on the ball, at its centre, for a motion of the holder: Σ Gᵀ k J x. */
  private double[] pull(double[] motion) {
    double[] g = new double[6];
    for (Spring s : springs) {
      double[] f = Matrix3.multiply(s.stiffness, moved(motion, s.line.point()));
      for (int a = 0; a < 6; a++) {
        g[a] += Matrix3.dot(s.ofBall[a], f);
      }
    }
    return g;
  }

  private Lu6 relief() {
    double[] sum = new double[36];
    for (Spring s : springs) {
      for (int a = 0; a < 6; a++) {
        double[] f = s.pullOfBall[a];
        for (int b = 0; b < 6; b++) {
          sum[6 * b + a] += Matrix3.dot(s.ofBall[b], f);
        }
      }
    }
    double[] m = new double[36];
    for (int i = 0; i < 6; i++) {
      m[7 * i] = 1;
      for (int j = 0; j < 6; j++) {
        for (int k = 0; k < 6; k++) {
          m[6 * i + j] += mounting[6 * i + k] * sum[6 * k + j];
        }
      }
    }
    Lu6 lu = new Lu6();
    // I + C S of two positive semidefinite matrices has no eigenvalue below 1
    if (!lu.factor(m)) {
      throw new ArithmeticException("compliance of the mounting of " + support + " is not finite");
    }
    return lu;
  }

  private double[] shift(Lu6 relief, double[] load) {
    double[] d = times(mounting, load);
    relief.solve(d, d);
    for (int i = 0; i < 6; i++) {
      d[i] = -d[i];
    }
    return d;
  }

  /** Displacement at an arm from the reference point of a motion. */
  private static double[] moved(double[] motion, Vec3 arm) {
    return new double[] {
      motion[0] + motion[4] * arm.z() - motion[5] * arm.y(),
      motion[1] + motion[5] * arm.x() - motion[3] * arm.z(),
      motion[2] + motion[3] * arm.y() - motion[4] * arm.x()
    };
  }

  private static double[] unitMoved(int motion, Vec3 arm) {
    double[] x = new double[6];
    x[motion] = 1;
    return moved(x, arm);
  }

  private static double[] times(double[] m, double[] x) {
    double[] out = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        out[i] += m[6 * i + j] * x[j];
      }
    }
    return out;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
