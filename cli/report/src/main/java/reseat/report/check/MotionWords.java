package reseat.report.check;

import reseat.elementary.Elementary;
import reseat.equilibrium.FreeMotion;
import reseat.space.Vec3;
import reseat.units.FilledText;

/** A motion of the holder in words. */
final class MotionWords {

  private MotionWords() {}

  /** For instance {@code turning about a line along z through (0.0, 12.0, 0.0) mm}. */
  static String of(FreeMotion m) {
    return switch (m.kind()) {
      case SLIDE -> "sliding along " + along(m.direction());
      case TURN -> "turning about a line along " + along(m.direction()) + " through " + point(m);
      case SCREW ->
          FilledText.of(
              "turning about a line along %s through %s while advancing %.2f mm per degree",
              along(m.direction()), point(m), 1e3 * m.pitch() * Elementary.toRadians(1));
    };
  }

  /** The motion that a statement speaks of. */
  static String of(Spoken s) {
    return of(
        new FreeMotion(
            (FreeMotion.Kind) s.term(0),
            new Vec3(s.si(1), s.si(2), s.si(3)),
            new Vec3(s.si(4), s.si(5), s.si(6)),
            s.si(7)));
  }

  private static String along(Vec3 direction) {
    Vec3[] axes = {Vec3.X, Vec3.Y, Vec3.Z};
    String[] names = {"x", "y", "z"};
    for (int i = 0; i < 3; i++) {
      if (Math.abs(direction.dot(axes[i])) > 0.99999) {
        return names[i];
      }
    }
    return FilledText.of(
        "(%.3f, %.3f, %.3f)", clean(direction.x()), clean(direction.y()), clean(direction.z()));
  }

  private static String point(FreeMotion m) {
    return FilledText.of(
        "(%.1f, %.1f, %.1f) mm",
        clean(1e3 * m.through().x()), clean(1e3 * m.through().y()), clean(1e3 * m.through().z()));
  }

  /** Avoids a printed minus zero. */
  private static double clean(double v) {
    return Math.abs(v) < 5e-4 ? 0 : v;
  }
}
