package reseat.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Preload;

/**
 * The preloads of a search, each combination of their values read from text once.
 *
 * <p>Blocks of combinations go through the same preloads in the same order, so what was read for
 * the first block serves all. Where that cannot be, as the material that a device is made of varies
 * too or there are more than {@value #MOST} combinations, each is read when it is asked for.
 * Immutable.
 */
final class PreloadChoices {

  private static final int MOST = 10_000;

  private final SizingSpace space;
  private final List<Optional<List<Preload>>> read;

  /**
   * Reads the preloads of a search.
   *
   * @param space all combinations
   */
  PreloadChoices(SizingSpace space) {
    this.space = space;
    List<Optional<List<Preload>>> all = new ArrayList<>();
    if (space.blockSize() <= MOST
        && space.count() > space.blockSize()
        && !space.altersMaterials()) {
      for (long i = 0; i < space.blockSize(); i++) {
        all.add(at(i));
      }
    }
    read = List.copyOf(all);
  }

  private Optional<List<Preload>> at(long number) {
    return space.file().preloads(space.alterations(space.values(number)));
  }

  /**
   * Returns a design with the preloads of a combination.
   *
   * @param design a design of the same block
   * @param number number of the combination
   * @return the design; empty if its preloads cannot be
   */
  Optional<CouplingDesign> preloaded(CouplingDesign design, long number) {
    Optional<List<Preload>> preloads =
        read.isEmpty() ? at(number) : read.get((int) (number % read.size()));
    return preloads.map(p -> design.toBuilder().preloads(p).build());
  }
}
