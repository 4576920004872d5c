package reseat.report.remount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import reseat.check.Measure;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.numerics.Distribution;
import reseat.remount.Cause;
import reseat.remount.CauseShares;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/** What causes the scatter of tool changes, and what was assumed of each cause. */
public final class RemountCauseText {

  private RemountCauseText() {}

  public static String of(CouplingDesign design, CauseShares shares, Screen screen) {
    return screen.all() ? whole(design, shares, screen) : brief(design, shares, screen);
  }

  /** Each cause alone: its standard deviation and its share of the variance, axis by axis. */
  private static String brief(CouplingDesign design, CauseShares shares, Screen screen) {
    if (shares.mounts() - shares.dropped() < 2) {
      return "What causes it cannot be told: too few changes seat.\n";
    }
    double largest = largest(shares);
    String unit = screen.figures().scatterUnit(largest);
    List<String> head = new ArrayList<>(List.of("cause alone: s, " + unit));
    for (int k = 0; k < 3; k++) {
      head.add(design.axes().axis(k).name());
      head.add("share");
    }
    head.add("assumed from change to change");
    TextTable table = new TextTable("lrrrrrrl", head.toArray(String[]::new));
    for (CauseShares.Share s : shares.causes()) {
      List<String> row = new ArrayList<>(List.of(s.cause().words()));
      for (int k = 0; k < 3; k++) {
        row.add(screen.figures().scatterNumber(s.alone().component(k), largest));
        row.add(percent(s.first().component(k)) + " %");
      }
      row.add(assumed(s.cause(), design, screen.figures()));
      table.row(row.toArray(String[]::new));
    }
    return table.text();
  }

  private static double largest(CauseShares shares) {
    double largest = 0;
    for (CauseShares.Share s : shares.causes()) {
      for (int k = 0; k < 3; k++) {
        largest = Math.max(largest, s.alone().component(k));
      }
    }
    return largest;
  }

  private static String whole(CouplingDesign design, CauseShares shares, Screen screen) {
    if (shares.mounts() - shares.dropped() < 2) {
      return "\nWhat causes it cannot be told: in some set no change seats.\n";
    }
    double largest = largest(shares);
    FigureText f = screen.figures();
    List<String> head = new ArrayList<>(List.of("cause alone: s, " + f.scatterUnit(largest)));
    for (int k = 0; k < 3; k++) {
      head.add(design.axes().axis(k).name());
      head.add("%");
    }
    head.add("assumed from change to change");
    TextTable table = new TextTable("lrrrrrrl", head.toArray(String[]::new));
    for (CauseShares.Share s : shares.causes()) {
      List<String> row = new ArrayList<>(List.of(s.cause().words()));
      for (int k = 0; k < 3; k++) {
        row.add(f.scatterNumber(s.alone().component(k), largest));
        row.add(percent(s.first().component(k)) + "/" + percent(s.total().component(k)));
      }
      row.add(assumed(s.cause(), design, screen.figures()));
      table.row(row.toArray(String[]::new));
    }
    List<String> row = new ArrayList<>(List.of("interaction"));
    for (int k = 0; k < 3; k++) {
      row.add("");
      row.add(
          FilledText.of(
              "%.0f±%.0f",
              100 * shares.interaction().component(k),
              Math.ceil(100 * shares.interactionError().component(k))));
    }
    row.add("not explained by single causes, ± how well that is known");
    table.row(row.toArray(String[]::new));
    return "\nWhat causes it\n"
        + table.text()
        + Paragraph.of(
            "  ",
            "s: standard deviation when the cause alone is at work. %: share of the variance that"
                + " it causes alone / that it has a part in. From "
                + shares.mounts()
                + " changes in each of "
                + CauseShares.SETS
                + " sets"
                + (shares.dropped() == 0
                    ? "."
                    : "; " + shares.dropped() + " left out that do not seat."));
  }

  /** A share is estimated, so it can come out a little below nothing or above all. */
  private static String percent(double share) {
    return FilledText.of("%.0f", 100 * Math.min(1, Math.max(0, share)));
  }

  private static String assumed(Cause cause, CouplingDesign d, FigureText f) {
    return switch (cause) {
      case FRICTION ->
          PageNumbers.figures(d.friction().nominal(), 2)
              + shown(d.remount().friction(), QuantityKind.RATIO, f)
              + " at each contact";
      case PRELOAD_SIZE -> sizes(d, f);
      case PRELOAD_LINE -> lines(d, f);
      case APPROACH -> "1 to 3 contacts close last, at random";
      case TEMPERATURE ->
          "holder" + shown(d.remount().temperature(), QuantityKind.TEMPERATURE_DIFFERENCE, f);
      case FILM -> "each contact" + shown(d.remount().film(), QuantityKind.LENGTH, f);
    };
  }

  private static String sizes(CouplingDesign d, FigureText f) {
    List<String> parts = new ArrayList<>();
    for (Preload p : d.preloads()) {
      parts.add(p.name() + shown(p.forceSpread(), QuantityKind.RATIO, f));
    }
    return parts.isEmpty() ? "no preload" : joined(parts);
  }

  private static String lines(CouplingDesign d, FigureText f) {
    List<String> parts = new ArrayList<>();
    boolean wanders = false;
    for (Preload p : d.preloads()) {
      wanders |= p.lineSpread().limit() > 0 || p.tiltSpread().limit() > 0;
      parts.add(
          p.name()
              + spread(p.lineSpread().limit(), QuantityKind.LENGTH, f)
              + (p.tiltSpread().limit() > 0
                  ? "," + spread(p.tiltSpread().limit(), QuantityKind.ANGLE, f)
                  : ""));
    }
    return parts.isEmpty() ? "no preload" : wanders ? joined(parts) : "no line wanders";
  }

  /** All parts if they are few, else the first with the number of the others. */
  private static String joined(List<String> parts) {
    return parts.size() == 1 ? parts.get(0) : parts.get(0) + " and " + (parts.size() - 1) + " more";
  }

  private static String spread(double limit, QuantityKind kind, FigureText f) {
    return " ±"
        + switch (kind) {
          case RATIO -> FigureText.percent(limit);
          case ANGLE -> f.of(Measure.ANGLE, limit);
          default -> f.quantity(limit, kind);
        };
  }

  private static String shown(Distribution spread, QuantityKind kind, FigureText f) {
    return spread(spread.limit(), kind, f) + " " + spread.shape().name().toLowerCase(Locale.ROOT);
  }
}
