package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import reseat.plots.NumberText;
import reseat.plots.Picture;
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
   * @param motion what moves, in words; empty if not known
   * @param hertz frequency with sticking contacts, Hz
   * @param slidingHertz frequency with frictionless contacts, Hz; infinite if not computed
   */
  public record Mode(String motion, double hertz, double slidingHertz) {}

  private FrequencyList() {}

  /**
   * Draws the list.
   *
   * @param modes at least one, lowest first
   * @param excitation frequency that must stay below the lowest mode, Hz; infinite for none
   * @param excitationName what makes it, for instance {@code spindle at 6000 rev/min}
   * @return the picture {@code frequencies}
   */
  public static Picture draw(List<Mode> modes, double excitation, String excitationName) {
    List<BarPanel.Bar> bars = new ArrayList<>();
    boolean both = false;
    for (int i = 0; i < modes.size(); i++) {
      Mode m = modes.get(i);
      String name = "mode " + (i + 1) + (m.motion().isBlank() ? "" : ", " + m.motion());
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
    if (Double.isFinite(excitation)) {
      key.add(
          Key.Entry.line(
              LineStyle.LIMIT, excitationName + ", " + NumberText.with(excitation, 3, "Hz")));
    }
    Scene panel = BarPanel.of("", bars, "natural frequency (Hz)", excitation, WIDTH);
    Mode lowest = modes.get(0);
    return Picture.of(
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
