package reseat.report.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.study.CheckResult;

class CheckTextTest {

  @Test
  void aResultFitsOneScreen() {
    for (CheckResult result : CheckedDesigns.all()) {
      List<String> lines = CheckText.of(result).lines().toList();
      assertThat(lines).hasSizeLessThanOrEqualTo(60);
      assertThat(lines)
          .allSatisfy(
              line -> {
                assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(100);
                assertThat(line).doesNotEndWith(" ").doesNotContain("\t", "NaN", "\u001b");
              });
    }
  }

  @Test
  void theVerdictComesFirstAndTheWorstFindingNext() {
    String text = CheckText.of(CheckedDesigns.failing());
    assertThat(text).startsWith("Post with an edge forward\nFAILS: ");
    assertThat(text.indexOf("FAILS lift-off: crash lifts rear"))
        .isPositive()
        .isLessThan(text.indexOf("note stiffness"))
        .isLessThan(text.indexOf("Contacts at rest"));
  }

  @Test
  void forcesAndLengthsAreToldInBothSystems() {
    assertThat(CheckText.of(CheckedDesigns.failing()))
        .contains("600 N (135 lbf)")
        .contains("µm (")
        .contains("free lbf/in")
        .contains("X           Z");
  }

  @Test
  void aCouplingThatIsNotSeatedShowsWhichContactsWouldHaveToPull() {
    assertThat(CheckText.of(CheckedDesigns.unseated()))
        .contains("FAILS: ")
        .contains("near (left flank) is not pressed at rest")
        .contains("Forces under preload and weight (negative: would have to pull)")
        .doesNotContain("Stiffness at the tool point");
  }

  @Test
  void aCouplingThatIsNotConstrainedSaysWhatIsFree() {
    assertThat(CheckText.of(CheckedDesigns.unconstrained()))
        .contains("FAILS: 1 of 1 checks.")
        .contains("one motion is free: sliding along y")
        .doesNotContain("Contacts at rest");
  }
}
