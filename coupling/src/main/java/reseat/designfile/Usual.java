package reseat.designfile;

/**
 * The usual sizes of a value, and those that are doubted. Between the two a value is doubted only
 * if its number with another unit would be usual.
 *
 * @param least below it a value is doubted
 * @param low least usual size
 * @param high greatest usual size
 * @param most above it a value is doubted
 * @param basis a source, or {@code judgement}
 */
record Usual(double least, double low, double high, double most, String basis) {

  /** Usual sizes by judgement. */
  static Usual of(double least, double low, double high, double most) {
    return new Usual(least, low, high, most, "judgement");
  }

  /** The same as multiples of another size. */
  Usual times(double size) {
    return new Usual(least * size, low * size, high * size, most * size, basis);
  }
}
