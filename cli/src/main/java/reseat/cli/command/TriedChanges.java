package reseat.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import reseat.check.Verdict;
import reseat.designfile.AlterableDesign;
import reseat.remedy.Counsel;
import reseat.remedy.Halving;
import reseat.remedy.HalvingSearch;
import reseat.remedy.Remedies;
import reseat.remedy.RemedySearch;
import reseat.study.CheckResult;
import reseat.study.SeatedCheck;

/**
 * Changes tried on a design file that was checked; the file is read again only if there is need.
 */
final class TriedChanges {

  /** Which changes are looked for. */
  enum Sought {
    /** None. */
    NONE,
    /** Remedies by single keys. */
    SINGLE_KEYS,
    /** Remedies by pairs of keys too, where no single one helps. */
    PAIRS
  }

  private TriedChanges() {}

  /**
   * Searches for changes of one key.
   *
   * @param file the design file
   * @param result what came of checking it
   * @return remedies, or what is in the way
   * @throws IOException if the file cannot be read
   */
  static Counsel of(Path file, CheckResult result) throws IOException {
    return of(file, result, Sought.SINGLE_KEYS, false);
  }

  /**
   * Searches for changes.
   *
   * @param file the design file
   * @param result what came of checking it
   * @param sought which remedies are looked for
   * @param halving whether to look for what would halve scatter and motions
   * @return what was found
   * @throws IOException if the file cannot be read
   */
  static Counsel of(Path file, CheckResult result, Sought sought, boolean halving)
      throws IOException {
    boolean remedies = sought != Sought.NONE && result.verdict() != Verdict.HOLDS;
    boolean halves = halving && result instanceof SeatedCheck;
    if (!remedies && !halves) {
      return Counsel.NONE;
    }
    AlterableDesign read = AlterableDesign.read(file);
    Remedies found =
        remedies ? RemedySearch.of(read, result, sought == Sought.PAIRS) : Remedies.NOT_SOUGHT;
    List<Halving> half =
        halves && result instanceof SeatedCheck seated ? HalvingSearch.of(read, seated) : List.of();
    return new Counsel(found, half);
  }
}
