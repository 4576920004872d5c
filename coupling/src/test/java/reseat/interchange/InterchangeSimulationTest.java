package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NoEquilibriumException;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.numerics.OneAfterAnother;
import reseat.numerics.RandomStream;
import reseat.numerics.VectorScatter;
import reseat.seat.GrooveExtent;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** Sampling bounds are at the stated number of standard errors, seeds fixed. */
class InterchangeSimulationTest {

  private static final long SEED = 271_828L;

  private static InterchangeResult run(CouplingDesign d, InterchangePlan plan) {
    try {
      return new InterchangeSimulation(ToleranceModel.of(d)).run(plan);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static CouplingDesign scaled(CouplingDesign d, double factor) {
    List<Tolerance> all = new ArrayList<>();
    for (Tolerance t : d.tolerances().entries()) {
      all.add(t.withLimit(factor * t.spread().limit()));
    }
    return d.toBuilder().tolerances(new Tolerances(all)).build();
  }

  @Test
  void theSameSeedGivesTheSameBitsOnAnyNumberOfThreads() {
    CouplingDesign d = TolerancedCouplings.toolPost();
    InterchangeResult one = run(d, new InterchangePlan(7, 3000, SEED, 1));
    for (int threads : new int[] {2, 8}) {
      InterchangeResult more = run(d, new InterchangePlan(7, 3000, SEED, threads));
      assertThat(more.own()).isEqualTo(one.own());
      assertThat(more.ownRotation()).isEqualTo(one.ownRotation());
      assertThat(more.post()).isEqualTo(one.post());
      assertThat(more.total()).isEqualTo(one.total());
      assertThat(more.linear()).isEqualTo(one.linear());
      assertThat(more.fits()).isEqualTo(one.fits());
    }
    assertThat(run(d, new InterchangePlan(7, 3000, SEED + 1, 2)).own()).isNotEqualTo(one.own());
  }

  @Test
  void batchesMadeApartAndSentAsBytesGiveTheSpreadOfOneRun() throws InterruptedException {
    CouplingDesign d = TolerancedCouplings.toolPost();
    InterchangePlan plan = new InterchangePlan(3, 3000, SEED, new OneAfterAnother());
    InterchangeResult whole = run(d, plan);
    assertThat(InterchangeSimulation.batches(plan)).isEqualTo(3);
    List<byte[]> sent = new ArrayList<>();
    for (long number = 2; number >= 0; number--) {
      double[] tally = new InterchangeSimulation(ToleranceModel.of(d)).tally(plan, number);
      ByteBuffer bytes = ByteBuffer.allocate(8 * tally.length);
      bytes.asDoubleBuffer().put(tally);
      sent.add(0, bytes.array());
    }
    InterchangeSimulation.Sum sum = new InterchangeSimulation(ToleranceModel.of(d)).new Sum(plan);
    for (byte[] bytes : sent) {
      double[] tally = new double[bytes.length / 8];
      ByteBuffer.wrap(bytes).asDoubleBuffer().get(tally);
      sum.add(tally);
    }
    assertThat(sum.holders()).isEqualTo(9000);
    assertThat(sum.result()).isEqualTo(whole);
  }

  @Test
  void aHolderIsWhatThePlainRoadMakesOfTheSameLuck() throws InterruptedException {
    CouplingDesign d = TolerancedCouplings.zoo().get("trihedral, vee and flat");
    ToleranceModel model = ToleranceModel.of(d);
    InterchangeResult two =
        new InterchangeSimulation(model).run(InterchangePlan.onePost(2, SEED, 1));
    Vec3 mean = Vec3.ZERO;
    for (int h = 0; h < 2; h++) {
      RandomStream post = RandomStream.of(SEED, -1);
      RandomStream holder = RandomStream.of(SEED, h);
      double[] deviations =
          model.contributors().stream()
              .mapToDouble(c -> c.spread().draw(c.owner() == Owner.POST ? post : holder))
              .toArray();
      CouplingDesign made = model.made(deviations);
      Vec3 there = CouplingModel.of(made).standing().holderInBase().apply(made.toolPoint());
      Vec3 drawn = CouplingModel.of(d).standing().holderInBase().apply(d.toolPoint());
      mean = mean.plus(d.axes().of(there.minus(drawn)).times(0.5));
    }
    assertThat(mean.distanceTo(two.total().mean())).isLessThan(1e-13);
  }

  @Test
  void everyScatterThatIsToldHasABandOfNearlyTwoDeviations() {
    // 95 % of a normal variable lie within 1.95996 standard deviations (tables), of a uniform one
    // within 0.95 sqrt(3) = 1.645, of sums of such between
    InterchangeResult r =
        run(TolerancedCouplings.toolPost(), new InterchangePlan(4000, 5, SEED, 2));
    for (VectorScatter v :
        List.of(r.own(), r.ownInCouplingAxes(), r.ownRotation(), r.post(), r.total())) {
      for (int k = 0; k < 3; k++) {
        assertThat(v.deviation().component(k)).isPositive();
        assertThat(v.band().component(k) / v.deviation().component(k))
            .as("%s, axis %d", v, k)
            .isBetween(1.62, 2.02);
      }
    }
  }

  @Test
  void smallTolerancesSpreadAsTheLinearStackSays() {
    for (Map.Entry<String, CouplingDesign> e : TolerancedCouplings.zoo().entrySet()) {
      InterchangeResult r =
          run(scaled(e.getValue(), 0.05), InterchangePlan.onePost(20_000, SEED, 2));
      assertThat(r.misfits()).as(e.getKey()).isZero();
      assertThat(r.linear().differs()).as("%s: %s", e.getKey(), r.linear()).isFalse();
      // what linear theory leaves out of one holder falls with the square of the tolerances
      assertThat(r.linear().beyondLinear().deviation().norm())
          .as(e.getKey())
          .isLessThan(1e-2 * r.own().deviation().norm());
    }
  }

  @Test
  void whatTheLinearStackLeavesOutIsTold() {
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .tolerances(
                Tolerances.of(
                    Tolerance.ofEach(
                        ToleranceKind.FLANK_ANGLE, Math.toRadians(4), DistributionShape.UNIFORM)))
            .build();
    // seats of balls on the base are the holder's own: turn the layout over for that
    CouplingDesign over = TolerancedCouplings.turnedOver(d);
    InterchangeResult r = run(over, InterchangePlan.onePost(20_000, SEED, 2));
    assertThat(r.linear().differs()).isTrue();
    assertThat(r.linear().differs(2)).isTrue();
  }

  @Test
  void errorsOfThePostAreNotErrorsBetweenHolders() {
    Tolerance seats = Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 10e-6, DistributionShape.UNIFORM);
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .preloads(List.of(TolerancedCouplings.preload()))
            .toolPoint(new Vec3(0.047, 0.004, 0.0152))
            .tolerances(Tolerances.of(seats))
            .build();
    InterchangeResult r = run(d, new InterchangePlan(4000, 2, SEED, 2));
    assertThat(r.own().deviation().norm()).isZero();
    assertThat(r.post().count()).isEqualTo(4000);
    LinearStack.Sum linear =
        new InterchangeSimulation(ToleranceModel.of(d)).stack().sum(LinearStack.EVERYTHING);
    for (int k = 0; k < 3; k++) {
      double sigma = linear.deviation().component(k);
      // four standard errors of a standard deviation of 4000 values
      assertThat(r.post().deviation().component(k))
          .isCloseTo(sigma, within(4 * sigma / Math.sqrt(2 * 4000)));
    }
    assertThat(r.total().deviation().distanceTo(r.post().deviation()))
        .isLessThan(1e-3 * r.post().deviation().norm());
  }

  @Test
  void postAndHolderAddUpToTheWhole() {
    InterchangeResult r =
        run(TolerancedCouplings.toolPost(), new InterchangePlan(5000, 4, SEED, 2));
    for (int k = 0; k < 3; k++) {
      double parts =
          Math.hypot(r.post().deviation().component(k), r.own().deviation().component(k));
      // five standard errors: posts are the fewer, 5000 of them
      assertThat(r.total().deviation().component(k))
          .isCloseTo(parts, within(5 * parts / Math.sqrt(2 * 5000)));
    }
  }

  @Test
  void aCouplingWithoutTolerancesHasNoSpread() {
    InterchangeResult r =
        run(
            TolerancedCouplings.threeVees()
                .preloads(List.of(TolerancedCouplings.preload()))
                .build(),
            InterchangePlan.onePost(10, SEED, 1));
    assertThat(r.own().range()).isEqualTo(Vec3.ZERO);
    assertThat(r.total().mean().norm()).isLessThan(1e-18);
    assertThat(r.linear().differs()).isFalse();
    assertThat(r.fits()).containsExactly(Map.entry(Fit.FITS, 10L));
  }

  private static CouplingDesign veesWith(GrooveExtent extent, Tolerance... tolerances) {
    CouplingDesign d = TolerancedCouplings.threeVees().build();
    List<Support> supports = new ArrayList<>();
    for (Support s : d.supports()) {
      VeeGroove v = (VeeGroove) s.seat();
      supports.add(s.withSeat(new VeeGroove(v.frame(), v.leftAngle(), v.rightAngle(), extent)));
    }
    return d.toBuilder().supports(supports).tolerances(Tolerances.of(tolerances)).build();
  }

  @Test
  void ballsThatBottomAreCountedAndNotAveraged() {
    // ball of radius R on 45 degrees: its underside stands R (sqrt 2 - 1) over the apex, and the
    // floor of the relief 0.5 um lower; a ball larger by d in diameter clears 0.2071 d more
    double under = TolerancedCouplings.BALL * (Math.sqrt(2) - 1);
    GrooveExtent extent =
        new GrooveExtent(Double.POSITIVE_INFINITY, 0.02, 0.0053, 0.00265 - under + 0.5e-6);
    CouplingDesign d =
        veesWith(
            extent,
            Tolerance.shared(ToleranceKind.BALL_DIAMETER, 10e-6, DistributionShape.UNIFORM));
    InterchangeResult r = run(d, InterchangePlan.onePost(20_000, SEED, 2));
    double threshold = 0.5e-6 / ((Math.sqrt(2) - 1) / 2);
    double share = (10e-6 - threshold) / 20e-6;
    double bound = 4 * Math.sqrt(20_000 * share * (1 - share));
    assertThat((double) r.count(Fit.BALL_BOTTOMS)).isCloseTo(20_000 * share, within(bound));
    assertThat(r.misfits()).isEqualTo(r.count(Fit.BALL_BOTTOMS));
    assertThat(r.own().count() + r.misfits()).isEqualTo(20_000);
  }

  @Test
  void contactsThatRunOverTheEdgeAreCounted() {
    // contact points lie R sin 45 from the middle: a mouth 1 um wider than that is passed by balls
    // that are larger by more than its slack
    double mouth = 2 * TolerancedCouplings.BALL * Math.sin(TolerancedCouplings.FORTY_FIVE);
    CouplingDesign d =
        veesWith(
            new GrooveExtent(mouth + 2e-6, 0.02, 0, 0),
            Tolerance.ofEach(ToleranceKind.BALL_DIAMETER, 10e-6, DistributionShape.UNIFORM));
    InterchangeResult r = run(d, InterchangePlan.onePost(5_000, SEED, 2));
    assertThat(r.count(Fit.OFF_FLANK)).isGreaterThan(100);
    assertThat(r.count(Fit.FITS)).isGreaterThan(100);
    assertThat(r.count(Fit.FITS) + r.count(Fit.OFF_FLANK)).isEqualTo(5_000);
  }

  @Test
  void holdersThatLiftOffAreCounted() {
    // the load line just inside the edge where a contact opens: errors of the holder decide
    Preload p =
        new Preload(
            "aside",
            600,
            new Vec3(0, 0, -1),
            new Vec3(0, -0.025 + 2e-7, 0),
            Distribution.NONE,
            Distribution.NONE,
            Distribution.NONE,
            "springs");
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .preloads(List.of(p))
            .tolerances(
                Tolerances.of(
                    Tolerance.ofEach(ToleranceKind.BALL_ALONG, 20e-6, DistributionShape.UNIFORM)))
            .build();
    InterchangeResult r = run(d, InterchangePlan.onePost(4_000, SEED, 2));
    assertThat(r.count(Fit.LIFTS_OFF)).isBetween(100L, 3_900L);
    assertThat(r.own().count()).isEqualTo(r.count(Fit.FITS));
  }

  @Test
  void whatCannotBeSimulatedIsRefused() {
    assertThatThrownBy(() -> InterchangePlan.onePost(1, 0, 1)).hasMessageContaining("2 holders");
    assertThatThrownBy(() -> InterchangePlan.onePost(5, 0, 0)).hasMessageContaining("thread");
    assertThatThrownBy(() -> new InterchangePlan(0, 5, 0, 1)).hasMessageContaining("post");
    assertThatThrownBy(() -> new InterchangePlan(1L << 40, 1L << 40, 0, 1))
        .hasMessageContaining("2^63");
    CouplingDesign pair = TolerancedCouplings.zoo().get("pins");
    List<Support> two = pair.supports().subList(0, 2);
    CouplingDesign loose = pair.toBuilder().supports(two).build();
    assertThatThrownBy(() -> new InterchangeSimulation(ToleranceModel.of(loose)))
        .isInstanceOf(NoEquilibriumException.class);
    CouplingDesign steep =
        TolerancedCouplings.threeVees()
            .supports(List.of(veeAt(0.05, 90), veeAt(0.05, 210), veeAt(0.05, 330)))
            .tolerances(
                Tolerances.of(
                    Tolerance.ofEach(
                        ToleranceKind.FLANK_ANGLE, Math.toRadians(5), DistributionShape.UNIFORM)))
            .build();
    assertThatThrownBy(() -> new InterchangeSimulation(ToleranceModel.of(steep)))
        .hasMessageContaining("at its limit")
        .hasMessageContaining("flank angle");
  }

  private static Support veeAt(double radius, int azimuth) {
    Vec3 c = Vec3.atAzimuth(Math.toRadians(azimuth)).times(radius);
    return TolerancedCouplings.support(
        "v" + azimuth,
        c,
        0.005,
        VeeGroove.forBall(
            reseat.seat.SeatFrame.level(c, Math.toRadians(azimuth)),
            0.005,
            Math.toRadians(86),
            GrooveExtent.unlimited()));
  }
}
