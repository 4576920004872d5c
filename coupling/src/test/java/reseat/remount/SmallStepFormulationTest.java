package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/**
 * The ramp of a mounting by another road: rates instead of Newton's method.
 *
 * <p>The second formulation has no residual to bring down. It divides the ramp into very many small
 * steps, in each solves the linear rate problem with every contact either sticking or sliding, and
 * adds up; it shares no code with the simulation but the elastic laws.
 */
class SmallStepFormulationTest {

  private static final int STEPS = 30_000;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void agreesOnRandomLayouts(long seed) {
    CouplingDesign d = layout(RandomStream.of(77, seed));
    double mu = d.friction().nominal();
    FrictionEquilibrium m = Mounted.prepared(d);
    Vec3 pull = d.preload().force().unit();
    double[] closing = new double[6];
    closing[(int) (seed % 6)] = 1;
    double first = 20;
    double last = 300;
    assertThat(m.seat(closing, load(pull, first)))
        .as("seed %d", seed)
        .isEqualTo(FrictionEquilibrium.Outcome.HELD);
    Vec3[] friction = new Vec3[6];
    double[] normal = new double[6];
    for (int i = 0; i < 6; i++) {
      double[] held = m.state.friction.held;
      friction[i] = new Vec3(held[3 * i], held[3 * i + 1], held[3 * i + 2]);
      normal[i] = m.force(i);
    }
    double[] start = new double[3];
    m.state.displacement(Couplings.TIP.x(), Couplings.TIP.y(), Couplings.TIP.z(), start);
    Vec3 byRates = ramp(d, pull, first, last, mu, normal, friction);

    int steps = 1500;
    double force = first;
    for (int s = 0; s < steps; s++) {
      force *= Math.pow(last / first, 1.0 / steps);
      assertThat(m.follow(load(pull, force), null)).isEqualTo(FrictionEquilibrium.Outcome.HELD);
    }
    double[] end = new double[3];
    m.state.displacement(Couplings.TIP.x(), Couplings.TIP.y(), Couplings.TIP.z(), end);
    for (int k = 0; k < 3; k++) {
      assertThat(end[k] - start[k])
          .as("seed %d", seed)
          .isCloseTo(byRates.component(k), within(1e-9));
    }
    assertThat(byRates.norm()).isGreaterThan(1e-6);
  }

  private static double[] load(Vec3 pull, double force) {
    return new double[] {force * pull.x(), force * pull.y(), force * pull.z(), 0, 0, 0};
  }

  private static CouplingDesign layout(RandomStream luck) {
    List<Support> supports = new ArrayList<>();
    double ball = 0.003 + 0.005 * luck.uniform();
    for (int i = 0; i < 3; i++) {
      double azimuth = 2 * Math.PI * i / 3 + 0.25 * (luck.uniform() - 0.5);
      Vec3 c = Vec3.atAzimuth(azimuth).times(0.03 + 0.01 * luck.uniform());
      double direction = azimuth + 0.4 * (luck.uniform() - 0.5);
      double angle = Math.toRadians(40 + 15 * luck.uniform());
      supports.add(
          Couplings.support(
              "ball " + i,
              c,
              ball,
              VeeGroove.forBall(
                  SeatFrame.level(c, direction), ball, angle, GrooveExtent.unlimited())));
    }
    return Couplings.post(0.06 + 0.08 * luck.uniform(), 300).supports(supports).build();
  }

  private static Vec3 ramp(
      CouplingDesign d,
      Vec3 pull,
      double first,
      double last,
      double mu,
      double[] normal,
      Vec3[] friction) {
    CouplingModel model = CouplingModel.of(d);
    List<ContactLines.Line> lines = ContactLines.nominal(d).lines();
    boolean[] slides = new boolean[6];
    for (int i = 0; i < 6; i++) {
      slides[i] = friction[i].norm() > 0;
    }
    SimpleMatrix total = new SimpleMatrix(6, 1);
    double force = first;
    double ratio = Math.pow(last / first, 1.0 / STEPS);
    for (int s = 0; s < STEPS; s++) {
      double more = force * (ratio - 1);
      force *= ratio;
      SimpleMatrix x = null;
      for (int attempt = 0; attempt < 20; attempt++) {
        x = rates(model, lines, mu, normal, friction, slides).solve(loadStep(pull, more));
        if (!changed(model, lines, mu, normal, friction, slides, x)) {
          break;
        }
      }
      for (int i = 0; i < 6; i++) {
        SimpleMatrix f = contactRate(model, lines.get(i), i, mu, normal[i], friction[i], slides[i]);
        SimpleMatrix df = f.mult(jacobian(lines.get(i).point())).mult(x).negative();
        Vec3 change = new Vec3(df.get(0), df.get(1), df.get(2));
        Vec3 n = lines.get(i).normal();
        double dn = change.dot(n);
        normal[i] += dn;
        Vec3 t = friction[i].plus(change.minus(n.times(dn))).rejectedFrom(n);
        double limit = mu * normal[i];
        friction[i] = slides[i] || t.norm() > limit ? t.unit().times(limit) : t;
      }
      total = total.plus(x);
    }
    SimpleMatrix tip = jacobian(Couplings.TIP).mult(total);
    return new Vec3(tip.get(0), tip.get(1), tip.get(2));
  }

  private static SimpleMatrix loadStep(Vec3 pull, double more) {
    return new SimpleMatrix(
        6, 1, true, new double[] {more * pull.x(), more * pull.y(), more * pull.z(), 0, 0, 0});
  }

  private static SimpleMatrix rates(
      CouplingModel model,
      List<ContactLines.Line> lines,
      double mu,
      double[] normal,
      Vec3[] friction,
      boolean[] slides) {
    SimpleMatrix k = new SimpleMatrix(6, 6);
    for (int i = 0; i < 6; i++) {
      SimpleMatrix j = jacobian(lines.get(i).point());
      SimpleMatrix f = contactRate(model, lines.get(i), i, mu, normal[i], friction[i], slides[i]);
      k = k.plus(j.transpose().mult(f).mult(j));
    }
    return k;
  }

  /** Minus the rate of the contact's force over the displacement of its point. */
  private static SimpleMatrix contactRate(
      CouplingModel model,
      ContactLines.Line line,
      int i,
      double mu,
      double normal,
      Vec3 friction,
      boolean slides) {
    double kn = model.contacts().get(i).normalStiffness(normal);
    double kt = kn * model.tangentialRatioLong(i);
    SimpleMatrix n = column(line.normal());
    SimpleMatrix across = SimpleMatrix.identity(3).minus(n.mult(n.transpose()));
    SimpleMatrix k = n.mult(n.transpose()).scale(kn);
    if (!slides) {
      return k.plus(across.scale(kt));
    }
    SimpleMatrix e = column(friction.unit());
    SimpleMatrix aside = across.minus(e.mult(e.transpose()));
    return k.plus(e.mult(n.transpose()).scale(mu * kn)).plus(aside.scale(kt));
  }

  /** Switches contacts that stick beyond the limit or slide backward; true if any did. */
  private static boolean changed(
      CouplingModel model,
      List<ContactLines.Line> lines,
      double mu,
      double[] normal,
      Vec3[] friction,
      boolean[] slides,
      SimpleMatrix x) {
    boolean any = false;
    for (int i = 0; i < 6; i++) {
      SimpleMatrix u = jacobian(lines.get(i).point()).mult(x);
      Vec3 d = new Vec3(u.get(0), u.get(1), u.get(2));
      Vec3 n = lines.get(i).normal();
      double kn = model.contacts().get(i).normalStiffness(normal[i]);
      double kt = kn * model.tangentialRatioLong(i);
      double limitRate = -mu * kn * d.dot(n);
      Vec3 e = friction[i].norm() > 0 ? friction[i].unit() : d.rejectedFrom(n).unit().negated();
      double along = -kt * d.rejectedFrom(n).dot(e);
      boolean atLimit = friction[i].norm() >= mu * normal[i] * (1 - 1e-9);
      boolean should = atLimit && along > limitRate;
      if (should != slides[i]) {
        slides[i] = should;
        any = true;
      }
    }
    return any;
  }

  private static SimpleMatrix column(Vec3 v) {
    return new SimpleMatrix(3, 1, true, new double[] {v.x(), v.y(), v.z()});
  }

  private static SimpleMatrix jacobian(Vec3 p) {
    return new SimpleMatrix(
        3,
        6,
        true,
        new double[] {
          1, 0, 0, 0, p.z(), -p.y(), 0, 1, 0, -p.z(), 0, p.x(), 0, 0, 1, p.y(), -p.x(), 0
        });
  }
}
