package reseat.plots.scene;

/** Which end of a line of words its point marks. */
public enum Anchor {
  /** The beginning. */
  START,
  /** The middle. */
  MIDDLE,
  /** The end. */
  END
}
