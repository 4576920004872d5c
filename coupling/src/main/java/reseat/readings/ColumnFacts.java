package reseat.readings;

import reseat.units.PrintedNumber;

/**
 * What is known of a probe column beside its readings; 0 stands for not known.
 *
 * @param gaugeNoise standard deviation of repeated readings of an undisturbed mount, m or rad
 * @param resolution step of the gauge, m or rad
 * @param target largest standard deviation allowed, m or rad
 */
public record ColumnFacts(double gaugeNoise, double resolution, double target) {

  /** Nothing is known. */
  public static final ColumnFacts NONE = new ColumnFacts(0, 0, 0);

  /** Refuses negative figures. */
  public ColumnFacts {
    if (!(gaugeNoise >= 0) || !(resolution >= 0) || !(target >= 0)) {
      throw new IllegalArgumentException(
          "gauge noise, resolution and target must not be negative, found "
              + PrintedNumber.shortest(gaugeNoise)
              + ", "
              + PrintedNumber.shortest(resolution)
              + ", "
              + PrintedNumber.shortest(target));
    }
  }
}
