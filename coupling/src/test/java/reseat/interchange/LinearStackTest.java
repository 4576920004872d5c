package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;

class LinearStackTest {

  private static final LinearStack POST =
      new LinearStack(Sensitivity.of(ToleranceModel.of(TolerancedCouplings.toolPost())));

  @Test
  void variancesOfPostHolderAndOccasionAddUp() {
    LinearStack.Sum all = POST.sum(LinearStack.EVERYTHING);
    for (int k = 0; k < 3; k++) {
      double variance = 0;
      double worst = 0;
      for (Owner o : Owner.values()) {
        LinearStack.Sum part = POST.sum(EnumSet.of(o));
        variance += Math.pow(part.deviation().component(k), 2);
        worst += part.worstCase().component(k);
      }
      assertThat(Math.pow(all.deviation().component(k), 2))
          .isCloseTo(variance, within(1e-12 * variance));
      assertThat(all.worstCase().component(k)).isCloseTo(worst, within(1e-12 * worst));
    }
  }

  @Test
  void sharesAddUpToOneAndTheGreatestStandsFirst() {
    for (int axis = 0; axis < 3; axis++) {
      List<LinearStack.Line> lines = POST.ranking(LinearStack.BETWEEN_HOLDERS, axis);
      assertThat(lines).isNotEmpty();
      assertThat(lines).allMatch(l -> l.effect().contributor().owner() != Owner.POST);
      assertThat(lines.stream().mapToDouble(LinearStack.Line::share).sum())
          .isCloseTo(1, within(1e-12));
      assertThat(lines)
          .extracting(LinearStack.Line::share)
          .as("but for equal ones, which keep their order")
          .isSortedAccordingTo((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(b, a));
      for (LinearStack.Line l : lines) {
        assertThat(Math.signum(l.deviation())).isEqualTo(Math.signum(l.sensitivity()));
        assertThat(l.worst()).isGreaterThanOrEqualTo(Math.abs(l.deviation()));
      }
    }
  }

  @Test
  void manyAlikeErrorsComeNearANormalDistribution() {
    LinearStack.Sum one =
        stack(Tolerance.shared(ToleranceKind.SEAT_DEPTH, 1e-6, DistributionShape.UNIFORM));
    assertThat(one.kurtosis().z()).isCloseTo(-1.2, within(1e-12));
    // three independent equal parts: a third of the excess
    LinearStack.Sum three =
        stack(Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 1e-6, DistributionShape.UNIFORM));
    assertThat(three.kurtosis().z()).isCloseTo(-0.4, within(1e-12));
    assertThat(three.worstCase().z()).isCloseTo(1e-6, within(1e-18));
  }

  private static LinearStack.Sum stack(Tolerance t) {
    return new LinearStack(
            Sensitivity.of(
                ToleranceModel.of(
                    TolerancedCouplings.threeVees().tolerances(Tolerances.of(t)).build())))
        .sum(LinearStack.EVERYTHING);
  }

  @Test
  void aCouplingWithoutTolerancesStacksToNothing() {
    LinearStack none =
        new LinearStack(Sensitivity.of(ToleranceModel.of(TolerancedCouplings.threeVees().build())));
    assertThat(none.sum(LinearStack.EVERYTHING).worstCase().norm()).isZero();
    assertThat(none.sum(LinearStack.EVERYTHING).kurtosis().norm()).isZero();
    assertThat(none.ranking(LinearStack.EVERYTHING, 0)).isEmpty();
  }
}
