package reseat.check;

/**
 * Words with numbers in them, written only when someone reads them.
 *
 * <p>A search judges a hundred thousand designs and tells of a handful, and writing a number with
 * its unit takes longer than finding it. So a sentence keeps what it is made of, all of it
 * immutable: texts, {@link Measure.Amount amounts}, other sentences, and whatever else says itself
 * by its {@code toString}. Two sentences are equal if they read alike.
 */
public final class Sentence {

  /** A sentence that says nothing. */
  public static final Sentence NONE = new Sentence();

  private final Object[] parts;

  private Sentence(Object... parts) {
    this.parts = parts;
  }

  /**
   * Puts a sentence together.
   *
   * @param parts what it says, one after the other, nothing between; immutable things
   * @return the sentence
   */
  public static Sentence of(Object... parts) {
    return new Sentence(parts.clone());
  }

  /**
   * Writes the sentence.
   *
   * @return the words
   */
  public String text() {
    if (parts.length == 1) {
      return parts[0].toString();
    }
    StringBuilder text = new StringBuilder(200);
    for (Object part : parts) {
      text.append(part);
    }
    return text.toString();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sentence s && text().equals(s.text());
  }

  @Override
  public int hashCode() {
    return text().hashCode();
  }

  @Override
  public String toString() {
    return text();
  }
}
