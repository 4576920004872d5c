package reseat.designfile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.elementary.Elementary;
import reseat.units.FilledText;
import reseat.units.Quantity;
import reseat.units.QuantityKind;

/**
 * Looks for angles in decimal degrees that may have been meant as degrees and minutes.
 *
 * <p>44.30 on a dividing head is 44 degrees 30 minutes. Only flank angles are looked at, and only
 * those whose digits after the point make a usual number of minutes (10, 15, 20, 30, 40, 45, 50).
 */
final class Angles {

  private static final String DECIMAL = "^\\s*(\\d{1,3})\\.(\\d{1,2})\\s*\\D.*$";

  private Angles() {}

  static void look(Section root, Problems problems) {
    if (root.isTable("layout")) {
      Section layout = root.child("layout").orElseThrow();
      flank(layout, "groove");
      flank(layout, "trihedral");
    }
    for (Section support : root.children("support")) {
      flank(support, "seat");
    }
  }

  private static void flank(Section ball, String key) {
    if (!ball.isTable(key)) {
      return;
    }
    Section seat = ball.child(key).orElseThrow();
    seat.quantity("flank_angle", QuantityKind.ANGLE);
    if (seat.asTyped("flank_angle").isEmpty()) {
      return;
    }
    Quantity q = seat.asTyped("flank_angle").get();
    double degrees = Elementary.toDegrees(q.value());
    if (degrees > 80 || degrees < 15) {
      seat.warn(
          "flank_angle",
          FilledText.of(
              "a flank at %.4g deg to the coupling plane is unusual; the flank angle is measured from"
                  + " the coupling plane, so a groove of %.4g deg included has flanks at %.4g deg",
              degrees, degrees, 90 - degrees / 2));
    }
    // most angles have no point, and the first regular expression of a run is dear
    if (q.text().indexOf('.') < 0) {
      return;
    }
    Matcher m = Pattern.compile(DECIMAL).matcher(q.text());
    if (!m.matches()) {
      return;
    }
    String digits = m.group(2).length() == 1 ? m.group(2) + "0" : m.group(2);
    int minutes = Integer.parseInt(digits);
    if (minutes % 5 == 0
        && (minutes % 10 == 0 || minutes % 15 == 0)
        && minutes > 0
        && minutes < 60
        && !(minutes == 50)) {
      int whole = Integer.parseInt(m.group(1));
      seat.warn(
          "flank_angle",
          FilledText.of(
              "%s is read as decimal degrees, %d°%04.1f'; if %d degrees %d minutes are meant, write"
                  + " \"%d deg %d min\" (%.4f deg)",
              q.text().strip(),
              whole,
              60 * (degrees - whole),
              whole,
              minutes,
              whole,
              minutes,
              whole + minutes / 60.0));
    }
  }
}
