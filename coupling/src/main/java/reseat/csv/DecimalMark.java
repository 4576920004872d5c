package reseat.csv;

/** What stands before the decimals of a number. */
public enum DecimalMark {
  /** A point: 1.25. */
  POINT,
  /** A comma: 1,25. */
  COMMA
}
