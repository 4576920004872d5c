package reseat.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.designfile.SizeTargets.RankBy;

/** What a tally keeps is what plain loops over all candidates find. */
class SizingTallyTest {

  private static final long SEED = 20261130;

  private static final List<String> CHECKS = List.of("size", "lift-off", "seat fit");

  /** Holding and failing candidates of a few kinds, in coarse steps so that many are alike. */
  private static List<Candidate> candidates(int count, int kinds) {
    Random luck = new Random(SEED);
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double used = luck.nextInt(20) / 20.0;
      Merits merits =
          new Merits(luck.nextInt(5), luck.nextInt(5), luck.nextInt(5), luck.nextInt(5));
      Judgement judgement =
          luck.nextInt(3) > 0
              ? new Judgement("size", used, Optional.of(merits))
              : Judgement.fails(CHECKS.get(luck.nextInt(3)), 1 + luck.nextInt(10));
      all.add(new Candidate(i, luck.nextInt(kinds), judgement));
    }
    return all;
  }

  private static SizingTally of(RankBy rule, List<Candidate> all) {
    SizingTally tally = new SizingTally(rule);
    all.forEach(tally::add);
    return tally;
  }

  private static List<Candidate> holding(List<Candidate> all) {
    return all.stream().filter(c -> c.judgement().holds()).toList();
  }

  private static double cost(Candidate c, RankBy rule) {
    Merits m = c.judgement().merits().orElseThrow();
    return switch (rule) {
      case MARGIN -> c.judgement().used();
      case REPEATABILITY -> m.repeatability();
      case STIFFNESS -> 1e3 - m.stiffness();
      case PRESSURE -> m.pressure();
      case SIZE -> m.size();
    };
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 10, 11, 60})
  void theBestOfEachOfTheBestKindsAreKeptInOrder(int kinds) {
    List<Candidate> all = candidates(300, kinds);
    for (RankBy rule : RankBy.values()) {
      List<Candidate> sorted = new ArrayList<>(holding(all));
      Comparator<Candidate> byCost = Comparator.comparingDouble(c -> cost(c, rule));
      sorted.sort(byCost.thenComparingLong(Candidate::number));
      Map<Long, Candidate> seen = new HashMap<>();
      sorted.removeIf(c -> seen.putIfAbsent(c.kind(), c) != null);
      List<Candidate> expected = sorted.subList(0, Math.min(10, sorted.size()));
      assertThat(of(rule, all).best()).as("%s, seed %d", rule, SEED).isEqualTo(expected);
      List<Candidate> mixed = new ArrayList<>(all);
      Collections.shuffle(mixed, new Random(SEED));
      assertThat(of(rule, mixed).best()).as("in any order, %s", rule).isEqualTo(expected);
    }
  }

  @Test
  void everyCandidateIsCountedAndEveryFailureUnderItsCheck() {
    List<Candidate> all = candidates(300, 5);
    SizingTally tally = of(RankBy.MARGIN, all);
    assertThat(tally.judged()).isEqualTo(300);
    assertThat(tally.holding()).isEqualTo(holding(all).size());
    long failing = 0;
    for (SizingTally.Miss miss : tally.misses()) {
      List<Candidate> by =
          all.stream()
              .filter(c -> !c.judgement().holds() && c.judgement().check().equals(miss.check()))
              .toList();
      assertThat(miss.count()).isEqualTo(by.size());
      failing += miss.count();
      Candidate nearest = by.get(0);
      for (Candidate c : by) {
        nearest = c.judgement().used() < nearest.judgement().used() ? c : nearest;
      }
      assertThat(miss.nearest()).as("the first of equals").isEqualTo(nearest);
    }
    assertThat(failing).isEqualTo(300 - tally.holding());
  }

  @Test
  void whatNeedsADecisionIsRankedApartFromWhatHolds() {
    SizingTally tally = new SizingTally(RankBy.MARGIN);
    Merits merits = new Merits(1, 1, 1, 1);
    tally.add(new Candidate(0, 0, new Judgement("bond", 0.9, Optional.of(merits))));
    tally.add(new Candidate(1, 1, new Judgement("bond", 1.1, "self-seating", Optional.of(merits))));
    tally.add(
        new Candidate(2, 2, new Judgement("bond", 1.05, "self-seating", Optional.of(merits))));
    tally.add(new Candidate(3, 3, Judgement.fails("lift-off", 2)));
    assertThat(tally.holding()).isEqualTo(1);
    assertThat(tally.best()).extracting(Candidate::number).containsExactly(0L);
    assertThat(tally.undecided()).extracting(Candidate::number).containsExactly(2L, 1L);
    assertThat(tally.decisions())
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.check()).isEqualTo("self-seating");
              assertThat(m.count()).isEqualTo(2);
            });
    assertThat(tally.pareto()).extracting(Candidate::number).containsExactly(0L);
    assertThat(tally.misses()).hasSize(1);
  }

  private static Candidate failing(long number, String check, double used) {
    return new Candidate(number, 0, Judgement.fails(check, used));
  }

  @Test
  void theCheckThatMostFailByComesFirstAndOfEqualsTheFirstOfTheAlphabet() {
    SizingTally tally = new SizingTally(RankBy.MARGIN);
    for (String check : List.of("bond", "size", "size", "pivot", "ball stud", "size", "pivot")) {
      tally.add(failing(tally.judged(), check, 2));
    }
    assertThat(tally.misses())
        .extracting(SizingTally.Miss::check)
        .containsExactly("size", "pivot", "ball stud", "bond");
    assertThat(tally.misses()).extracting(SizingTally.Miss::count).containsExactly(3L, 2L, 1L, 1L);
    assertThat(tally.holding()).isZero();
    assertThat(tally.best()).isEmpty();
  }

  private static Candidate holding(long number) {
    Merits merits = new Merits(number % 7, number % 5, 0.5, 0.1);
    return new Candidate(number, number, new Judgement("size", 0.5, Optional.of(merits)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 1999, 2000, 2001, 4000, 4001, 9000})
  void theSampleIsEveryFirstSecondOrFourthThatHolds(int count) {
    SizingTally tally = new SizingTally(RankBy.MARGIN);
    for (int i = 0; i < count; i++) {
      tally.add(failing(i, "size", 2));
      tally.add(holding(i));
    }
    List<Candidate> sample = tally.sample();
    assertThat(sample).hasSizeLessThan(2000);
    int stride = 1;
    while ((count + stride - 1) / stride >= 2000) {
      stride *= 2;
    }
    List<Long> expected = new ArrayList<>();
    for (long i = 0; i < count; i += stride) {
      expected.add(i);
    }
    assertThat(sample).extracting(Candidate::number).isEqualTo(expected);
  }

  @Test
  void whatIsOfferedToTheTallyComesToItsParetoSet() {
    List<Candidate> all = candidates(200, 5);
    ParetoSet set = new ParetoSet();
    holding(all).forEach(set::offer);
    assertThat(of(RankBy.SIZE, all).pareto()).isEqualTo(set.members()).isNotEmpty();
  }

  @Test
  void membersOfAParetoSetComeByTheirNumberHoweverTheyWereOffered() {
    ParetoSet set = new ParetoSet();
    for (int i = 0; i < 100; i++) {
      // the stiffer the larger: none beats another
      long number = 37L * i % 100;
      Merits merits = new Merits(1, number, 1, number);
      set.offer(new Candidate(number, 0, new Judgement("size", 0.5, Optional.of(merits))));
    }
    assertThat(set.members())
        .hasSize(100)
        .isSortedAccordingTo(Comparator.comparing(Candidate::number));
  }
}
