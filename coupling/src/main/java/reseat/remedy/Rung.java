package reseat.remedy;

import java.util.List;
import reseat.designfile.Alteration;

/**
 * One value of a lever.
 *
 * @param to as it would be typed
 * @param distance how large the change is
 * @param way which way the value goes: -1 down, 1 up, 0 neither
 * @param alterations keys that change, with those that follow
 */
record Rung(String to, double distance, int way, List<Alteration> alterations) {

  /** Copies the list. */
  Rung {
    alterations = List.copyOf(alterations);
  }
}
