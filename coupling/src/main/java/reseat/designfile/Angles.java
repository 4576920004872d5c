package reseat.designfile;
import reseat.units.FilledText;
import reseat.elementary.Elementary;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks for angles in decimal degrees that may have been meant as degrees and minutes.
 *
 * <p>44.30 on a dividing head is 44 degrees 30 minutes. Only flank angles of seats are looked at,
 * and only those whose digits after the point make a usual number of minutes (10, 15, 20, 30, 40,
 * 45).
 */
final class Angles {

  private static final String DECIMAL = "^\\s*(\\d{1,3})\\.(\\d{1,2})\\s*\\D.*$";
  private static final Usual FLANK =
      Usual.of(Elementary.toRadians(15), Elementary.toRadians(15), Elementary.toRadians(80), Elementary.toRadians(80));
  private static final Usual ANY =
      new Usual(0, 0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, "judgement");

  private Angles() {}

  static void look(Doubts doubts) {
    for (Written w : doubts.written().values()) {
      if (w.key().endsWith(".flank_angle") && !w.key().startsWith("tolerances.")) {
        flank(w, doubts);
      }
    }
  }

  private static void flank(Written w, Doubts doubts) {
    double degrees = Elementary.toDegrees(w.value());
    if (w.value() > FLANK.high() * (1 + 1e-9) || w.value() < FLANK.low() * (1 - 1e-9)) {
      double flanks = 90 - degrees / 2;
      String reason =
          FilledText.of("a flank at %.4g deg to the coupling plane is unusual; the flank angle is measured from"
                  + " the coupling plane, so a groove of %.4g deg included has flanks at %.4g deg",
              degrees,
              degrees,
              flanks);
      String meant = FilledText.of("%.4g deg", flanks);
      doubts.add(w, FLANK, reason, new LikelyValue(meant, Elementary.toRadians(flanks)));
      return;
    }
    // most angles have no point, and the first regular expression of a run is dear
    if (w.text().indexOf('.') < 0) {
      return;
    }
    Matcher m = Pattern.compile(DECIMAL).matcher(w.text());
    if (!m.matches()) {
      return;
    }
    String digits = m.group(2).length() == 1 ? m.group(2) + "0" : m.group(2);
    int minutes = Integer.parseInt(digits);
    boolean usual = minutes % 10 == 0 || minutes % 15 == 0;
    if (usual && minutes > 0 && minutes < 60 && minutes != 50) {
      int whole = Integer.parseInt(m.group(1));
      String reason =
          FilledText.of("%s is read as decimal degrees, %d°%04.1f'",
              w.text(),
              whole,
              60 * (degrees - whole));
      String meant = whole + " deg " + minutes + " min";
      double value = Elementary.toRadians(whole + minutes / 60.0);
      doubts.add(w, ANY, reason, new LikelyValue(meant, value));
    }
  }
}
