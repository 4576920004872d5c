package reseat.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignKey;
import reseat.designfile.Starter;
import reseat.study.RecutSeats;

/** Seats that are cut anew with their ball or angle: the contact keeps its place on the flank. */
class RecutSeatsTest {

  private static final AlterableDesign POST = AlterableDesign.of(Starter.TOOL_POST.text());
  private static final String MOUTH = "layout.groove.mouth_width";

  private static Map<String, String> following(String... pathsAndValues) {
    List<Alteration> changes = new ArrayList<>();
    for (int i = 0; i < pathsAndValues.length; i += 2) {
      DesignKey key = new DesignKey(pathsAndValues[i], pathsAndValues[i], Optional.empty());
      changes.add(new Alteration(key, pathsAndValues[i + 1]));
    }
    List<Alteration> all = new RecutSeats(POST).with(changes);
    assertThat(all.subList(0, changes.size())).isEqualTo(changes);
    return all.stream()
        .skip(changes.size())
        .collect(Collectors.toMap(a -> a.key().path(), Alteration::value));
  }

  /** The example's groove has a mouth of 0.413 in for a ball of 1/2 in at 45 deg. */
  private static void assertMouth(Map<String, String> following, double inches) {
    String width = following.get(MOUTH);
    assertThat(width).endsWith(" in");
    assertThat(Double.parseDouble(width.replace(" in", "")))
        .isCloseTo(inches, within(5e-4 * inches));
  }

  @Test
  void nothingFollowsFromWhatIsNotChanged() {
    assertThat(following()).isEmpty();
    assertThat(following("layout.ball.diameter", "12.7 mm")).isEmpty();
    assertThat(following("layout.ball.material", "440C")).isEmpty();
  }

  @Test
  void theMouthGoesWithTheBallAndWithTheSineOfTheFlankAngle() {
    assertMouth(following("layout.ball.diameter", "3/8 in"), 0.75 * 0.413);
    double sines = Math.sin(Math.toRadians(30)) / Math.sin(Math.toRadians(45));
    assertMouth(following("layout.groove.flank_angle", "30 deg"), sines * 0.413);
    assertMouth(
        following("layout.ball.diameter", "3/8 in", "layout.groove.flank_angle", "30 deg"),
        0.75 * sines * 0.413);
  }

  @Test
  void aMouthThatTheSearchVariesItselfIsLeftAlone() {
    assertThat(following("layout.ball.diameter", "3/8 in", MOUTH, "9 mm")).doesNotContainKey(MOUTH);
  }

  @Test
  void aHollowFlankWithoutItsRadiusGetsOneAFifthLargerThanTheBall() {
    Map<String, String> made = following("layout.groove.kind", "gothic");
    assertThat(made).containsEntry("layout.groove.flank_radius", "0.3 in");
    assertThat(following("layout.groove.kind", "gothic", "layout.groove.flank_radius", "8 mm"))
        .doesNotContainKey("layout.groove.flank_radius");
  }

  @Test
  void anotherLayoutGetsItsSeatsOfTheGroovesMaterialAtItsAngle() {
    String seat = "{ flank_angle = \"45 deg\", material = \"A2\" }";
    assertThat(following("layout.kind", "cone-vee-flat"))
        .containsEntry("layout.cone", seat)
        .containsEntry("layout.flat", "{ material = \"A2\" }");
    assertThat(following("layout.kind", "trihedral-vee-flat", "layout.groove.material", "52100"))
        .containsEntry("layout.trihedral", seat.replace("A2", "52100"));
    assertThat(following("layout.kind", "three-vee")).isEmpty();
  }
}
