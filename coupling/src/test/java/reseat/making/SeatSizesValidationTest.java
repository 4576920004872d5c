package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;

/**
 * Sizes of seats against the closed formulas of the shop, computed independently from the stated
 * formula.
 */
class SeatSizesValidationTest {

  private static double size(String design, MadeFeature.Kind feature, MadeDimension.Kind kind) {
    CouplingDesign read = DesignFile.read(design).design().orElseThrow();
    return MadeHalf.of(read, Half.BASE).ofKind(feature).get(0).sizes().stream()
        .filter(d -> d.kind() == kind)
        .findFirst()
        .orElseThrow()
        .value();
  }

  /**
   * Height over the ball H = R + R/sin h - (W/2)/tan h with half the included angle h: a ball of
   * 12.700 mm in 90 degrees of 10.500 mm mouth stands 10.080 mm over the face, so its centre 3.730.
   */
  @Test
  void theBallStandsOverTheFaceAsTheShopFormulaSays() {
    String text =
        Starter.TOOL_POST.text().replace("mouth_width = \"0.413 in\"", "mouth_width = \"10.5 mm\"");
    double over = size(text, MadeFeature.Kind.VEE_GROOVE, MadeDimension.Kind.BALL_OVER_FACE);
    assertThat(over + 6.35e-3).isCloseTo(10.080e-3, within(0.5e-6));
  }

  /** A vee of 90 degrees is half as deep as it is wide. */
  @Test
  void aRightAngledVeeIsHalfAsDeepAsWide() {
    String text = Starter.TOOL_POST.text();
    assertThat(size(text, MadeFeature.Kind.VEE_GROOVE, MadeDimension.Kind.DEPTH))
        .isCloseTo(0.413 * 0.0254 / 2, within(1e-9));
  }

  /** The corner of a cube: its flanks at acos(1/sqrt 3) carry a ball R sqrt 3 over the corner. */
  @Test
  void aBallInTheCornerOfACubeStandsRootThreeRadiiOverTheCorner() {
    String text = Starter.SENSOR_MOUNT.text();
    double depth = size(text, MadeFeature.Kind.TRIHEDRAL_SEAT, MadeDimension.Kind.DEPTH);
    double over = size(text, MadeFeature.Kind.TRIHEDRAL_SEAT, MadeDimension.Kind.BALL_OVER_FACE);
    assertThat(depth + over).isCloseTo(3e-3 * Math.sqrt(3), within(1e-8));
  }

  /** A ball in a cone of 90 degrees and mouth D: R root two over the apex, the face D/2 over it. */
  @Test
  void aBallInARightAngledConeStandsRootTwoRadiiOverItsApex() {
    String text = Starter.CONE_VEE_FLAT.text();
    double depth = size(text, MadeFeature.Kind.CONE, MadeDimension.Kind.DEPTH);
    double over = size(text, MadeFeature.Kind.CONE, MadeDimension.Kind.BALL_OVER_FACE);
    assertThat(depth).isCloseTo(3.5e-3, within(1e-9));
    assertThat(depth + over).isCloseTo(4e-3 * Math.sqrt(2), within(1e-9));
    CouplingDesign stand = DesignFile.read(text).design().orElseThrow();
    // it slides home from where it touches the edge of the mouth: D/2 - R sin 45 off the middle
    assertThat(CatchRange.of(stand.supports().get(0)))
        .isCloseTo(3.5e-3 - 4e-3 * Math.sqrt(0.5), within(1e-9));
  }

  /** On pins at 45 degrees the ball stands as high over their axes as they are from the middle. */
  @Test
  void onPinsAt45DegreesTheBallStandsHalfTheirSpacingOverTheirAxes() {
    String text = Starter.PALLET.text();
    assertThat(size(text, MadeFeature.Kind.POCKET, MadeDimension.Kind.BALL_OVER_AXES))
        .isCloseTo(21.213e-3 / 2, within(1e-6));
  }
}
