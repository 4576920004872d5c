package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.LimitBasis;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Subject;
import reseat.design.CheckKind;

/** A point of a sweep keeps apart what fails and what is to be decided. */
class SweepPointTest {

  @Test
  void itsListsAreItsOwn() {
    Finding loose =
        new Finding(
            CheckKind.BOND,
            Judged.DECIDE,
            Subject.support("front"),
            2,
            1,
            Finding.Sense.AT_MOST,
            LimitBasis.COMMON_PRACTICE,
            Measure.SHARE,
            Statement.of(Said.BOND_MORE),
            Statement.NOTHING);
    List<Finding> deciding = new ArrayList<>(List.of(loose));
    SweepPoint point =
        new SweepPoint(
            List.of("1"),
            SweepPoint.State.UNDECIDED,
            List.of(Optional.empty()),
            List.of(),
            deciding,
            Statement.NOTHING);
    deciding.clear();
    assertThat(point.deciding()).containsExactly(loose);
    assertThat(point.failing()).isEmpty();
  }
}
