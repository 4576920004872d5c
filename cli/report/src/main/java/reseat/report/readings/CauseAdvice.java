package reseat.report.readings;

import reseat.readings.ScatterCause;

/** What to do first about a cause of scatter: shop practice, no source. */
final class CauseAdvice {

  private CauseAdvice() {}

  /** A sentence without its full stop. */
  static String of(ScatterCause cause) {
    return switch (cause) {
      case FRICTION ->
          "clean and oil balls and seats, or use a smoother or lower-friction pair; seat with a light"
              + " tap or a second tightening, always in the same way";
      case PRELOAD ->
          "set the preload by spring deflection, a stop or a magnet instead of by torque";
      case PRELOAD_LINE ->
          "let the preload pull along its axis: guide the drawbolt, seat it on a spherical washer, and"
              + " look for play and a bent spring";
      case DIRT ->
          "wipe and blow off balls and seats before every mount; look for a burr or a mark at each"
              + " contact";
      case TEMPERATURE ->
          "let the holder soak before reading, keep hands off it, and record its temperature with every"
              + " mount";
      case GAUGE ->
          "repeat readings of an undisturbed mount; stiffen the stand, or use a gauge of finer step";
      case OTHER -> "change one thing at a time and repeat the test";
    };
  }
}
