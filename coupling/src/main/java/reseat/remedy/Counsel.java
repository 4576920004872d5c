package reseat.remedy;

import java.util.List;

/**
 * What can be done about a design that was checked.
 *
 * @param remedies changes after which it holds, or what is in their way
 * @param halving what would halve scatter and motions; empty if not asked for
 */
public record Counsel(Remedies remedies, List<Halving> halving) {

  /** Nothing was asked for. */
  public static final Counsel NONE = new Counsel(Remedies.NOT_SOUGHT, List.of());

  /** Copies the list. */
  public Counsel {
    halving = List.copyOf(halving);
  }
}
