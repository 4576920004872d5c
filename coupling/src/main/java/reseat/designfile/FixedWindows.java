package reseat.designfile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import reseat.units.QuantityKind;

/**
 * Usual sizes of values that need not be seen beside others: gaps of adhesive, moduli, expansions,
 * scatters, targets. All by judgement from what the trade uses; wide, so that only another order of
 * size is doubted.
 */
final class FixedWindows {

  private record Window(String what, Usual usual) {}

  private static final Usual TOLERANCE = Usual.of(5e-9, 2e-8, 0.3e-3, 1e-3);
  private static final Usual ANGLE = Usual.of(1e-7, 1e-6, 0.02, 0.09);
  private static final Usual WARMTH = Usual.of(0, 0, 10, 15);
  private static final double GIGA = 1e9;
  private static final double MEGA = 1e6;
  private static final Map<String, Window> WINDOWS = windows();

  private FixedWindows() {}

  private static Map<String, Window> windows() {
    Map<String, Window> w = new HashMap<>();
    materials(w);
    bonds(w);
    devices(w);
    put(w, "targets.repeatability", "a target", Usual.of(5e-9, 1e-8, 50e-6, 100e-6));
    put(w, "targets.height", "a target", Usual.of(2e-8, 1e-7, 0.1e-3, 0.3e-3));
    put(w, "targets.tilt", "a target", Usual.of(1e-8, 1e-7, 5e-3, 0.02));
    put(w, "size.least_stiffness", "a stiffness", Usual.of(2e5, 1e6, 2e9, 1e10));
    put(w, "remount.seating_force", "a seating force", Usual.of(0.05, 0.5, 500, 2000));
    put(w, "remount.temperature_scatter", "a scatter of temperature", Usual.of(0, 0, 5, 8));
    put(w, "remount.film_scatter", "a film", Usual.of(0, 0, 1e-6, 2e-6));
    put(w, "preload.line_wander", "a wander of the line of pull", Usual.of(0, 0, 3e-3, 1e-2));
    put(w, "preload.direction_wander", "a wander of the pull", Usual.of(0, 0, 0.05, 0.18));
    put(w, "keep_clear.gap", "a gap", Usual.of(2e-6, 1e-5, 20e-3, 60e-3));
    put(w, "film_pad.film_thickness", "a film", Usual.of(5e-7, 1e-6, 5e-5, 2e-4));
    put(w, "film_pad.film_stiffness", "the stiffness of a film", Usual.of(1e5, 1e6, 1e9, 1e10));
    put(w, "film_pad.tilt_stiffness", "a tilt stiffness", Usual.of(1, 10, 1e6, 1e7));
    put(w, "indicator.reads", "a reading", Usual.of(0, 0, 1e-3, 5e-3));
    put(w, "indicator.wanted", "a wanted reading", Usual.of(0, 0, 1e-3, 5e-3));
    put(w, "slotting.depth_error", "an error of depth", TOLERANCE);
    put(
        w,
        "mounting.axial_stiffness",
        "the stiffness of a mounting",
        Usual.of(1e5, 1e6, 5e9, 5e10));
    put(w, "mounting.lateral_stiffness", "a mounting's stiffness", Usual.of(1e5, 1e6, 5e9, 5e10));
    return w;
  }

  private static void materials(Map<String, Window> w) {
    Usual expansion = Usual.of(1e-9, 5e-8, 60e-6, 200e-6);
    put(
        w,
        "material.youngs_modulus",
        "a modulus",
        Usual.of(GIGA, 2 * GIGA, 800 * GIGA, 1300 * GIGA));
    put(w, "adhesive.youngs_modulus", "a modulus", Usual.of(MEGA, 1e7, 2e10, 1e11));
    put(w, "material.density", "a density", Usual.of(300, 900, 20e3, 25e3));
    put(w, "material.expansion", "an expansion", expansion);
    put(w, "remount.holder_expansion", "an expansion", expansion);
    Usual strength = Usual.of(5 * MEGA, 2e7, 4 * GIGA, 7 * GIGA);
    put(w, "material.yield_strength", "a yield strength", strength);
    put(w, "material.tensile_strength", "a strength", strength);
    put(w, "material.flexural_strength", "a strength", strength);
    Usual pressed = Usual.of(5 * MEGA, 2e7, 9 * GIGA, 15 * GIGA);
    put(w, "material.compressive_yield_strength", "a yield strength", pressed);
    put(w, "material.compressive_strength", "a strength", pressed);
  }

  private static void bonds(Map<String, Window> w) {
    put(w, "bond.gap", "a gap of adhesive", Usual.of(5e-6, 1e-5, 0.5e-3, 1e-3));
    put(w, "bond.fillet", "a fillet", Usual.of(1e-5, 5e-5, 3e-3, 8e-3));
    put(w, "bond.hottest", "a temperature in service", Usual.of(230, 250, 450, 520));
    put(w, "adhesive.softens_at", "a temperature", Usual.of(230, 250, 500, 600));
    put(w, "adhesive.shear_strength", "a strength", Usual.of(2e5, MEGA, 6e7, 2e8));
    put(w, "adhesive.tensile_strength", "a strength", Usual.of(2e5, MEGA, 1.2e8, 3e8));
  }

  private static void devices(Map<String, Window> w) {
    Usual part = Usual.of(3e-4, 1e-3, 0.15, 0.4);
    Usual thin = Usual.of(5e-5, 1e-4, 1e-2, 3e-2);
    Usual again = Usual.of(0, 0, 0.3e-3, 2e-3);
    for (String key : List.of("outer_diameter", "inner_diameter", "mean_diameter", "free_length")) {
      put(w, "device." + key, "a length", part);
    }
    for (String key : List.of("diameter", "length", "bore", "grip_length", "head_diameter")) {
      put(w, "device." + key, "a length", part);
    }
    for (String key : List.of("thickness", "free_height", "wire")) {
      put(w, "device." + key, "a thickness", thin);
    }
    put(w, "device.deflection", "a deflection", Usual.of(1e-5, 5e-5, 60e-3, 0.2));
    put(w, "device.gap", "a gap", Usual.of(1e-5, 5e-5, 20e-3, 60e-3));
    put(w, "device.deflection_tolerance", "a scatter of travel", again);
    put(w, "device.gap_tolerance", "a scatter of a gap", again);
    put(w, "device.shear_modulus", "a modulus", Usual.of(2e9, 3e10, 1e11, 2e11));
    put(w, "device.shear_strength", "a strength", Usual.of(2e7, 1e8, 2e9, 4e9));
    put(w, "device.pressure", "a pressure of air", Usual.of(5e3, 3e4, 1.2e6, 3e6));
    put(w, "device.expansion_difference", "an expansion", Usual.of(0, 0, 60e-6, 200e-6));
  }

  private static void put(Map<String, Window> w, String key, String what, Usual usual) {
    w.put(key, new Window(what, usual));
  }

  /** Looks at all values of a file. */
  static void look(Doubts doubts) {
    for (Written w : doubts.written().values()) {
      Window window = WINDOWS.get(place(w.key()));
      if (window != null) {
        doubts.look(w.key(), window.usual(), window.what());
      } else if (w.key().startsWith("tolerances.")) {
        tolerance(w, doubts);
      }
    }
  }

  private static void tolerance(Written w, Doubts doubts) {
    QuantityKind kind = w.quantity().kind();
    if (kind == QuantityKind.LENGTH) {
      doubts.look(w.key(), TOLERANCE, "a tolerance");
    } else if (kind == QuantityKind.ANGLE) {
      doubts.look(w.key(), ANGLE, "a tolerance");
    } else if (kind == QuantityKind.TEMPERATURE_DIFFERENCE) {
      doubts.look(w.key(), WARMTH, "a difference of temperature");
    }
  }

  /** Last table and key of a path, without numbers, the limit of a scatter and names of axes. */
  static String place(String path) {
    int end = path.length();
    if (path.endsWith(".limit")) {
      end -= ".limit".length();
    }
    if (path.startsWith("targets.repeatability.")) {
      return "targets.repeatability";
    }
    int bracket = path.lastIndexOf(']', end - 1) == end - 1 ? path.lastIndexOf('[', end - 1) : end;
    int dot = path.lastIndexOf('.', bracket - 1);
    if (dot < 0) {
      return path.substring(0, bracket);
    }
    int tableEnd = path.charAt(dot - 1) == ']' ? path.lastIndexOf('[', dot) : dot;
    int tableStart = path.lastIndexOf('.', tableEnd - 1) + 1;
    return path.substring(tableStart, tableEnd) + path.substring(dot, bracket);
  }
}
