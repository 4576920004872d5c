package reseat.design;

import java.util.List;
import java.util.Objects;
import reseat.ballmount.AdjustingScrews;

/**
 * Three adjusting screws to be set so that three indicators read what is wanted.
 *
 * @param screws screws and indicators in their places
 * @param screwNames names of the screws, in order
 * @param stationNames names of the indicators, in order
 * @param readings what the indicators read now, m; positive if the plate is high under them
 * @param wanted what they should read, m
 */
public record AdjustmentTask(
    AdjustingScrews screws,
    List<String> screwNames,
    List<String> stationNames,
    List<Double> readings,
    List<Double> wanted) {

  /** Copies the lists and checks that there are three of each. */
  public AdjustmentTask {
    Objects.requireNonNull(screws, "screws of an adjustment task must be given, found null");
    Objects.requireNonNull(
        screwNames, "screw names of an adjustment task must be given, found null");
    Objects.requireNonNull(
        stationNames, "station names of an adjustment task must be given, found null");
    Objects.requireNonNull(readings, "readings of an adjustment task must be given, found null");
    Objects.requireNonNull(wanted, "wanted of an adjustment task must be given, found null");
    screwNames = List.copyOf(screwNames);
    stationNames = List.copyOf(stationNames);
    readings = List.copyOf(readings);
    wanted = List.copyOf(wanted);
    for (List<?> three : List.of(screwNames, stationNames, readings, wanted)) {
      if (three.size() != 3) {
        throw new IllegalArgumentException(
            "three screws and three indicators with one reading each are needed, found "
                + three.size());
      }
    }
  }

  /**
   * Finds what to turn.
   *
   * @return one step for each screw, in order
   */
  public List<AdjustingScrews.Step> steps() {
    return screws.steps(readings, wanted);
  }
}
