package reseat.repeatability;

import java.util.List;
import java.util.Optional;
import reseat.contact.Dent;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.Equilibrium;
import reseat.numerics.Lu6;
import reseat.seat.CylinderFlank;
import reseat.seat.Flank;
import reseat.seat.PlaneFlank;
import reseat.space.Vec3;

/**
 * The six contacts of a coupling at rest, laid out for first-order questions about friction.
 *
 * <p>Base axes, moments about the base's origin, forces as they act on the holder. A contact moves
 * by {@code J x} with the holder and by {@code S f} as the ball mountings give way under all
 * contact forces f of its ball. Its patch has two axes, the long one and the short one; tangential
 * vectors are told along them.
 */
final class SeatedContacts {

  static final int N = 6;

  /** Values of a tangential vector at every contact: along the long and the short axis. */
  static final int TANGENTS = 2 * N;

  /** Push of each contact on the holder, unit vectors, 3 values each. */
  final double[] push = new double[3 * N];

  /** Axes of the patches, unit vectors: contact by contact the long and the short one. */
  final double[] axis = new double[3 * TANGENTS];

  /** Ratio of tangential to normal stiffness along those axes, sticking. */
  final double[] ratio = new double[TANGENTS];

  /** Normal forces without friction, N. */
  final double[] frictionless = new double[N];

  private final Equilibrium state;
  private final double[] point = new double[3 * N];
  private final boolean rigid;
  private final double[] compliance;
  private final double[] given = new double[3 * N];

  /** Where the force components of the contacts of the same ball begin and end. */
  private final int[] firstOfBall = new int[N];

  private final int[] endOfBall = new int[N];
  private final Lu6 normals = new Lu6();
  private final double[] columns = new double[N * N];

  /**
   * Lays out a state.
   *
   * @param state the coupling under preload and weight, six contacts
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  SeatedContacts(Equilibrium state) {
    this.state = state;
    for (int i = 0; i < N; i++) {
      Equilibrium.Contact c = state.contacts().get(i);
      Vec3 n = c.line().push();
      Vec3 a = c.line().longAxis().rejectedFrom(n).unit();
      put(n, push, 3 * i);
      put(c.line().point(), point, 3 * i);
      put(a, axis, 6 * i);
      put(n.cross(a), axis, 6 * i + 3);
      ratio[2 * i] = c.ratioLong();
      ratio[2 * i + 1] = c.ratioShort();
      frictionless[i] = c.force();
      wrench(i, push, 3 * i, 1, columns, i);
    }
    if (!normals.factor(columns)) {
      throw new ArithmeticException("the contacts do not constrain the holder");
    }
    for (int i = 0; i < N; i++) {
      int ball = state.contacts().get(i).line().ballIndex();
      for (int j = N - 1; j >= 0; j--) {
        firstOfBall[i] =
            state.contacts().get(j).line().ballIndex() == ball ? 3 * j : firstOfBall[i];
      }
      endOfBall[i] = firstOfBall[i] + 3 * support(i).seat().contacts();
    }
    rigid = state.model().design().supports().stream().allMatch(s -> s.mounting().isRigid());
    compliance = rigid ? new double[0] : complianceOfMountings();
  }

  static void put(Vec3 v, double[] out, int to) {
    out[to] = v.x();
    out[to + 1] = v.y();
    out[to + 2] = v.z();
  }

  CouplingDesign design() {
    return state.model().design();
  }

  /** Whether no ball gives way on its mounting. */
  boolean rigid() {
    return rigid;
  }

  /** Point of contact, component k, base axes, m. */
  double point(int contact, int k) {
    return point[3 * contact + k];
  }

  /** Radius of the pin that a contact lies on, m; zero on a plane or in a hollow. */
  double pinRadius(int contact) {
    return state.model().flanks().get(contact).accept(PIN_RADIUS);
  }

  private static final Flank.Visitor<Double> PIN_RADIUS =
      new Flank.Visitor<>() {
        @Override
        public Double plane(PlaneFlank flank) {
          return 0.0;
        }

        @Override
        public Double cylinder(CylinderFlank flank) {
          return flank.hollow() ? 0 : flank.radius();
        }
      };

  /** Centre of the ball of a contact, base axes, m. */
  Vec3 ballCentre(int contact) {
    return state.contacts().get(contact).line().ballCentre();
  }

  /** Support that a contact belongs to. */
  Support support(int contact) {
    return design().supports().get(state.contacts().get(contact).line().ballIndex());
  }

  /** Normal stiffness of a contact at a force, N/m. */
  double stiffness(int contact, double force) {
    return state.contacts().get(contact).normalStiffness(force);
  }

  /** d ln(stiffness)/d ln(force): 1/3 at a point, less on a ring. */
  double stiffening(int contact, double force) {
    Optional<Dent> dent = state.contacts().get(contact).dent();
    if (dent.isPresent()) {
      return 1 - 1 / dent.get().exponent();
    }
    if (!state.contacts().get(contact).line().ring()) {
      return 1.0 / 3;
    }
    double step = 1e-4;
    return (stiffness(contact, force * (1 + step)) / stiffness(contact, force) - 1) / step;
  }

  /** Adds to a column of a 6x6 matrix the wrench of a force at a contact, times a factor. */
  void wrench(int contact, double[] f, int from, double factor, double[] matrix, int column) {
    double fx = factor * f[from];
    double fy = factor * f[from + 1];
    double fz = factor * f[from + 2];
    int p = 3 * contact;
    matrix[column] += fx;
    matrix[N + column] += fy;
    matrix[2 * N + column] += fz;
    matrix[3 * N + column] += point[p + 1] * fz - point[p + 2] * fy;
    matrix[4 * N + column] += point[p + 2] * fx - point[p] * fz;
    matrix[5 * N + column] += point[p] * fy - point[p + 1] * fx;
  }

  /** Writes W, the wrenches of unit normal forces column by column. */
  void copyNormals(double[] out) {
    System.arraycopy(columns, 0, out, 0, N * N);
  }

  /**
   * Finds the motion of the holder and of the contacts that goes with approaches and contact
   * forces.
   *
   * @param approach approach of each contact, m
   * @param force contact forces on the holder, 3 values each, N: what the mountings give way under
   * @param motion twist of the holder about the origin; 6 values overwritten
   * @param slip tangential motion of the holder against the base at each contact, along the axes of
   *     the patch, m; 12 values overwritten
   */
  void move(double[] approach, double[] force, double[] motion, double[] slip) {
    for (int i = 0; i < N; i++) {
      motion[i] = -approach[i];
    }
    if (!rigid) {
      computeGiven(force);
      for (int i = 0; i < N; i++) {
        int p = 3 * i;
        motion[i] -= push[p] * given[p] + push[p + 1] * given[p + 1] + push[p + 2] * given[p + 2];
      }
    }
    normals.solveTransposed(motion, motion);
    slips(motion, slip);
    for (int i = 0; i < N && !rigid; i++) {
      double x = given[3 * i];
      double y = given[3 * i + 1];
      double z = given[3 * i + 2];
      for (int t = 2 * i; t < 2 * i + 2; t++) {
        slip[t] += axis[3 * t] * x + axis[3 * t + 1] * y + axis[3 * t + 2] * z;
      }
    }
  }

  /** Tangential motion of every contact with the holder, the mountings standing still. */
  void slips(double[] motion, double[] slip) {
    for (int i = 0; i < N; i++) {
      int p = 3 * i;
      double x = motion[0] + motion[4] * point[p + 2] - motion[5] * point[p + 1];
      double y = motion[1] + motion[5] * point[p] - motion[3] * point[p + 2];
      double z = motion[2] + motion[3] * point[p + 1] - motion[4] * point[p];
      for (int t = 2 * i; t < 2 * i + 2; t++) {
        slip[t] = axis[3 * t] * x + axis[3 * t + 1] * y + axis[3 * t + 2] * z;
      }
    }
  }

  /** S f; contacts of other balls do not count. */
  private void computeGiven(double[] force) {
    for (int row = 0; row < 3 * N; row++) {
      double sum = 0;
      for (int j = firstOfBall[row / 3]; j < endOfBall[row / 3]; j++) {
        sum += compliance[3 * N * row + j] * force[j];
      }
      given[row] = sum;
    }
  }

  /** S: how far each contact moves as the mountings give way under a force at each contact. */
  private double[] complianceOfMountings() {
    double[] s = new double[9 * N * N];
    List<Equilibrium.Contact> contacts = state.contacts();
    boolean onHolder = design().ballsOn() == Half.HOLDER;
    int last = -1;
    double[] c = new double[0];
    for (int j = 0; j < N; j++) {
      ContactLines.Line line = contacts.get(j).line();
      if (line.ballIndex() != last) {
        last = line.ballIndex();
        var mounting = support(j).mounting();
        Vec3 up = onHolder ? state.holderInBase().rotate(mounting.axis()) : mounting.axis();
        c = mounting.compliance().toMatrix(up, line.ballCentre()).toArray();
      }
      Vec3 arm = line.point().minus(line.ballCentre());
      for (int k = 0; k < 3; k++) {
        double[] load = new double[N];
        load[k] = 1;
        Vec3 unit = k == 0 ? Vec3.X : k == 1 ? Vec3.Y : Vec3.Z;
        put(arm.cross(unit), load, 3);
        addGiven(s, 3 * j + k, last, times(c, load));
      }
    }
    return s;
  }

  private void addGiven(double[] s, int column, int ball, double[] q) {
    Vec3 turn = new Vec3(q[3], q[4], q[5]);
    for (int i = 0; i < N; i++) {
      ContactLines.Line line = state.contacts().get(i).line();
      if (line.ballIndex() == ball) {
        Vec3 d = new Vec3(q[0], q[1], q[2]).plus(turn.cross(line.point().minus(line.ballCentre())));
        for (int k = 0; k < 3; k++) {
          s[3 * N * (3 * i + k) + column] = d.component(k);
        }
      }
    }
  }

  private static double[] times(double[] c, double[] load) {
    double[] q = new double[N];
    for (int a = 0; a < N; a++) {
      for (int b = 0; b < N; b++) {
        q[a] += c[N * a + b] * load[b];
      }
    }
    return q;
  }
}
