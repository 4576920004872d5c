package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** When contacts open, against exact equilibria and against a search over directions. */
class LiftOffTest {

  private static final long SEED = 20260231;

  @Test
  void atTheFactorFoundTheFirstContactCarriesNothing() {
    for (int i = 0; i < 40; i++) {
      RandomStream draw = RandomStream.of(SEED, i);
      RandomCoupling c = RandomCoupling.draw(draw);
      CouplingModel model = CouplingModel.of(c.design());
      LiftOff lift = new LiftOff(model.equilibriumUnder(c.load()).lines(), c.load());
      Wrench extra =
          new Wrench(
              RandomDirection.of(draw).times(10), RandomDirection.of(draw).times(0.5), c.design().toolPoint());
      LiftOff.First first = lift.factor(extra);
      if (first.index() < 0) {
        continue;
      }
      Equilibrium there = model.equilibriumUnder(c.load().plus(extra.times(first.factor())));
      double largest = 0;
      for (Equilibrium.Contact contact : there.contacts()) {
        largest = Math.max(largest, contact.force());
      }
      // the lines of action turn by a few parts in ten thousand on the way
      for (int k = 0; k < 6; k++) {
        assertThat(there.contacts().get(k).force())
            .as("seed %d, layout %d, contact %d", SEED, i, k)
            .isGreaterThan(-5e-3 * largest);
      }
      assertThat(there.contacts().get(first.index()).force()).isCloseTo(0, within(5e-3 * largest));
      assertThat(first.contact()).isEqualTo(there.contacts().get(first.index()).line().name());
    }
  }

  @Test
  void noDirectionTriedOpensAContactWithLessForceThanTheWeakest() {
    for (int i = 0; i < 10; i++) {
      RandomStream draw = RandomStream.of(SEED + 1, i);
      RandomCoupling c = RandomCoupling.draw(draw);
      LiftOff lift = new LiftOff(ContactLines.nominal(c.design()), c.load());
      Vec3 tool = c.design().toolPoint();
      LiftOff.Weakest weakest = lift.weakest(tool);
      assertThat(lift.forceAlong(tool, weakest.direction()).factor())
          .isCloseTo(weakest.force(), within(1e-9 * weakest.force()));
      assertThat(lift.forceAlong(tool, weakest.direction()).contact()).isEqualTo(weakest.contact());
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 2000; k++) {
        least = Math.min(least, lift.forceAlong(tool, RandomDirection.of(draw)).factor());
      }
      assertThat(least)
          .as("seed %d, layout %d", SEED + 1, i)
          .isBetween(weakest.force() * (1 - 1e-12), weakest.force() * 1.1);
    }
  }

  @Test
  void aForceThroughTheBallsOnlyPressesThem() {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240);
    LiftOff lift = new LiftOff(ContactLines.nominal(post), post.standingLoad());
    LiftOff.First first = lift.forceAlong(Vec3.ZERO, Vec3.Z.negated());
    assertThat(first.factor()).isInfinite();
    assertThat(first.index()).isEqualTo(-1);
    assertThat(first.contact()).isEmpty();
  }

  @Test
  void aContactOpenAtRestNeedsNoLoadToOpen() {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240);
    Wrench outside = Wrench.ofForce(new Vec3(0, 0, -100), new Vec3(0.2, 0, 0));
    ContactLines lines = ContactLines.nominal(post);
    LiftOff lift = new LiftOff(lines, outside);
    assertThat(lift.factor(Wrench.ofForce(Vec3.X, Vec3.ZERO)).factor()).isZero();
    assertThat(lift.weakest(post.toolPoint()).force()).isZero();
    assertThat(Arrays.stream(new ForceBalance(lines).forces(outside)).min().orElseThrow())
        .isNegative();
  }

  @Test
  void twiceThePreloadTakesTwiceTheLoad() {
    CouplingDesign post = WorkedExamples.toolPost(0, 120, 240);
    ContactLines lines = ContactLines.nominal(post);
    Wrench load = post.cases().get(1).load();
    double once = new LiftOff(lines, post.preload()).factor(load).factor();
    double twice = new LiftOff(lines, post.preload().times(2)).factor(load).factor();
    assertThat(twice).isCloseTo(2 * once, within(1e-9 * once));
  }
}
