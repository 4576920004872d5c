package reseat.interchange;

import reseat.design.Half;
import reseat.design.ToleranceKind;

/** What an error belongs to, which decides who shares it. */
public enum Owner {
  /** The fixed half: common to all holders that stand on it. */
  POST("post"),
  /** A holder with its tool: its own, and the same at every mounting. */
  HOLDER("holder"),
  /** The occasion: different at every mounting, so that no offset table can hold it. */
  OCCASION("occasion");

  private final String words;

  Owner(String words) {
    this.words = words;
  }

  /**
   * Returns the owner in words.
   *
   * @return one word
   */
  public String words() {
    return words;
  }

  /**
   * Finds what a kind of dimension belongs to.
   *
   * @param kind the kind
   * @param ballsOn the half that carries the balls
   * @return the owner
   */
  public static Owner of(ToleranceKind kind, Half ballsOn) {
    return switch (kind.carrier()) {
      case BALLS -> ballsOn == Half.HOLDER ? HOLDER : POST;
      case SEATS -> ballsOn == Half.HOLDER ? POST : HOLDER;
      case TOOL -> HOLDER;
      case OCCASION -> OCCASION;
    };
  }
}
