package reseat.study;

import java.util.List;
import reseat.design.Acceptance;
import reseat.design.AssumedValue;
import reseat.design.CouplingDesign;
import reseat.design.InputDoubt;
import reseat.designfile.DesignFile;

/**
 * A design with what its file says beside it: values that look like slips, decisions that are
 * taken, defaults that results rest on.
 *
 * @param design the coupling
 * @param doubts values that look like slips
 * @param accepted decisions that are taken
 * @param assumed defaults that results rest on
 * @param inInches whether most of its lengths are stated in inches
 */
public record StatedDesign(
    CouplingDesign design,
    List<InputDoubt> doubts,
    List<Acceptance> accepted,
    List<AssumedValue> assumed,
    boolean inInches) {

  /** Copies the lists. */
  public StatedDesign {
    doubts = List.copyOf(doubts);
    accepted = List.copyOf(accepted);
    assumed = List.copyOf(assumed);
  }

  /**
   * A design built in code: nothing is doubted, accepted or assumed.
   *
   * @param design the coupling
   * @return the design
   */
  public static StatedDesign of(CouplingDesign design) {
    return new StatedDesign(design, List.of(), List.of(), List.of(), false);
  }

  /**
   * The same with another design.
   *
   * @param other the other design
   * @return with the same doubts, decisions and defaults
   */
  public StatedDesign with(CouplingDesign other) {
    return new StatedDesign(other, doubts, accepted, assumed, inInches);
  }

  /**
   * A design read from a file.
   *
   * @param file the file, free of errors
   * @return its design
   * @throws java.util.NoSuchElementException if the file has errors
   */
  public static StatedDesign of(DesignFile file) {
    return new StatedDesign(
        file.design().orElseThrow(),
        file.doubts(),
        file.accepted(),
        file.assumed(),
        file.inInches());
  }
}
