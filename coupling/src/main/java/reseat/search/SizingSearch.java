package reseat.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import reseat.design.CouplingDesign;

/** The exhaustive pass over all combinations: judged on several threads, taken in by number. */
public final class SizingSearch {

  private SizingSearch() {}

  /** Where each candidate goes besides the tally. */
  @FunctionalInterface
  public interface Sink {
    /**
     * Takes a candidate.
     *
     * @param candidate the candidate
     * @throws IOException if it cannot be written
     */
    void accept(Candidate candidate) throws IOException;
  }

  /**
   * Judges the combinations of a part.
   *
   * @param plan the search
   * @param tally takes every candidate; may hold those of the first blocks already
   * @param sink takes every candidate judged now
   * @param progress told how many candidates of the part are done
   * @throws InterruptedException if the thread is interrupted
   * @throws IOException if the sink cannot write
   */
  public static void run(SizingPlan plan, SizingTally tally, Sink sink, LongConsumer progress)
      throws InterruptedException, IOException {
    long done = tally.judged() / plan.space().blockSize();
    PreloadChoices preloads = new PreloadChoices(plan.space());
    IOException[] broken = {null};
    try {
      plan.way()
          .run(
              plan.blocks() - done,
              "size",
              own -> block(plan, preloads, plan.block(done + own)),
              block -> {
                for (Candidate c : block) {
                  tally.add(c);
                  try {
                    sink.accept(c);
                  } catch (IOException e) {
                    broken[0] = e;
                    throw new IllegalStateException("the candidates cannot be written", e);
                  }
                }
                progress.accept(tally.judged());
              });
    } catch (IllegalStateException e) {
      if (broken[0] != null) {
        throw broken[0];
      }
      throw e;
    }
  }

  private static List<Candidate> block(SizingPlan plan, PreloadChoices preloads, long block) {
    SizingSpace space = plan.space();
    long size = space.blockSize();
    List<Candidate> judged = new ArrayList<>();
    CouplingDesign first = null;
    DesignFamily family = null;
    for (long number = block * size; number < (block + 1) * size; number++) {
      Optional<CouplingDesign> design =
          first == null
              ? space.file().with(space.alterations(space.values(number))).design()
              : preloads.preloaded(first, number);
      if (first == null && design.isPresent()) {
        first = design.get();
        family = new DesignFamily(first, plan.wish(), space.file().unaltered().accepted());
      }
      Judgement j = design.isPresent() ? family.judge(design.get()) : SizingSpace.cannotBeMade();
      judged.add(new Candidate(number, space.kind(number), j));
    }
    return judged;
  }

  /**
   * Takes in the candidates of all parts of a search from their files, by number.
   *
   * @param whole the search as one part
   * @param files the files of all its parts, in any order
   * @param tally takes every candidate
   * @throws IOException if a file cannot be read
   * @throws IllegalArgumentException if a file belongs to another search, or a part is missing,
   *     unfinished or there twice
   */
  public static void merge(SizingPlan whole, List<Path> files, SizingTally tally)
      throws IOException {
    int parts = files.size();
    CandidateFile.Rows[] rows = new CandidateFile.Rows[parts];
    try {
      for (Path file : files) {
        CandidateFile.Rows r = new CandidateFile.Rows(file, whole.space());
        int part = 1;
        while (part <= parts && !r.head().equals(CandidateFile.head(part(whole, part, parts)))) {
          part++;
        }
        if (part > parts || rows[part - 1] != null) {
          r.close();
          throw new IllegalArgumentException(
              file
                  + ":1: \""
                  + r.head()
                  + "\" is not one of "
                  + parts
                  + " different parts of this search; give one file for each part");
        }
        rows[part - 1] = r;
      }
      long size = whole.space().blockSize();
      for (long number = 0; number < whole.space().count(); number++) {
        int part = (int) (number / size % parts);
        Candidate c = rows[part].next();
        if (c == null || c.number() != number) {
          throw new IllegalArgumentException(
              "part "
                  + (part + 1)
                  + "/"
                  + parts
                  + " lacks candidate "
                  + number
                  + "; finish it with --resume");
        }
        tally.add(c);
      }
    } finally {
      for (CandidateFile.Rows r : rows) {
        if (r != null) {
          r.close();
        }
      }
    }
  }

  private static SizingPlan part(SizingPlan whole, int part, int parts) {
    return new SizingPlan(whole.space(), whole.wish(), part, parts, whole.way());
  }
}
