package reseat.design;

import reseat.space.Wrench;

/**
 * A load that the coupling must bear on top of preload and weight.
 *
 * @param name what the user calls it
 * @param load force on the holder, N, and moment, N·m, at the point where it acts
 */
public record LoadCase(String name, Wrench load) {

  /** Refuses a nameless case. */
  public LoadCase {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a load case needs a name");
    }
  }
}
