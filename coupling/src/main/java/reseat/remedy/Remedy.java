package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;

/**
 * A change of a design file after which its whole verdict holds, tried.
 *
 * @param moves the levers that are moved: one, or a pair
 * @param changes every key that changes, with those that follow from it
 * @param costs deciding quantities that come nearer to their limits, those nearest first
 * @param distance how large the change is: logarithm of the ratio for lengths and forces, degrees
 *     over ten for angles, 0.1 for each step in stock, 0.3 for another material; a pair has the sum
 * @param tight whether less is in hand than a remedy is to leave: everything holds, but a deciding
 *     figure is within 5 % of its limit, or a scatter within 10 %
 */
public record Remedy(
    List<Move> moves, List<Change> changes, List<Cost> costs, double distance, boolean tight) {

  /** Copies the lists. */
  public Remedy {
    moves = List.copyOf(moves);
    changes = List.copyOf(changes);
    costs = List.copyOf(costs);
  }

  /**
   * Writes the design with this remedy.
   *
   * @param file the design file that the remedy was found for
   * @return its text with the changes, everything else as it stands, comments too
   */
  public String writtenInto(AlterableDesign file) {
    List<Alteration> alterations = new ArrayList<>();
    for (Change c : changes) {
      alterations.add(new Alteration(file.key(c.key()), c.value()));
    }
    return file.textWith(alterations);
  }
}
