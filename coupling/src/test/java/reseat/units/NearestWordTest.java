package reseat.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestWordTest {

  private static final List<String> KEYS =
      List.of("diameter", "flank", "material", "mouth", "length", "pin", "spacing");

  @Test
  void slipsOfTheFingerAreForgiven() {
    assertThat(NearestWord.to("diametre", KEYS)).contains("diameter");
    assertThat(NearestWord.to("diamter", KEYS)).contains("diameter");
    assertThat(NearestWord.to("flnak", KEYS)).contains("flank");
    assertThat(NearestWord.to("Material", KEYS)).contains("material");
    assertThat(NearestWord.to("lenght", KEYS)).contains("length");
    assertThat(NearestWord.to("pn", KEYS)).contains("pin");
  }

  @Test
  void anotherWordIsNotCorrected() {
    assertThat(NearestWord.to("colour", KEYS)).isEmpty();
    assertThat(NearestWord.to("x", KEYS)).isEmpty();
    assertThat(NearestWord.to("", KEYS)).isEmpty();
    assertThat(NearestWord.to("diameter", List.of())).isEmpty();
  }

  @Test
  void amongEqualsTheFirstInTheAlphabetWins() {
    assertThat(NearestWord.to("ba", List.of("bc", "bb"))).contains("bb");
  }

  @Test
  void aSwapOfNeighboursIsOneSlip() {
    assertThat(NearestWord.distance("ab", "ba")).isEqualTo(1);
    assertThat(NearestWord.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(NearestWord.distance("", "abc")).isEqualTo(3);
  }
}
