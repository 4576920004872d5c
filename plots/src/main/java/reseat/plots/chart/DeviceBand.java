package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;
import reseat.preload.BenchBand;
import reseat.preload.BenchSetting;
import reseat.preload.PreloadDevice;
import reseat.units.FilledText;

/** What a preload device gives for what is set on it, and the band to set for the force allowed. */
public final class DeviceBand {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 320;
  private static final int STEPS = 80;
  private static final double BEYOND = 1.25;
  private static final LineStyle CURVE = LineStyle.solid(Tone.BLUE, 1.8);
  private static final LineStyle SPREAD = new LineStyle(Tone.BLUE, 1.0, Dash.DASHED);
  private static final LineStyle NOMINAL = new LineStyle(Tone.INK, 1.2, Dash.DOTTED);
  private static final Fill ALLOWED = new Fill(Tone.GREEN, 0.13);
  private static final Fill AIM = new Fill(Tone.ORANGE, 0.22);

  private DeviceBand() {}

  /**
   * Draws the band.
   *
   * @param name name of the picture, for instance {@code device-1}
   * @param called what the design calls the device
   * @param device the device
   * @param band what it may be set to; empty if the coupling sets no band
   * @return the picture; empty if nothing but the force itself is set on such a device, or it
   *     cannot be set
   */
  public static Optional<Picture> draw(
      String name, String called, PreloadDevice device, Optional<BenchBand> band) {
    return draw(name, called, device, band, PictureUnits.METRIC);
  }

  /**
   * Draws the band in a unit system.
   *
   * @param name name of the picture, for instance {@code device-1}
   * @param called what the design calls the device
   * @param device the device
   * @param band what it may be set to; empty if the coupling sets no band
   * @param units unit system of axes and words
   * @return the picture; empty if nothing but the force itself is set on such a device, or it
   *     cannot be set
   */
  public static Optional<Picture> draw(
      String name,
      String called,
      PreloadDevice device,
      Optional<BenchBand> band,
      PictureUnits units) {
    double nominal = device.nominalForce();
    Optional<BenchSetting> here = device.settingFor(nominal);
    if (here.isEmpty() || here.get().kind() == BenchSetting.Kind.FORCE) {
      return Optional.empty();
    }
    AxisQuantity setting = units.of(axis(here.get().kind()));
    AxisQuantity pull = units.of(axis(BenchSetting.Kind.FORCE));
    double most = BEYOND * Math.max(nominal, band.map(BenchBand::allowedHigh).orElse(nominal));
    List<Double> settings = new ArrayList<>();
    List<Double> forces = new ArrayList<>();
    for (int i = 1; i <= STEPS; i++) {
      double force = most * i / STEPS;
      device
          .settingFor(force)
          .ifPresent(
              s -> {
                settings.add(setting.of(s.value()));
                forces.add(pull.of(force));
              });
    }
    if (settings.size() < 2) {
      return Optional.empty();
    }
    double[] xs = array(settings, 1);
    double part = device.scatter().halfRange() + device.accuracy().halfRange();
    PlotPanel panel = panel(setting, pull, xs, forces, part, band);
    panel.line(xs, array(forces, 1 + part), SPREAD);
    panel.line(xs, array(forces, 1 - part), SPREAD);
    panel.line(xs, array(forces, 1), CURVE);
    panel.vertical(setting.of(here.get().value()), NOMINAL);
    Scene drawn = panel.scene();
    Scene key = Key.of(key(device, here.get(), part, band, setting, pull), WIDTH - 12, 1);
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.place(key, 6, drawn.height() + 8);
    String caption =
        "What "
            + called
            + " gives for the "
            + here.get().kind().label()
            + " set on it, with the spread between changes and devices.";
    return Optional.of(
        Picture.of(
            PictureKind.DEVICE_BAND,
            name,
            "Force of " + called + " over its " + here.get().kind().label(),
            caption,
            caption + band.map(b -> " Allowed " + allowed(b, pull) + ".").orElse(""),
            scene.build(WIDTH, drawn.height() + 8 + key.height())));
  }

  private static PlotPanel panel(
      AxisQuantity setting,
      AxisQuantity pull,
      double[] xs,
      List<Double> forces,
      double part,
      Optional<BenchBand> band) {
    AxisRange x = new AxisRange.Gatherer().add(xs).withZero();
    AxisRange y =
        new AxisRange.Gatherer()
            .add(array(forces, 1 + part))
            .add(array(forces, Math.max(0, 1 - part)))
            .add(0)
            .range(0.04);
    PlotPanel panel = new PlotPanel(WIDTH, HEIGHT, setting.label(), x, pull.label(), y);
    band.ifPresent(
        b -> {
          double[] across = {x.from(), x.to(), x.to(), x.from()};
          double high = Math.min(y.to(), pull.of(b.allowedHigh()));
          panel.area(
              across,
              new double[] {pull.of(b.allowedLow()), pull.of(b.allowedLow()), high, high},
              ALLOWED);
          aim(panel, setting, b);
        });
    return panel;
  }

  private static void aim(PlotPanel panel, AxisQuantity setting, BenchBand b) {
    if (b.settingAtLow().isEmpty() || b.settingAtHigh().isEmpty()) {
      return;
    }
    double one = setting.of(b.settingAtLow().get().value());
    double other = setting.of(b.settingAtHigh().get().value());
    panel.xBand(Math.min(one, other), Math.max(one, other), AIM);
  }

  private static AxisQuantity axis(BenchSetting.Kind kind) {
    return switch (kind) {
      case FORCE -> new AxisQuantity("force", "N", 1);
      case TORQUE -> new AxisQuantity("torque", "N\u00b7m", 1);
      case DEFLECTION -> new AxisQuantity("deflection", "mm", 1e-3);
      case GAP -> new AxisQuantity("gap", "mm", 1e-3);
      case MASS -> new AxisQuantity("mass", "kg", 1);
      case PRESSURE -> new AxisQuantity("gauge pressure", "MPa", 1e6);
    };
  }

  private static double[] array(List<Double> values, double times) {
    return values.stream().mapToDouble(v -> times * v).toArray();
  }

  private static List<Key.Entry> key(
      PreloadDevice device,
      BenchSetting here,
      double part,
      Optional<BenchBand> band,
      AxisQuantity setting,
      AxisQuantity pull) {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(
        Key.Entry.line(
            NOMINAL,
            "this design: " + told(here, setting) + " for " + pull.text(device.nominalForce(), 3)));
    entries.add(
        Key.Entry.line(
            SPREAD,
            FilledText.of(
                "from change to change and device to device together \u00b1%.3g %%", 100 * part)));
    band.ifPresent(
        b -> {
          entries.add(
              Key.Entry.area(LineStyle.NONE, ALLOWED, "the coupling allows " + allowed(b, pull)));
          if (b.settingAtLow().isPresent() && b.settingAtHigh().isPresent()) {
            entries.add(
                Key.Entry.area(
                    LineStyle.NONE,
                    AIM,
                    "set from "
                        + told(b.settingAtLow().get(), setting)
                        + " to "
                        + told(b.settingAtHigh().get(), setting)));
          }
        });
    return entries;
  }

  private static String told(BenchSetting set, AxisQuantity setting) {
    return set.kind().label() + " " + setting.text(set.value(), 3);
  }

  private static String allowed(BenchBand b, AxisQuantity pull) {
    return pull.text(b.allowedLow(), 3) + " to " + pull.text(b.allowedHigh(), 3);
  }
}
