package reseat.search;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import reseat.check.Verdict;
import reseat.units.PrintedNumber;

/**
 * Candidates of a search in a CSV file, written as they are judged and read again to go on or to
 * join parts.
 *
 * <p>The first line names the search: a digest of design file and wishes, and the part. Numbers are
 * written so that reading them gives the same doubles.
 */
public final class CandidateFile implements Closeable {

  private static final int FIXED = 9;

  /** No share, size or stiffness of a candidate that holds is beyond this, in SI. */
  private static final double LARGEST = 1e15;

  private static final String COLUMNS =
      "number,verdict,check,used,decide,repeatability,stiffness [N/m],pressure,size [m]";

  private final SizingSpace space;
  private final Writer out;

  private CandidateFile(SizingSpace space, Writer out) {
    this.space = space;
    this.out = out;
  }

  /** First line of the file of a search. */
  static String head(SizingPlan plan) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(plan.space().file().textWith(List.of()).getBytes(StandardCharsets.UTF_8));
      digest.update(plan.wish().toString().getBytes(StandardCharsets.UTF_8));
      return "# reseat size, search "
          + HexFormat.of().formatHex(digest.digest()).substring(0, 16)
          + ", "
          + plan.space().count()
          + " candidates, part "
          + plan.part()
          + "/"
          + plan.parts();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * Text that a file begins with.
   *
   * @param plan the search
   * @return the first lines, with the names of the columns
   */
  public static String beginning(SizingPlan plan) {
    List<String> keys = new ArrayList<>();
    plan.space().varied().forEach(v -> keys.add(v.axis().key().path()));
    return head(plan) + "\n" + COLUMNS + "," + CSVFormat.RFC4180.format(keys.toArray()) + "\n";
  }

  /**
   * Goes on with a file that was left unfinished. What it holds of an unfinished block is cut off.
   *
   * @param file the file
   * @param plan the search
   * @param known takes the candidates in it that stay
   * @return the file, open at its end
   * @throws IOException if it cannot be read or written
   * @throws IllegalArgumentException if it belongs to another search
   */
  public static CandidateFile resume(Path file, SizingPlan plan, Consumer<Candidate> known)
      throws IOException {
    List<Candidate> block = new ArrayList<>();
    long[] bytes = {0, 0};
    try (Rows rows = new Rows(file, plan.space())) {
      rows.mustBe(head(plan));
      bytes[0] = rows.bytes();
      for (Candidate c = rows.next(); c != null; c = rows.next()) {
        block.add(c);
        if (block.size() == plan.space().blockSize()) {
          block.forEach(known);
          block.clear();
          bytes[0] = rows.bytes();
        }
      }
    }
    try (RandomAccessFile cut = new RandomAccessFile(file.toFile(), "rw")) {
      cut.setLength(bytes[0]);
    }
    return new CandidateFile(
        plan.space(),
        Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND));
  }

  /**
   * Writes a candidate.
   *
   * @param c the candidate
   * @throws IOException if it cannot be written
   */
  public void write(Candidate c) throws IOException {
    Judgement j = c.judgement();
    out.write(
        c.number()
            + ","
            + word(j.verdict())
            + ","
            + j.check()
            + ","
            + PrintedNumber.shortest(j.used())
            + ","
            + j.decide());
    Optional<Merits> m = j.merits();
    out.write(
        m.isEmpty()
            ? ",,,,"
            : ","
                + PrintedNumber.shortest(m.get().repeatability())
                + ","
                + PrintedNumber.shortest(m.get().stiffness())
                + ","
                + PrintedNumber.shortest(m.get().pressure())
                + ","
                + PrintedNumber.shortest(m.get().size()));
    out.write(
        (m.isEmpty() ? "" : ",")
            + CSVFormat.RFC4180.format(space.values(c.number()).toArray())
            + "\n");
  }

  private static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  /** Rows of a file one by one. A last line without its end is left out. */
  static final class Rows implements Closeable {

    private final Path file;
    private final SizingSpace space;
    private final BufferedReader in;
    private final String head;
    private long bytes;
    private long line;

    Rows(Path file, SizingSpace space) throws IOException {
      this.file = file;
      this.space = space;
      in = Files.newBufferedReader(file, StandardCharsets.UTF_8);
      head = line().orElse("");
      line();
    }

    String head() {
      return head;
    }

    void mustBe(String wanted) {
      if (!head.equals(wanted)) {
        throw new IllegalArgumentException(
            file
                + ":1: belongs to another search (\""
                + head
                + "\"; wanted is \""
                + wanted
                + "\"): the design file, [size] or the part has changed since");
      }
    }

    long bytes() {
      return bytes;
    }

    private Optional<String> line() throws IOException {
      StringBuilder text = new StringBuilder(160);
      for (int c = in.read(); c >= 0; c = in.read()) {
        if (c == '\n') {
          line++;
          String whole = text.toString();
          bytes += whole.getBytes(StandardCharsets.UTF_8).length + 1;
          return Optional.of(whole);
        }
        text.append((char) c);
      }
      return Optional.empty();
    }

    /** The next candidate; null at the end. */
    Candidate next() throws IOException {
      Optional<String> text = line();
      if (text.isEmpty()) {
        return null;
      }
      String[] cells = text.get().split(",", FIXED + 1);
      try {
        long number = Long.parseLong(cells[0]);
        boolean stands = !cells[1].equals(word(Verdict.FAILS));
        double used = number(cells[3], stands);
        Judgement j =
            stands
                ? new Judgement(
                    cells[2],
                    used,
                    cells[4],
                    Optional.of(
                        new Merits(
                            number(cells[5], true),
                            number(cells[6], true),
                            number(cells[7], true),
                            number(cells[8], true))))
                : Judgement.fails(cells[2], used);
        if (!cells[1].equals(word(j.verdict()))) {
          throw new NumberFormatException(cells[1]);
        }
        return new Candidate(number, space.kind(number), j);
      } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
        throw new IllegalArgumentException(
            file + ":" + line + ": is no row of a search: \"" + text.get() + "\"", e);
      }
    }

    /** Reads a number; what no search has written is none. */
    private static double number(String cell, boolean ofUse) {
      double value = Double.parseDouble(cell);
      if (Double.isNaN(value) || (ofUse && !(Math.abs(value) <= LARGEST))) {
        throw new NumberFormatException(cell);
      }
      return value;
    }

    @Override
    public void close() throws IOException {
      in.close();
    }
  }
}
