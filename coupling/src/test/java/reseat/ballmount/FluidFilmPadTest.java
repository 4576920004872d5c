package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * An invented pad: 40 mm wide, 250 N, film 5 um thick and 25 N/um stiff, 1.5 N m/mrad against tilt;
 * a 10 mm ball in a trihedral seat of 38 N/um with friction 0.12.
 */
class FluidFilmPadTest {

  private static final double CUBE_CORNER = Math.acos(1 / Math.sqrt(3));
  private static final double FRICTION =
      GimbalFriction.trihedral(5e-3, 0.12, 250, CUBE_CORNER, 0).momentAboutSeatAxis();
  private static final FluidFilmPad PAD =
      new FluidFilmPad(250, 25e6, 1.5e3, 20e-3, 5e-6, FRICTION, 38e6);

  @Test
  void frictionHoldsSevenTimesTheTiltAllowed() {
    // Rough check by hand: 0.21 N m, 0.83 mm (here 0.85), 0.14 mrad, seven times 20 urad.
    assertThat(PAD.pivotFriction()).isCloseTo(0.212, within(5e-4));
    assertThat(PAD.pressureOffset() * 1e3).isCloseTo(0.849, within(1e-3));
    assertThat(PAD.heldTilt() * 1e3).isCloseTo(0.1414, within(1e-4));
    assertThat(PAD.alignsWithin(20e-6)).isFalse();
    assertThat(PAD.excessOver(20e-6)).isCloseTo(7.07, within(0.01));
    assertThat(PAD.alignsWithin(150e-6)).isTrue();
  }

  @Test
  void theSeatIsNotMuchStifferThanTheFilm() {
    assertThat(PAD.seriesStiffness() * 1e-6).isCloseTo(15.08, within(0.01));
    assertThat(PAD.filmShare() + PAD.pivotShare()).isCloseTo(1, within(1e-15));
    assertThat(PAD.pivotIsStiff()).isFalse();
    assertThat(PAD.remedies(20e-6))
        .contains(
            FluidFilmPad.Remedy.LUBRICATE,
            FluidFilmPad.Remedy.BOND_AFTER_FLOATING,
            FluidFilmPad.Remedy.STIFFEN_PIVOT);
  }

  @Test
  void theEdgeComesHalfWayToTheGround() {
    assertThat(PAD.edgeLoss()).isCloseTo(0.566, within(1e-3));
  }

  @Test
  void aStiffPivotWithoutFrictionNeedsNothing() {
    FluidFilmPad ideal = new FluidFilmPad(250, 25e6, 1.5e3, 20e-3, 5e-6, 0, 200e6);
    assertThat(ideal.remedies(20e-6)).isEmpty();
    assertThat(ideal.heldTilt()).isZero();
  }

  @Test
  void halfTheFrictionHoldsHalfTheTilt() {
    FluidFilmPad half = new FluidFilmPad(250, 25e6, 1.5e3, 20e-3, 5e-6, FRICTION / 2, 38e6);
    assertThat(half.heldTilt()).isCloseTo(PAD.heldTilt() / 2, within(1e-18));
  }
}
