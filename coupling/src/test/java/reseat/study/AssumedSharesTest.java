package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.remount.Cause;

/** What of a result rests on values that the file does not state. */
class AssumedSharesTest {

  private static CheckResult check(String text) {
    return CheckStudy.run(StatedDesign.of(DesignFile.read(text)), Depth.SIMULATED);
  }

  private static double share(CheckResult result, String key) {
    return AssumedShares.of(result).stream()
        .filter(s -> s.value().key().equals(key))
        .findFirst()
        .orElseThrow()
        .share();
  }

  @ParameterizedTest
  @EnumSource(
      value = Starter.class,
      names = {"TOOL_POST", "PALLET", "SENSOR_MOUNT", "CONE_VEE_FLAT"})
  void sharesAreSortedAndStrictAsksForTheLargeOnesAlone(Starter starter) {
    CheckResult result = check(starter.text());
    List<AssumedShare> shares = AssumedShares.of(result);
    assertThat(shares).hasSameSizeAs(result.stated().assumed());
    for (int i = 1; i < shares.size(); i++) {
      assertThat(shares.get(i).share()).isLessThanOrEqualTo(shares.get(i - 1).share());
    }
    CheckResult strict = AssumedShares.strict(result);
    assertThat(strict.verdict()).isEqualTo(Verdict.UNDECIDED);
    List<Finding> asked =
        strict.findings().stream().filter(f -> f.check() == CheckKind.ASSUMPTION).toList();
    assertThat(asked)
        .hasSize((int) shares.stream().filter(s -> s.share() > AssumedShares.MUCH).count())
        .allMatch(f -> f.judged() == Judged.DECIDE);
    assertThat(result.verdict()).as("without it").isEqualTo(Verdict.HOLDS);
  }

  @Test
  void whatIsStatedIsAskedForNoMore() {
    String stated =
        Starter.TOOL_POST
            .text()
            .replace("surface = \"oiled\"", "low = 0.05\nnominal = 0.1\nhigh = 0.16\n#")
            .replace("lift_off_factor = 2", "lift_off_factor = 2\ncoverage = \"95 %\"")
            .replace("series = 8", "series = 8\nforce_accuracy = \"11 %\"");
    CheckResult strict = AssumedShares.strict(check(stated));
    assertThat(strict.verdict()).isEqualTo(Verdict.HOLDS);
  }

  @Test
  void anAmountCarriesTheShareOfItsCauseInTheVariance() {
    CheckResult result =
        check(Starter.TOOL_POST.text().replaceFirst("temperature_scatter = [^\n]*", ""));
    SeatedCheck seated = (SeatedCheck) result;
    double most = 0;
    for (int k = 0; k < 3; k++) {
      most =
          Math.max(most, seated.toolChanges().linear().orElseThrow().share(Cause.TEMPERATURE, k));
    }
    assertThat(share(result, "remount.temperature_scatter")).isCloseTo(most, within(1e-12));
    assertThat(most).isGreaterThan(0.5);
  }

  @Test
  void frictionCarriesTheWidthOfItsRange() {
    // oiled steel on steel, 0.05 to 0.16 in the catalog
    assertThat(share(check(Starter.PALLET.text()), "friction.nominal"))
        .isCloseTo(0.11 / 0.16, within(1e-12));
  }

  @Test
  void rigidBallsThatMightStandAsSoftlyAsTheirContactsCarryAboutHalfTheStiffness() {
    double share = share(check(Starter.CONE_VEE_FLAT.text()), "layout.mounting");
    // each contact in series with a ball of equal give in every direction loses half or more
    assertThat(share).isBetween(0.3, 0.75);
  }

  @Test
  void aCouplingThatDoesNotStandRestsOnNothing() {
    CheckResult lifted =
        check(
            Starter.CONE_VEE_FLAT
                .text()
                .replace("\"40 N\"", "\"1 N\"")
                .replace("\"-z\"", "\"+z\""));
    assertThat(AssumedShares.of(lifted)).allMatch(s -> s.share() == 0);
    assertThat(AssumedShares.strict(lifted)).isSameAs(lifted);
  }
}
