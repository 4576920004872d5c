package reseat.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Verdict;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Starter;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/** Every remedy that is told holds when it is followed, as it is written into the file. */
class RemedySearchTest {

  private static final long SEED = 20261130;

  /** All of them with -Pfull; some in each build. */
  private static final boolean FULL = Boolean.getBoolean("full");

  private static final int DESIGNS = FULL ? 200 : 20;

  @Test
  void everyRemedyAppliedHolds() {
    int cured = 0;
    for (FailingDesigns.Drawn d : FailingDesigns.draw(DESIGNS, SEED)) {
      Remedies remedies = RemedySearch.of(d.file(), d.result(), FULL);
      String seed = "seed " + SEED + ": " + d.changes();
      double last = 0;
      for (Remedy r : remedies.remedies()) {
        String text = r.writtenInto(d.file());
        CheckResult after =
            CheckStudy.run(StatedDesign.of(AlterableDesign.of(text).unaltered()), Depth.SIMULATED);
        assertThat(after.verdict()).as("%s: %s", seed, r.moves()).isEqualTo(Verdict.HOLDS);
        assertThat(r.distance()).as(seed).isGreaterThanOrEqualTo(last);
        assertThat(r.changes()).as(seed).allSatisfy(c -> assertThat(asked(c.key())).isFalse());
        last = r.distance();
      }
      assertThat(remedies.remedies()).as(seed).hasSizeLessThanOrEqualTo(3);
      cured += remedies.remedies().isEmpty() ? 0 : 1;
      if (remedies.remedies().isEmpty()) {
        assertThat(remedies.conflict().isPresent() || remedies.uncured().isPresent())
            .as(seed)
            .isTrue();
      }
    }
    assertThat(cured).as("seed %d", SEED).isGreaterThanOrEqualTo(DESIGNS / 3);
  }

  private static boolean asked(String key) {
    return key.startsWith("targets")
        || key.startsWith("load_case")
        || key.startsWith("holder")
        || key.startsWith("accepted");
  }

  @Test
  void aDesignThatHoldsNeedsNoRemedy() {
    AlterableDesign post = AlterableDesign.of(Starter.TOOL_POST.text());
    CheckResult result = CheckStudy.run(StatedDesign.of(post.unaltered()), Depth.SIMULATED);
    assertThat(RemedySearch.of(post, result)).isEqualTo(Remedies.NOT_SOUGHT);
  }

  @Test
  void commentsAndEverythingElseStay() {
    String text = Starter.TOOL_POST.text().replace("height = \"-300 N\"", "height = \"-900 N\"");
    AlterableDesign file = AlterableDesign.of(text);
    CheckResult result = CheckStudy.run(StatedDesign.of(file.unaltered()), Depth.SIMULATED);
    Remedy first = RemedySearch.of(file, result).remedies().get(0);
    List<String> before = text.lines().toList();
    List<String> after = first.writtenInto(file).lines().toList();
    assertThat(after).hasSameSizeAs(before);
    int changed = 0;
    for (int i = 0; i < before.size(); i++) {
      changed += before.get(i).equals(after.get(i)) ? 0 : 1;
    }
    assertThat(changed).isEqualTo(first.changes().size());
  }

  @Test
  void whatFailsCarriesNoAdviceThatWasNotTried() {
    for (FailingDesigns.Drawn d : FailingDesigns.draw(20, SEED + 1)) {
      for (Finding f : d.result().findings()) {
        boolean open = f.judged() == Judged.FAILS || f.judged() == Judged.DECIDE;
        assertThat(!open || f.advice().isEmpty() || f.advice().key().isHandling())
            .as("%s: %s", d.changes(), f.advice().key())
            .isTrue();
      }
    }
  }
}
