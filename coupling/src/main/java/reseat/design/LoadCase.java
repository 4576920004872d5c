package reseat.design;

import java.util.Objects;
import reseat.space.Wrench;

/**
 * A load that the coupling must bear on top of preload and weight.
 *
 * @param name what the user calls it
 * @param load force on the holder, N, and moment, N·m, at the point where it acts
 * @param demand what the coupling must still do under it
 */
public record LoadCase(String name, Wrench load, Demand demand) {

  /** What a coupling must still do under a load. */
  public enum Demand {
    /** Stay seated and keep the tool point within its targets: a finishing cut, a probing force. */
    HOLD_POSITION,
    /** Stay seated with the wanted margin: a roughing cut, a hose, handling. */
    STAY_SEATED,
    /** Just stay seated, with the margin {@link #SURVIVAL_FACTOR}: a crash. */
    SURVIVE
  }

  /** Load factor wanted of a load that need only be survived; common practice, no source. */
  public static final double SURVIVAL_FACTOR = 1.2;

  /** Refuses a nameless case. */
  public LoadCase {
    Objects.requireNonNull(name, "name of a load case must be given, found null");
    Objects.requireNonNull(load, "load of a load case must be given, found null");
    Objects.requireNonNull(demand, "demand of a load case must be given, found null");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a load case needs a name");
    }
  }

  /**
   * Makes a load under which the coupling must stay seated.
   *
   * @param name what the user calls it
   * @param load force and moment on the holder
   */
  public LoadCase(String name, Wrench load) {
    this(name, load, Demand.STAY_SEATED);
  }

  /**
   * Returns how many times the load must be bearable.
   *
   * @param wanted factor the design asks of cuts
   * @return that factor, or the lesser one of a load that need only be survived
   */
  public double wantedFactor(double wanted) {
    return demand == Demand.SURVIVE ? Math.min(wanted, SURVIVAL_FACTOR) : wanted;
  }
}
