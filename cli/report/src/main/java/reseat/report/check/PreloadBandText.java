package reseat.report.check;

import reseat.report.form.FigureText;
import reseat.sizing.AllowedPreload;
import reseat.units.QuantityKind;

/** The band of preload in which no check fails, in words. */
public final class PreloadBandText {

  private PreloadBandText() {}

  /**
   * Tells the band.
   *
   * @param band the band
   * @param figures how numbers are written
   * @return a sentence
   */
  public static String of(AllowedPreload band, FigureText figures) {
    StringBuilder out = new StringBuilder(300);
    out.append("Preload in all may be ");
    if (band.bindsBelow().isEmpty()) {
      out.append("under a hundredth of the present one");
    } else {
      out.append(force(figures, band.least())).append(" (").append(band.bindsBelow()).append(')');
    }
    out.append(" to ");
    if (band.bindsAbove().isEmpty()) {
      out.append("over 100 times the present one");
    } else {
      out.append(force(figures, band.most())).append(" (").append(band.bindsAbove()).append(')');
    }
    out.append("; it is ").append(force(figures, band.nominal()));
    boolean inside = band.nominal() >= band.least() && band.nominal() <= band.most();
    if (!inside) {
      return out.append(", outside.").toString();
    }
    if (band.scatter() > 0) {
      out.append(", with scatter and accuracy of its device ")
          .append(
              figures.forces(
                  band.nominal() * (1 - band.scatter()), band.nominal() * (1 + band.scatter())))
          .append(band.coversScatter() ? ", inside" : ", partly outside");
    }
    if (band.least() > 0 && Double.isFinite(band.most())) {
      out.append("; the middle by ratio is ").append(force(figures, band.middle()));
    }
    return out.append('.').toString();
  }

  private static String force(FigureText figures, double newtons) {
    return figures.quantity(newtons, QuantityKind.FORCE);
  }
}
