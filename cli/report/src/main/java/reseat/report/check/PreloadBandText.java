package reseat.report.check;

import reseat.report.form.Shown;
import reseat.sizing.AllowedPreload;

/** The band of preload in which no check fails, in words. */
public final class PreloadBandText {

  private PreloadBandText() {}

  public static String of(AllowedPreload band) {
    StringBuilder out = new StringBuilder(300);
    out.append("Preload in all may be ");
    if (band.bindsBelow().isEmpty()) {
      out.append("under a hundredth of the present one");
    } else {
      out.append(Shown.force(band.least())).append(" (").append(band.bindsBelow()).append(')');
    }
    out.append(" to ");
    if (band.bindsAbove().isEmpty()) {
      out.append("over 100 times the present one");
    } else {
      out.append(Shown.force(band.most())).append(" (").append(band.bindsAbove()).append(')');
    }
    out.append("; it is ").append(Shown.force(band.nominal()));
    boolean inside = band.nominal() >= band.least() && band.nominal() <= band.most();
    if (!inside) {
      return out.append(", outside.").toString();
    }
    if (band.scatter() > 0) {
      out.append(", with scatter and accuracy of its device ")
          .append(Shown.force(band.nominal() * (1 - band.scatter())))
          .append(" to ")
          .append(Shown.force(band.nominal() * (1 + band.scatter())))
          .append(band.coversScatter() ? ", inside" : ", partly outside");
    }
    if (band.least() > 0 && Double.isFinite(band.most())) {
      out.append("; the middle by ratio is ").append(Shown.force(band.middle()));
    }
    return out.append('.').toString();
  }
}
