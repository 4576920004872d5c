package reseat.readings;

/**
 * The scatter that one cause alone would give, at the amount of it that the prediction assumed.
 *
 * @param cause kind of cause
 * @param name its name in the prediction, for instance which contact
 * @param scatter covariance over the axes, at the assumed amount
 */
public record CauseSignature(ScatterCause cause, String name, ScatterMatrix scatter) {

  /** Refuses a cause that moves nothing. */
  public CauseSignature {
    if (!(scatter.total() > 0)) {
      throw new IllegalArgumentException("cause " + name + " moves none of the axes");
    }
  }
}
