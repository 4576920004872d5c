package reseat.verification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Data sets printed in handbooks: recalled from memory, each confirmed by computing the figures
 * that are printed with it.
 */
enum HandbookSeries {
  /** Gear diameters, ten batches of ten, NIST/SEMATECH e-Handbook. */
  GEAR(
      10,
      "1006 996 998 1000 992 993 1002 999 994 1000 998 1006 1000 1002 997 998 996 1000 1006 988"
          + " 991 987 997 999 995 994 1000 999 996 996 1005 1002 994 1000 995 994 998 996 1002 996"
          + " 998 998 982 990 1002 984 996 993 980 996 1009 1013 1009 997 988 1002 995 998 981 996"
          + " 990 1004 996 1001 998 1000 1018 1010 996 1002 998 1000 1006 1000 1002 996 998 996"
          + " 1002 1006 1002 998 996 995 996 1004 1004 998 999 991 991 995 984 994 997 997 991 998"
          + " 1004 997",
      1e3),
  /** Resistivity of silicon, five instruments, NIST statistical reference data set SiRstv. */
  SILICON(
      5,
      "1963052 1961240 1961890 1962569 1963403 1963042 1963825 1961669 1963257 1960422 1961303"
          + " 1962005 1962889 1960343 1961811 1962795 1961748 1961494 1961485 1959885 1962119"
          + " 1961051 1961850 1960052 1962090",
      1e4),
  /** Rosner's 54 values, NIST/SEMATECH e-Handbook. */
  ROSNER(
      54,
      "-25 68 94 115 120 126 126 134 138 143 149 149 155 156 158 165 169 170 176 177 181 191 194"
          + " 196 199 206 209 210 214 215 223 224 226 235 237 240 247 254 262 264 290 292 292 293"
          + " 321 326 330 359 368 430 464 534 542 601",
      1e2);

  private final int groupSize;
  private final String digits;
  private final double divisor;

  HandbookSeries(int groupSize, String digits, double divisor) {
    this.groupSize = groupSize;
    this.digits = digits;
    this.divisor = divisor;
  }

  /**
   * Returns the values.
   *
   * @return a new array, in the printed order
   */
  double[] toArray() {
    return DoubleStream.of(
            Arrays.stream(digits.split(" ", -1)).mapToDouble(Double::parseDouble).toArray())
        .map(v -> v / divisor)
        .toArray();
  }

  /**
   * Names the group of each value.
   *
   * @return one name per value
   */
  List<String> groups() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < toArray().length; i++) {
      names.add("group " + i / groupSize);
    }
    return names;
  }
}
