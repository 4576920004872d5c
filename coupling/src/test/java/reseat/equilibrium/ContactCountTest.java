package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Support;

/** What is said of a coupling that has not six contacts. */
class ContactCountTest {

  private static CouplingDesign withSupports(int count) {
    CouplingDesign three =
        TestCouplings.threeVees(0.05, 0.005, Math.toRadians(45), 90, 210, 330).build();
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Support s = three.supports().get(i % 3);
      supports.add(
          new Support(
              "support " + i,
              s.ball(),
              s.ballMaterial(),
              s.seat(),
              s.seatMaterial(),
              s.caseDepth(),
              s.mounting()));
    }
    return three.toBuilder().supports(supports).build();
  }

  @Test
  void eightContactsOverConstrainAndFourLeaveFree() {
    CouplingModel eight = CouplingModel.of(withSupports(4));
    assertThatThrownBy(() -> eight.restPose())
        .isInstanceOf(NoEquilibriumException.class)
        .hasMessageStartingWith("a coupling with 8 contacts (six are wanted): more contacts than")
        .hasMessageContaining("over-constrain");
    assertThatThrownBy(() -> CouplingModel.of(withSupports(2)).restPose())
        .isInstanceOf(NoEquilibriumException.class)
        .hasMessage(
            "a coupling with 4 contacts (six are wanted): the contacts do not constrain all six"
                + " motions of the holder");
  }
}
