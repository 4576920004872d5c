package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;

class FindingTest {

  private static Finding finding(
      Judged judged, double value, double limit, Sense sense, LimitBasis basis) {
    return new Finding(
        CheckKind.BOND,
        judged,
        Subject.support("front"),
        value,
        limit,
        sense,
        basis,
        Measure.FACTOR,
        Statement.of(Said.BOND_MORE),
        Statement.NOTHING);
  }

  private static Finding finding(Judged judged, double value, double limit, Sense sense) {
    return finding(judged, value, limit, sense, LimitBasis.COMMON_PRACTICE);
  }

  @Test
  void marginIsThePartOfTheLimitThatIsLeft() {
    assertThat(finding(Judged.HOLDS, 75, 100, Sense.AT_MOST).margin())
        .isCloseTo(0.25, within(1e-12));
    assertThat(finding(Judged.HOLDS, 3, 2, Sense.AT_LEAST).margin()).isCloseTo(0.5, within(1e-12));
    assertThat(finding(Judged.FAILS, 3, 2, Sense.AT_MOST).margin()).isCloseTo(-0.5, within(1e-12));
    assertThat(finding(Judged.FAILS, -4, 0, Sense.AT_LEAST).margin()).isEqualTo(-4);
  }

  @Test
  void theWorstComesFirst() {
    Finding holds = finding(Judged.HOLDS, 1, 2, Sense.AT_MOST);
    Finding decide = finding(Judged.DECIDE, 3, 2, Sense.AT_MOST);
    Finding bad = finding(Judged.FAILS, 3, 2, Sense.AT_MOST);
    Finding worse = finding(Judged.FAILS, 9, 2, Sense.AT_MOST);
    Finding advice = finding(Judged.ADVICE, 9, 2, Sense.AT_MOST);
    Finding accepted = decide.accepted("a trial piece stood it");
    assertThat(Finding.worstFirst(List.of(advice, holds, bad, accepted, decide, worse)))
        .containsExactly(worse, bad, decide, accepted, holds, advice);
  }

  @Test
  void aValueBeyondItsLimitCannotBeCalledHolding() {
    for (Sense sense : Sense.values()) {
      double beyond = sense == Sense.AT_MOST ? Math.nextUp(2.0) : Math.nextDown(2.0);
      assertThatThrownBy(() -> finding(Judged.HOLDS, beyond, 2, sense))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("cannot hold");
      assertThat(finding(Judged.HOLDS, 2, 2, sense).margin()).isZero();
    }
  }

  @Test
  void numbersAreFiniteAndHardLimitsAreNotUpForDecision() {
    assertThatThrownBy(() -> finding(Judged.HOLDS, Double.NaN, 1, Sense.AT_MOST))
        .hasMessageContaining("finite");
    assertThatThrownBy(
            () -> finding(Judged.DECIDE, 3, 2, Sense.AT_MOST, LimitBasis.DERATED_STRENGTH))
        .hasMessageContaining("hard limit");
    Finding fails = finding(Judged.FAILS, 3, 2, Sense.AT_MOST, LimitBasis.STRENGTH);
    assertThatThrownBy(() -> fails.accepted("it must do")).hasMessageContaining("hard limit");
  }

  @Test
  void aBrokenLimitFailsIfItIsHardAndIsUpForDecisionIfItIsSoft() {
    for (LimitBasis basis : LimitBasis.values()) {
      assertThat(Judged.by(2, 2, Sense.AT_MOST, basis)).isEqualTo(Judged.HOLDS);
      assertThat(Judged.by(3, 2, Sense.AT_MOST, basis))
          .isEqualTo(basis.hard() ? Judged.FAILS : Judged.DECIDE);
      assertThat(Judged.by(1, 2, Sense.AT_LEAST, basis))
          .isEqualTo(basis.hard() ? Judged.FAILS : Judged.DECIDE);
    }
  }

  @Test
  void theVerdictIsTheWorstJudgementAndAdviceHasNone() {
    Finding advice = finding(Judged.ADVICE, 9, 2, Sense.AT_MOST);
    Finding decide = finding(Judged.DECIDE, 3, 2, Sense.AT_MOST);
    Finding fails = finding(Judged.FAILS, 3, 2, Sense.AT_MOST);
    assertThat(Verdict.of(List.of(advice))).isEqualTo(Verdict.HOLDS);
    assertThat(Verdict.of(List.of(advice, decide))).isEqualTo(Verdict.UNDECIDED);
    assertThat(Verdict.of(List.of(decide.accepted("seen"), advice))).isEqualTo(Verdict.HOLDS);
    assertThat(Verdict.of(List.of(decide, fails))).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aStatementSpeaksOfNamesAmountsTermsAndStatementsOnly() {
    Statement inner = Statement.of(Said.MOTION, "sliding");
    Statement all =
        Statement.of(
            Said.MOTION_FREE, inner, "front", Judged.FAILS, Argument.computed(Measure.FORCE, 600));
    assertThat(all.arguments())
        .containsExactly(
            new Argument.Inner(inner),
            new Argument.Name("front"),
            new Argument.Term(Judged.FAILS),
            new Argument.Amount(Measure.FORCE, 600, true));
    assertThatThrownBy(() -> Statement.of(Said.MOTION_FREE, 600.0)).hasMessageContaining("600.0");
    assertThat(Statement.of(Said.NOTHING).isEmpty()).isTrue();
    assertThat(all.isEmpty()).isFalse();
  }
}
