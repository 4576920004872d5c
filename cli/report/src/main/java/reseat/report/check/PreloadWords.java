package reseat.report.check;

import reseat.preload.BenchSetting;
import reseat.preload.DeviceCaution;
import reseat.report.form.FigureText;

/** What is said of preloads: their line, scatter and devices, and whether they pull home. */
final class PreloadWords {

  private PreloadWords() {}

  static String of(Spoken s) {
    return switch (s.statement().key()) {
      case PRELOAD_LINE ->
          "the line of action of "
              + s.name(0)
              + " may move sideways "
              + s.amount(1)
              + " before "
              + s.name(2)
              + " lifts off"
              + (s.absent(3) ? "." : "; it wanders by " + s.amount(3) + ".");
      case PRELOAD_SCATTER ->
          "preload scatter of ±"
              + s.amount(0)
              + " moves the tool point by up to "
              + s.amount(1)
              + " along "
              + s.name(2)
              + (s.absent(3)
                  ? "; no target is set along any axis."
                  : "; the target for all causes together is " + s.amount(3) + ".");
      case STATE_TARGETS -> "State repeatability targets to have it judged.";
      case DEVICE_SETTING -> setting(s);
      case SETTING ->
          ((BenchSetting.Kind) s.term(0)).label()
              + " "
              + s.figures().quantity(s.si(1), ((BenchSetting.Kind) s.term(0)).quantity());
      case BAND_AIM ->
          "Allowed are "
              + s.figures().forces(s.si(0), s.si(1))
              + (s.absent(2)
                  ? "; the device cannot be set so low."
                  : "; aim between " + s.inner(2) + " and " + s.inner(3) + ".");
      case BAND_TOO_NARROW ->
          "Allowed are " + s.figures().forces(s.si(0), s.si(1)) + ", too narrow for its scatter.";
      case BAND_OUT_OF_REACH ->
          "Allowed are "
              + s.figures().forces(s.si(0), s.si(1))
              + ", which this device cannot be set to.";
      case ALL_IT_GIVES -> "as much as it gives";
      case MEASURE_FORCE ->
          "Measure the force, or take a device that keeps it within ±" + s.amount(0) + ".";
      case DEVICE_CAUTION ->
          s.name(0)
              + ": "
              + ((DeviceCaution) s.term(1)).text()
              + (s.absent(2) ? "" : " Stored: " + s.amount(2) + " J.");
      case SEATS_BELOW ->
          s.name(2)
              + " closes last: a moving holder seats by itself below a friction of "
              + s.amount(0)
              + ", one at rest below "
              + (Double.isInfinite(s.si(1)) ? s.amount(0) : s.amount(1))
              + "; expected is "
              + s.amount(3)
              + " to "
              + s.amount(4)
              + ".";
      default ->
          "the holder seats by itself at any friction up to "
              + s.amount(0)
              + " and beyond; expected is "
              + s.amount(3)
              + " to "
              + s.amount(4)
              + ".";
    };
  }

  private static String setting(Spoken s) {
    double perKelvin = s.si(7);
    boolean closelyRepeated = s.si(4) < 0.5e-3;
    boolean closelyMade = s.si(6) < 0.5e-3;
    return s.name(0)
        + ": for "
        + s.amount(1)
        + (s.absent(2) ? "" : " set " + s.inner(2))
        + "."
        + (s.absent(3) ? "" : " " + s.inner(3))
        + (closelyRepeated
            ? ""
            : " From change to change ±" + s.amount(4) + " (" + s.name(5) + ").")
        + (closelyMade ? "" : " From device to device ±" + s.amount(6) + ".")
        + (Math.abs(perKelvin) < 0.5e-5
            ? ""
            : " For each kelvin " + FigureText.percent(perKelvin) + ".");
  }
}
