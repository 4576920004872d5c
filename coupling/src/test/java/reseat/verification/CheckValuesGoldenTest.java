package reseat.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** That no check value goes missing: how many there are, counted from the program's own list. */
class CheckValuesGoldenTest {

  @Test
  void everyTopicHasAsManyValuesAsWhenTheyWereCounted() {
    assertThat(
            CheckValues.topics().stream()
                .collect(Collectors.toMap(Topic::title, t -> t.values().size())))
        .containsExactlyInAnyOrderEntriesOf(
            Map.ofEntries(
                Map.entry("Hertz contacts", 70),
                Map.entry("Coefficients of the ellipse", 63),
                Map.entry("Handbook examples", 28),
                Map.entry("Stresses below and beside the patch", 75),
                Map.entry("Dents and ring cracks", 161),
                Map.entry("Tangential load, slip and spin", 36),
                Map.entry("Statics and stiffness of a three-vee coupling", 29),
                Map.entry("Error motion of a three-vee coupling", 14),
                Map.entry("Friction that keeps a coupling from seating itself", 17),
                Map.entry("Materials", 5),
                Map.entry("Screw threads", 51),
                Map.entry("Springs and magnets", 43),
                Map.entry("Ball stud, bond and seat", 13),
                Map.entry("Scatter of measured mounts", 91),
                Map.entry("Drift, outliers and holders", 35)));
  }
}
