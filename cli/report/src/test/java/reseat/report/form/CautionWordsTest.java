package reseat.report.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import reseat.ballmount.BondCaution;
import reseat.ballmount.LockNut;
import reseat.preload.DeviceCaution;

/** Every caution and every step at the bench has a sentence of its own. */
class CautionWordsTest {

  @Test
  void everyCautionIsASentenceOfItsOwn() {
    assertThat(Arrays.stream(DeviceCaution.values()).map(CautionWords::of))
        .allMatch(s -> s.endsWith("."))
        .doesNotHaveDuplicates();
    assertThat(Arrays.stream(BondCaution.values()).map(CautionWords::of))
        .allMatch(s -> s.endsWith("."))
        .doesNotHaveDuplicates();
  }

  @Test
  void everyStepIsASentenceOfItsOwn() {
    assertThat(Arrays.stream(LockNut.Step.values()).map(LockNutWords::of))
        .allMatch(s -> s.endsWith("."))
        .doesNotHaveDuplicates();
  }
}
