package reseat.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import reseat.check.Verdict;
import reseat.designfile.AlterableDesign;
import reseat.remedy.Remedies;
import reseat.remedy.RemedySearch;
import reseat.study.CheckResult;

/** Remedies for a design file that was checked; the file is read again only if there is need. */
final class TriedRemedies {

  private TriedRemedies() {}

  /**
   * Searches for changes of one key.
   *
   * @param file the design file
   * @param result what came of checking it
   * @return remedies, or what is in the way
   * @throws IOException if the file cannot be read
   */
  static Remedies of(Path file, CheckResult result) throws IOException {
    return of(file, result, false);
  }

  /**
   * Searches for changes of one key, or of two.
   *
   * @param file the design file
   * @param result what came of checking it
   * @param pairs whether pairs are looked at where no single key helps
   * @return remedies, or what is in the way
   * @throws IOException if the file cannot be read
   */
  static Remedies of(Path file, CheckResult result, boolean pairs) throws IOException {
    return result.verdict() == Verdict.HOLDS
        ? Remedies.NOT_SOUGHT
        : RemedySearch.of(AlterableDesign.read(file), result, pairs);
  }
}
