package reseat.seat;

import reseat.units.PrintedNumber;

/**
 * How far the worked surfaces of a groove reach.
 *
 * @param mouthWidth width of the groove at the face, m; infinite if not stated
 * @param length length of the groove, its middle under the ball, m; infinite if not stated
 * @param rootWidth width of the relief or flat at the root, m; zero for a sharp root
 * @param rootDepth depth of the relief below the level where the flanks end, m
 */
public record GrooveExtent(double mouthWidth, double length, double rootWidth, double rootDepth) {

  /** Refuses negative sizes and a root wider than the mouth. */
  public GrooveExtent {
    if (!(mouthWidth > 0) || !(length > 0) || !(rootWidth >= 0) || !(rootDepth >= 0)) {
      throw new IllegalArgumentException(
          "groove sizes must be positive: mouth width "
              + PrintedNumber.shortest(mouthWidth)
              + " m, length "
              + PrintedNumber.shortest(length)
              + " m, root width "
              + PrintedNumber.shortest(rootWidth)
              + " m, root depth "
              + PrintedNumber.shortest(rootDepth)
              + " m");
    }
    if (rootWidth >= mouthWidth) {
      throw new IllegalArgumentException(
          "the root relief ("
              + PrintedNumber.shortest(rootWidth)
              + " m) must be narrower than the mouth ("
              + PrintedNumber.shortest(mouthWidth)
              + " m)");
    }
  }

  /**
   * Returns an extent that limits nothing.
   *
   * @return unlimited mouth and length, sharp root
   */
  public static GrooveExtent unlimited() {
    return new GrooveExtent(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0, 0);
  }
}
