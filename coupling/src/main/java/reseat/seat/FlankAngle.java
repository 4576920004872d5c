package reseat.seat;

import reseat.elementary.Elementary;
import reseat.units.FilledText;

/** What a flank angle may be. */
final class FlankAngle {

  private FlankAngle() {}

  /**
   * Returns the angle if a ball can rest on such a flank.
   *
   * @param angle angle between flank and coupling plane, rad
   * @return the same angle
   * @throws IllegalArgumentException if it is not between 1 and 89 degrees
   */
  static double checked(double angle) {
    double degrees = Elementary.toDegrees(angle);
    if (!(degrees >= 1 && degrees <= 89)) {
      throw new IllegalArgumentException(
          FilledText.of("flank angle must be between 1 and 89 deg, found %.4g deg", degrees));
    }
    return angle;
  }
}
