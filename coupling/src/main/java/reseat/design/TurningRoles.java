package reseat.design;

/**
 * What the machine axes are to a turned part.
 *
 * @param radial place of the axis across the spindle, 0 to 2; its error counts twice in diameter
 * @param axial place of the axis along the spindle, 0 to 2
 * @param height place of the axis that is tangential to the part, 0 to 2
 */
public record TurningRoles(int radial, int axial, int height) {

  /** Refuses roles that are not three different axes. */
  public TurningRoles {
    boolean inside =
        radial >= 0 && radial <= 2 && axial >= 0 && axial <= 2 && height >= 0 && height <= 2;
    if (!inside || radial == axial || axial == height || height == radial) {
      throw new IllegalArgumentException(
          "radial, axial and height must be three different machine axes");
    }
  }
}
