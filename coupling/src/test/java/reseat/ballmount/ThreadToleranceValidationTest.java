package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Limit diameters and strip areas against printed tables.
 *
 * <p>Strip areas: Bickford, An Introduction to the Design and Behavior of Bolted Joints, metric
 * strip-area table, read in a reproduction; recomputed from the formula. The limit diameters of ISO
 * 965 were recalled from memory; that they reproduce four printed rows to five digits confirms
 * them. The worked limits of 1/2-28 UNEF are those of Machinery's Handbook, 31st edition, read.
 */
class ThreadToleranceValidationTest {

  private static final double MM = 1e-3;
  private static final double INCH = 0.0254;

  @ParameterizedTest(name = "{0} 6H/6g")
  @CsvSource({
    // CV-108 to CV-111: D1max, d2min, dmin, D2max, mm
    "M5, 4.334, 4.361, 4.826, 4.605",
    "M6, 5.153, 5.212, 5.794, 5.500",
    "M8, 6.912, 7.042, 7.760, 7.348",
    "M10, 8.676, 8.862, 9.732, 9.206"
  })
  void formulasOfIso965GiveTheTabulatedLimits(
      String name, double minorMax, double pitchMin, double majorMin, double nutPitchMax) {
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse(name), ThreadFit.MEDIUM);
    assertThat(limits.nutMinorMax() / MM).isCloseTo(minorMax, within(1e-9));
    assertThat(limits.screwPitchMin() / MM).isCloseTo(pitchMin, within(1e-9));
    assertThat(limits.screwMajorMin() / MM).isCloseTo(majorMin, within(1e-9));
    assertThat(limits.nutPitchMax() / MM).isCloseTo(nutPitchMax, within(1e-9));
  }

  @ParameterizedTest(name = "{0}: strip areas {1} and {2} mm² for one diameter of engagement")
  @CsvSource({
    // printed external, internal; computed external, internal
    "M5, 35.366, 49.994, 35.365701, 49.993943",
    "M6, 51.875, 73.145, 51.874545, 73.145310",
    "M8, 97.290, 134.63, 97.289522, 134.62821",
    "M10, 155.80, 214.77, 155.79558, 214.76921"
  })
  void stripAreasAreThoseOfThePrintedTable(
      String name, double printedScrew, double printedNut, double screw, double nut) {
    ScrewThread thread = ScrewThread.parse(name);
    ThreadStrength strength =
        ThreadStrength.of(
            ThreadTolerance.of(thread, ThreadFit.MEDIUM), thread.diameter(), 800e6, 800e6);
    assertThat(strength.screwShearArea() * 1e6).isCloseTo(screw, within(1e-7 * screw + 1e-6));
    assertThat(strength.nutShearArea() * 1e6).isCloseTo(nut, within(1e-7 * nut + 1e-5));
    assertThat(strength.screwShearArea() * 1e6)
        .isCloseTo(printedScrew, within(5e-5 * printedScrew));
    assertThat(strength.nutShearArea() * 1e6).isCloseTo(printedNut, within(5e-5 * printedNut));
  }

  @ParameterizedTest(name = "{0} 2B/2A")
  @CsvSource({
    // CV-112 to CV-114: limits D1max, d2min, dmin, D2max (in) recalled from memory; strip areas per
    // inch of engagement (in2) computed independently from them
    "1/2-20, .457, .4619, .4906, .4731, 0.79908674, 1.0820802",
    "10-32, .164, .1658, .1831, .1736, 0.27474447, 0.38857323",
    "1/4-28, .220, .2225, .2425, .2311, 0.37350770, 0.52131706"
  })
  void formulasOfTheUnifiedStandardGiveTheTabulatedLimits(
      String name,
      double minorMax,
      double pitchMin,
      double majorMin,
      double nutPitchMax,
      double screwArea,
      double nutArea) {
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse(name), ThreadFit.MEDIUM);
    assertThat(limits.nutMinorMax() / INCH).isCloseTo(minorMax, within(1e-9));
    assertThat(limits.screwPitchMin() / INCH).isCloseTo(pitchMin, within(1e-9));
    assertThat(limits.screwMajorMin() / INCH).isCloseTo(majorMin, within(1e-9));
    assertThat(limits.nutPitchMax() / INCH).isCloseTo(nutPitchMax, within(1e-9));
    ThreadStrength strength = ThreadStrength.of(limits, INCH, 800e6, 800e6);
    assertThat(strength.screwShearArea() / (INCH * INCH)).isCloseTo(screwArea, within(1e-6));
    assertThat(strength.nutShearArea() / (INCH * INCH)).isCloseTo(nutArea, within(1e-6));
  }

  @Test
  void workedLimitsOfAnExtraFineThread() {
    // CV-115, Machinery's Handbook ed. 31, worked example 1/2-28 UNEF-2A and the 2B minor diameter.
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse("1/2-28 UNEF"), ThreadFit.MEDIUM);
    assertThat(limits.screwMajorMax() / INCH).isCloseTo(.4989, within(1e-9));
    assertThat(limits.screwMajorMin() / INCH).isCloseTo(.4924, within(1e-9));
    assertThat(limits.screwPitchMax() / INCH).isCloseTo(.4757, within(1e-9));
    assertThat(limits.screwPitchMin() / INCH).isCloseTo(.4720, within(1e-9));
    assertThat(limits.nutMinorMin() / INCH).isCloseTo(.461, within(1e-9));
  }

  @ParameterizedTest(name = "{0}: {1}..{2} and {3}..{4}")
  @CsvSource({
    // Whole-table values recalled from memory, not confirmed elsewhere: screw major, screw pitch
    // diameter and nut minor, nut pitch diameter limits of the ordinary fit, mm.
    "M3, 2.874, 2.980, 2.580, 2.655, 2.459, 2.599, 2.675, 2.775",
    "M4, 3.838, 3.978, 3.433, 3.523, 3.242, 3.422, 3.545, 3.663",
    "M8x1, 7.794, 7.974, 7.212, 7.324, 6.917, 7.153, 7.350, 7.500",
    "M10x0.75, 9.838, 9.978, 9.391, 9.491, 9.188, 9.378, 9.513, 9.645",
    "M12, 11.701, 11.966, 10.679, 10.829, 10.106, 10.441, 10.863, 11.063",
    "M16, 15.682, 15.962, 14.503, 14.663, 13.835, 14.210, 14.701, 14.913",
    "M20, 19.623, 19.958, 18.164, 18.334, 17.294, 17.744, 18.376, 18.600"
  })
  void limitsRecalledFromTheTablesOfIso965(
      String name,
      double majorMin,
      double majorMax,
      double pitchMin,
      double pitchMax,
      double nutMinorMin,
      double nutMinorMax,
      double nutPitchMin,
      double nutPitchMax) {
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse(name), ThreadFit.MEDIUM);
    assertThat(limits.screwMajorMin() / MM).isCloseTo(majorMin, within(1e-9));
    assertThat(limits.screwMajorMax() / MM).isCloseTo(majorMax, within(1e-9));
    assertThat(limits.screwPitchMin() / MM).isCloseTo(pitchMin, within(1e-9));
    assertThat(limits.screwPitchMax() / MM).isCloseTo(pitchMax, within(1e-9));
    assertThat(limits.nutMinorMin() / MM).isCloseTo(nutMinorMin, within(1e-9));
    assertThat(limits.nutMinorMax() / MM).isCloseTo(nutMinorMax, within(1e-9));
    assertThat(limits.nutPitchMin() / MM).isCloseTo(nutPitchMin, within(1e-9));
    assertThat(limits.nutPitchMax() / MM).isCloseTo(nutPitchMax, within(1e-9));
  }

  @Test
  void closeUnifiedFitRecalledFromTheTables() {
    // 1/2-20 UNF-3A and -3B, recalled from memory: .5000 .4919, .4675 .4643, .4460 .4537,
    // .4675 .4717 in.
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse("1/2-20"), ThreadFit.CLOSE);
    assertThat(limits.screwMajorMax() / INCH).isCloseTo(.5000, within(1e-9));
    assertThat(limits.screwMajorMin() / INCH).isCloseTo(.4919, within(1e-9));
    assertThat(limits.screwPitchMin() / INCH).isCloseTo(.4643, within(1e-9));
    assertThat(limits.nutMinorMax() / INCH).isCloseTo(.4537, within(1.5e-4));
    assertThat(limits.nutPitchMax() / INCH).isCloseTo(.4717, within(1e-9));
  }
}
