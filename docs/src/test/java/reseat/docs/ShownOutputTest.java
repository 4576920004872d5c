package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The comparison that the pages rest on must itself tell right from wrong. */
class ShownOutputTest {

  private static boolean agree(String shown, String printed) {
    return ShownOutput.difference(shown.lines().toList(), printed.lines().toList()).isEmpty();
  }

  @Test
  void aNumberMayDifferByOneInItsLastDigit() {
    assertThat(agree("moves  0.12 um", "moves  0.13 um")).isTrue();
    assertThat(agree("moves  0.12 um", "moves  0.14 um")).isFalse();
    assertThat(agree("k 9.99e+02 N", "k 1.00e+03 N")).isTrue();
    assertThat(agree("k 9.99e+02 N", "k 1.01e+03 N")).isFalse();
    assertThat(agree("x -0.1", "x 0.1")).isFalse();
  }

  @Test
  void countsAndWordsMustBeTheSame() {
    assertThat(agree("200 mounts", "201 mounts")).isFalse();
    assertThat(agree("contact left 1", "contact left 2")).isFalse();
    assertThat(agree("holds", "fails")).isFalse();
    assertThat(agree("a\nb", "a")).isFalse();
    assertThat(agree("a", "a\nb")).isFalse();
  }

  @Test
  void threePointsStandForAnyNumberOfLines() {
    assertThat(agree("a\n...\nd", "a\nb\nc\nd")).isTrue();
    assertThat(agree("a\n...", "a\nb\nc\nd")).isTrue();
    assertThat(agree("a\n...\ne", "a\nb\nc\nd")).isFalse();
  }

  @Test
  void renewingKeepsWhatIsLeftOut() {
    List<String> printed = List.of("1", "2", "3", "4", "5");
    assertThat(ShownOutput.renewed(List.of("a", "...", "z"), printed))
        .containsExactly("1", "...", "5");
    assertThat(ShownOutput.renewed(List.of("a"), printed)).isEqualTo(printed);
  }
}
