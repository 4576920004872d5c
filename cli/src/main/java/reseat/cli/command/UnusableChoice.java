package reseat.cli.command;

/** An option whose value does not fit the file or cannot be read; the message names the option. */
final class UnusableChoice extends Exception {

  private static final long serialVersionUID = 1L;

  /**
   * Says what is wrong.
   *
   * @param message which option, what was found, what to do
   * @param cause what was thrown, null if nothing was
   */
  UnusableChoice(String message, Throwable cause) {
    super(message, cause);
  }
}
