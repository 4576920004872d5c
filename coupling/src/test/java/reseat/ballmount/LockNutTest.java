package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LockNutTest {

  private static final ThreadTolerance LIMITS =
      ThreadTolerance.of(ScrewThread.parse("3/8-40"), ThreadFit.MEDIUM);
  private static final ThreadTorque TORQUE = new ThreadTorque(LIMITS.thread(), 0.15, 0.15, 12e-3);

  private static LockNut nut(double clamp, double push) {
    return new LockNut(LIMITS, TORQUE, clamp, push, 4e-3, 206e9);
  }

  @Test
  void aScrewPressedInByTheSeatComesOutByTheFlankPlay() {
    LockNut nut = nut(2000, 145);
    assertThat(nut.takesUpPlay()).isTrue();
    assertThat(nut.shiftMin() - nut.stretch()).isCloseTo(LIMITS.axialPlayMin(), within(1e-15));
    assertThat(nut.shiftMax() - nut.stretch()).isCloseTo(LIMITS.axialPlayMax(), within(1e-15));
    assertThat(nut.shiftExpected() + nut.shiftUncertainty())
        .isCloseTo(nut.shiftMax(), within(1e-15));
  }

  @Test
  void theShiftOfAnOrdinaryThreadIsTensOfMicrometres() {
    assertThat(nut(2000, 145).shiftMax() * 1e6).isBetween(20.0, 150.0);
  }

  @Test
  void aScrewAlreadyPulledOutOnlyStretches() {
    LockNut nut = nut(2000, -50);
    assertThat(nut.shiftMin()).isEqualTo(nut.stretch());
    assertThat(nut.shiftMax()).isEqualTo(nut.stretch());
  }

  @Test
  void aLooseScrewMayShiftByNothingOrByTheWholePlay() {
    LockNut nut = nut(2000, 0);
    assertThat(nut.shiftMin()).isEqualTo(nut.stretch());
    assertThat(nut.shiftMax() - nut.stretch()).isCloseTo(LIMITS.axialPlayMax(), within(1e-15));
  }

  @Test
  void aNutWeakerThanTheSeatTakesNoPlayUp() {
    assertThat(nut(100, 145).takesUpPlay()).isFalse();
    assertThat(nut(100, 145).shiftMax()).isEqualTo(nut(100, 145).stretch());
  }

  @Test
  void stretchIsHookesLawOverTheStressArea() {
    double expected = 2000 * 4e-3 / (206e9 * LIMITS.thread().stressArea());
    assertThat(nut(2000, 145).stretch()).isCloseTo(expected, within(1e-18));
    assertThat(nut(2000, 145).tighteningTorque()).isEqualTo(TORQUE.tightening(2000));
  }

  @Test
  void fiveDegreesDraggedRoundWithTheNutAreNineMicrometresOnA38By40() {
    assertThat(nut(2000, 145).movementIfTurned(Math.toRadians(5)) * 1e6)
        .isCloseTo(8.82, within(0.005));
  }

  @Test
  void theProcedureIsSetLockReadCorrect() {
    assertThat(LockNut.procedure())
        .containsExactly(
            LockNut.Step.SET, LockNut.Step.LOCK, LockNut.Step.READ, LockNut.Step.CORRECT);
  }
}
