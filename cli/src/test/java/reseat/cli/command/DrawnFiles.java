package reseat.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.Starter;
import reseat.numerics.RandomStream;

/** Design files drawn round the shipped couplings, and the same upside down, dry, warm, tilted. */
final class DrawnFiles {

  static final List<Starter> COUPLINGS =
      List.of(Starter.TOOL_POST, Starter.PALLET, Starter.SENSOR_MOUNT, Starter.CONE_VEE_FLAT);

  private DrawnFiles() {}

  /** The text of a design drawn round a shipped one; always the same for the same seed. */
  static String drawn(long seed) {
    Starter round = COUPLINGS.get((int) (seed % COUPLINGS.size()));
    for (long attempt = 0; attempt < 100; attempt++) {
      Optional<String> text = attempt(round, RandomStream.of(seed, attempt));
      if (text.isPresent()) {
        return text.get();
      }
    }
    throw new IllegalStateException("no design with seed " + seed);
  }

  private static Optional<String> attempt(Starter round, RandomStream luck) {
    AlterableDesign file = AlterableDesign.of(round.text());
    List<Alteration> changes = new ArrayList<>();
    double pull = luck.uniform(0.7, 1.4);
    switch (round) {
      case TOOL_POST -> {
        set(file, changes, "preload.force", 600 * pull, "N");
        set(file, changes, "layout.groove.flank_angle", luck.uniform(42, 50), "deg");
        set(file, changes, "layout.circle_diameter", luck.uniform(62, 80), "mm");
        set(file, changes, "preload.line_wander", luck.uniform(0.1, 0.5), "mm");
      }
      case PALLET -> {
        set(file, changes, "preload[*].force", 400 * pull, "N");
        set(file, changes, "support[*].seat.pin_diameter", luck.uniform(9, 11), "mm");
        set(file, changes, "remount.temperature_scatter", luck.uniform(0.4, 1.5), "K");
      }
      case SENSOR_MOUNT -> {
        set(file, changes, "preload[*].force", 28 * pull, "N");
        set(file, changes, "support[2].seat.flank_angle", luck.uniform(42, 50), "deg");
        set(file, changes, "remount.seating_force", luck.uniform(15, 40), "N");
      }
      default -> {
        set(file, changes, "preload.force", 40 * pull, "N");
        set(file, changes, "layout.circle_diameter", luck.uniform(65, 85), "mm");
        set(file, changes, "remount.film_scatter", luck.uniform(5, 30), "nm");
      }
    }
    return file.with(changes).design().isPresent()
        ? Optional.of(file.textWith(changes))
        : Optional.empty();
  }

  private static void set(
      AlterableDesign file, List<Alteration> changes, String key, double value, String unit) {
    changes.add(new Alteration(file.key(key), String.format(Locale.ROOT, "%.4g %s", value, unit)));
  }

  static String upsideDown(String text) {
    return text.replace("gravity = \"-z\"", "gravity = \"+z\"")
        .replace("gravity = \"-y\"", "gravity = \"+y\"");
  }

  static String dry(String text) {
    return text.replace("surface = \"oiled\"", "surface = \"dry\"");
  }

  static String warm(String text) {
    return text.replaceFirst("temperature_scatter = \"[^\"]*\"", "temperature_scatter = \"3 K\"");
  }

  static String tilted(String text) {
    return text.replaceFirst("gravity = \"-[yz]\"", "gravity = [0.4, -0.3, -0.8]");
  }
}
