package reseat.report.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.remedy.Counsel;
import reseat.report.form.Screen;
import reseat.report.form.UnitSystem;
import reseat.study.CheckResult;

class CheckTextTest {

  private static final int SHORT = 25;

  private static String screen(CheckResult result, UnitSystem units, boolean all) {
    return CheckText.of(result, Counsel.NONE, "post.toml", new Screen(units, all, "reseat"));
  }

  private static String screen(CheckResult result) {
    return screen(result, UnitSystem.METRIC, false);
  }

  @Test
  void aResultFitsOneScreen() {
    for (CheckResult result : CheckedDesigns.all()) {
      for (UnitSystem units : UnitSystem.values()) {
        List<String> lines = screen(result, units, false).lines().toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(SHORT);
        assertReadable(lines);
        assertReadable(screen(result, units, true).lines().toList());
      }
    }
  }

  private static void assertReadable(List<String> lines) {
    assertThat(lines)
        .allSatisfy(
            line -> {
              assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(100);
              assertThat(line).doesNotEndWith(" ").doesNotContain("\t", "NaN", "\u001b");
            });
  }

  @Test
  void theVerdictComesFirstAndTheWorstFindingNext() {
    String text = screen(CheckedDesigns.failing());
    assertThat(text).startsWith("Post with an edge forward\nFAILS: ");
    assertThat(text.indexOf("fails lift-off: crash lifts rear"))
        .isPositive()
        .isLessThan(text.indexOf("contacts at rest"));
  }

  @Test
  void oneUnitSystemAtATime() {
    String metric = screen(CheckedDesigns.failing(), UnitSystem.METRIC, true);
    assertThat(metric).contains("N/µm", "GPa").doesNotContain("lbf", "µin", " in)", "ksi");
    String inch = screen(CheckedDesigns.failing(), UnitSystem.INCH, true);
    assertThat(inch).contains("lbf/in", "ksi").doesNotContain(" N ", "N/µm", " GPa", " µm");
  }

  @Test
  void aCouplingThatIsNotSeatedShowsWhichContactsWouldHaveToPull() {
    assertThat(screen(CheckedDesigns.unseated()))
        .contains("FAILS: ")
        .contains("near (left flank) is open at rest")
        .contains("Forces under preload and weight (negative: would have to pull)")
        .doesNotContain("Stiffness at the tool point");
  }

  @Test
  void aCouplingThatIsNotConstrainedSaysWhatIsFree() {
    assertThat(screen(CheckedDesigns.unconstrained()))
        .contains("FAILS: 1 of 1 check.")
        .contains("one motion is free: sliding along y")
        .doesNotContain("contacts at rest");
  }
}
