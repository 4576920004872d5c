package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** Natural frequencies of the holder on its contacts, lowest first. */
public final class FrequencyList {

  private static final double WIDTH = 600;

  /**
   * One mode.
   *
   * @param hertz frequency with sticking contacts, Hz
   * @param slidingHertz frequency with frictionless contacts, Hz; infinite if not computed
   */
  public record Mode(double hertz, double slidingHertz) {}

  private FrequencyList() {}

  /**
   * Draws the list.
   *
   * @param modes at least one, lowest first
   * @return the picture {@code frequencies}
   */
  public static Picture draw(List<Mode> modes) {
    List<BarPanel.Bar> bars = new ArrayList<>();
    boolean both = false;
    for (int i = 0; i < modes.size(); i++) {
      Mode m = modes.get(i);
      String name = "mode " + (i + 1);
      bars.add(bar(name, m.hertz(), Tone.BLUE));
      if (Double.isFinite(m.slidingHertz())) {
        bars.add(bar(name + ", sliding", m.slidingHertz(), Tone.GREEN));
        both = true;
      }
    }
    List<Key.Entry> key = new ArrayList<>();
    if (both) {
      key.add(Key.Entry.area(LineStyle.NONE, Fill.full(Tone.BLUE), "contacts stick"));
      key.add(
          Key.Entry.area(LineStyle.NONE, Fill.full(Tone.GREEN), "contacts slide without friction"));
    }
    Scene panel = BarPanel.of("", bars, "natural frequency, Hz", Double.POSITIVE_INFINITY, WIDTH);
    Mode lowest = modes.get(0);
    return Picture.of(
        PictureKind.FREQUENCIES,
        "frequencies",
        "Natural frequencies of the holder on its contacts",
        "The lowest frequency, "
            + (Double.isFinite(lowest.slidingHertz())
                ? NumberText.with(lowest.slidingHertz(), 3, "Hz")
                    + " to "
                    + NumberText.with(lowest.hertz(), 3, "Hz")
                    + " as far as contacts stick"
                : NumberText.with(lowest.hertz(), 3, "Hz"))
            + ", is the one to keep clear of what the machine excites; post and plates count as"
            + " rigid.",
        "Bars of natural frequencies: "
            + bars.stream().map(b -> b.name() + " " + b.words()).collect(Collectors.joining("; "))
            + ".",
        BarPanel.stacked(List.of(panel, Key.of(key, WIDTH - 12, 2)), WIDTH));
  }

  private static BarPanel.Bar bar(String name, double hertz, Tone tone) {
    return new BarPanel.Bar(name, hertz, NumberText.with(hertz, 3, "Hz"), tone);
  }
}
