package reseat.report.check;

import reseat.check.AllowedPreload;
import reseat.check.Measure;
import reseat.report.form.FigureText;
import reseat.report.form.JsonWriter;

/** The band of preload in which every check holds, in words and for programs. */
public final class PreloadBandText {

  private PreloadBandText() {}

  /**
   * The band in one sentence or two.
   *
   * @param band the band
   * @param figures how numbers are written
   * @return for instance {@code Preload 600 N: at least 156 N (lift-off, crash), aim 425 N, at most
   *     1150 N (contact pressure, crash).}
   */
  public static String of(AllowedPreload band, FigureText figures) {
    StringBuilder out = new StringBuilder(300);
    out.append("Preload ").append(force(band.nominal(), figures)).append(": ");
    if (band.least().check().isEmpty()) {
      out.append("any less will do");
    } else {
      out.append("at least ")
          .append(force(band.least().force(), figures))
          .append(why(band.least(), band.failsBelow(), "below", figures));
    }
    if (band.least().force() > 0 && Double.isFinite(band.most().force())) {
      out.append(", aim ").append(force(band.aim(), figures));
    }
    if (band.most().check().isEmpty()) {
      out.append(", with no upper end that matters");
    } else {
      out.append(", at most ")
          .append(force(band.most().force(), figures))
          .append(why(band.most(), band.failsAbove(), "above", figures));
    }
    if (!band.inside()) {
      out.append("; it is outside");
    } else if (band.scatter() > 0 && !band.coversScatter()) {
      out.append("; with its scatter it is partly outside");
    }
    return out.append('.').toString();
  }

  private static String why(
      AllowedPreload.End end, AllowedPreload.End fails, String way, FigureText figures) {
    String what = " (" + end.check() + (end.where().isEmpty() ? "" : ", " + end.where());
    if (end.equals(fails)) {
      return what + ")";
    }
    String then =
        fails.check().isEmpty()
            ? "nothing fails " + way
            : way
                + " "
                + force(fails.force(), figures)
                + " "
                + (fails.check().equals(end.check()) ? "it" : fails.check())
                + " fails";
    return what + ": decide; " + then + ")";
  }

  private static String force(double newtons, FigureText figures) {
    return figures.of(Measure.FORCE, newtons, true);
  }

  /**
   * Writes the band as an object.
   *
   * @param json where to, behind its key
   * @param band the band
   */
  public static void json(JsonWriter json, AllowedPreload band) {
    json.beginObject();
    json.key("nominal_N").value(band.nominal());
    json.key("least_N").value(band.least().force());
    json.key("aim_N").value(band.aim());
    json.key("most_N").value(band.most().force());
    json.key("least_check").value(band.least().check());
    json.key("least_where").value(band.least().where());
    json.key("most_check").value(band.most().check());
    json.key("most_where").value(band.most().where());
    json.key("fails_below_N").value(band.failsBelow().force());
    json.key("fails_below_check").value(band.failsBelow().check());
    json.key("fails_above_N").value(band.failsAbove().force());
    json.key("fails_above_check").value(band.failsAbove().check());
    json.end();
  }
}
