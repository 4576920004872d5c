package reseat.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Data sets of the NIST/SEMATECH e-Handbook and of the NIST statistical reference data sets. */
final class HandbookData {

  /**
   * Gear diameters, ten batches of ten, NIST/SEMATECH e-Handbook (recalled from memory; mean
   * 0.99764 and s 0.006278908 confirmed by computation).
   */
  static final DoubleStreamOf GEAR =
      () ->
          DoubleStream.of(
              1.006, 0.996, 0.998, 1.000, 0.992, 0.993, 1.002, 0.999, 0.994, 1.000, //
              0.998, 1.006, 1.000, 1.002, 0.997, 0.998, 0.996, 1.000, 1.006, 0.988, //
              0.991, 0.987, 0.997, 0.999, 0.995, 0.994, 1.000, 0.999, 0.996, 0.996, //
              1.005, 1.002, 0.994, 1.000, 0.995, 0.994, 0.998, 0.996, 1.002, 0.996, //
              0.998, 0.998, 0.982, 0.990, 1.002, 0.984, 0.996, 0.993, 0.980, 0.996, //
              1.009, 1.013, 1.009, 0.997, 0.988, 1.002, 0.995, 0.998, 0.981, 0.996, //
              0.990, 1.004, 0.996, 1.001, 0.998, 1.000, 1.018, 1.010, 0.996, 1.002, //
              0.998, 1.000, 1.006, 1.000, 1.002, 0.996, 0.998, 0.996, 1.002, 1.006, //
              1.002, 0.998, 0.996, 0.995, 0.996, 1.004, 1.004, 0.998, 0.999, 0.991, //
              0.991, 0.995, 0.984, 0.994, 0.997, 0.997, 0.991, 0.998, 1.004, 0.997);

  /**
   * Resistivity of silicon on five instruments, five readings each, NIST statistical reference data
   * set SiRstv (recalled from memory, confirmed by computation against its certified F).
   */
  static final DoubleStreamOf SILICON =
      () ->
          DoubleStream.of(
              196.3052, 196.1240, 196.1890, 196.2569, 196.3403, //
              196.3042, 196.3825, 196.1669, 196.3257, 196.0422, //
              196.1303, 196.2005, 196.2889, 196.0343, 196.1811, //
              196.2795, 196.1748, 196.1494, 196.1485, 195.9885, //
              196.2119, 196.1051, 196.1850, 196.0052, 196.2090);

  /**
   * Rosner's 54 values, NIST/SEMATECH e-Handbook section on the generalised extreme deviate test
   * (recalled from memory; all ten printed statistics confirmed by computation).
   */
  static final DoubleStreamOf ROSNER =
      () ->
          DoubleStream.of(
              -0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56,
              1.58, 1.65, 1.69, 1.70, 1.76, 1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.10,
              2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47, 2.54, 2.62, 2.64, 2.90, 2.92,
              2.92, 2.93, 3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01);

  private HandbookData() {}

  /** A data set that hands out a fresh copy each time. */
  interface DoubleStreamOf {

    /**
     * Opens the set.
     *
     * @return its values in order
     */
    DoubleStream stream();

    /**
     * Copies the set.
     *
     * @return its values in order
     */
    default double[] toArray() {
      return stream().toArray();
    }
  }

  /**
   * Names groups of equal size.
   *
   * @param groups number of groups
   * @param size values in each
   * @return a name for each value, group by group
   */
  static List<String> groupNames(int groups, int size) {
    List<String> names = new ArrayList<>();
    IntStream.range(0, groups * size).forEach(i -> names.add("group " + (i / size + 1)));
    return names;
  }
}
