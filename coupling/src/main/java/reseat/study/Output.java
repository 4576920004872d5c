package reseat.study;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import reseat.remount.RemountScatter;
import reseat.units.QuantityKind;

/** One number that a coupling is asked for, under a plain name. */
public final class Output {

  private final String name;
  private final String words;
  private final QuantityKind kind;
  private final boolean simulated;
  private final BiFunction<SeatedCheck, RemountScatter, Optional<OutputValue>> reading;

  private Output(
      String name,
      String words,
      QuantityKind kind,
      boolean simulated,
      BiFunction<SeatedCheck, RemountScatter, Optional<OutputValue>> reading) {
    this.name = name;
    this.words = words;
    this.kind = kind;
    this.simulated = simulated;
    this.reading = reading;
  }

  static Output of(
      String name,
      String words,
      QuantityKind kind,
      Function<SeatedCheck, Optional<OutputValue>> reading) {
    return new Output(name, words, kind, false, (check, scatter) -> reading.apply(check));
  }

  static Output simulated(
      String name,
      String words,
      QuantityKind kind,
      BiFunction<SeatedCheck, RemountScatter, Optional<OutputValue>> reading) {
    return new Output(name, words, kind, true, reading);
  }

  /**
   * Returns the name by which it is asked for.
   *
   * @return for instance {@code peak-pressure} or {@code stiffness.X}
   */
  public String name() {
    return name;
  }

  /**
   * Says what it is.
   *
   * @return a few words, for instance {@code least stiffness of the tool point}
   */
  public String words() {
    return words;
  }

  /**
   * Returns what it measures.
   *
   * @return kind of quantity; a ratio is a plain factor
   */
  public QuantityKind kind() {
    return kind;
  }

  /**
   * Says whether tool changes have to be simulated for it.
   *
   * @return true if {@link #of(SeatedCheck, Optional)} needs their scatter
   */
  public boolean simulated() {
    return simulated;
  }

  /**
   * Reads the value off a coupling.
   *
   * @param check a coupling that stands
   * @param scatter simulated tool changes; may be empty for an output that is not simulated
   * @return the value; empty if this coupling has none, because a contact has lifted or nothing was
   *     stated that it follows from
   */
  public Optional<OutputValue> of(SeatedCheck check, Optional<RemountScatter> scatter) {
    return reading.apply(check, scatter.orElse(null));
  }

  @Override
  public String toString() {
    return name;
  }
}
