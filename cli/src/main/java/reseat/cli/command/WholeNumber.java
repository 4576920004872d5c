package reseat.cli.command;

import java.math.BigDecimal;

/** Reads whole numbers on the command line: plain, or as 1e6. */
final class WholeNumber {

  private WholeNumber() {}

  /**
   * Reads one number.
   *
   * @param option the option it was given for
   * @param text as typed
   * @param least smallest number allowed
   * @param most largest number allowed
   * @return the number
   * @throws UnusableChoice if it is none, or not within the limits
   */
  static long of(String option, String text, long least, long most) throws UnusableChoice {
    String wanted =
        least == Long.MIN_VALUE
            ? "a whole number is wanted"
            : "a whole number from " + least + " to " + most + " is wanted";
    try {
      long value = new BigDecimal(text.strip()).longValueExact();
      if (value >= least && value <= most) {
        return value;
      }
      throw new UnusableChoice(option + " is " + text + "; " + wanted, null);
    } catch (NumberFormatException e) {
      throw new UnusableChoice(option + " is '" + text + "'; " + wanted, e);
    } catch (ArithmeticException e) {
      throw new UnusableChoice(option + " is " + text + "; " + wanted, e);
    }
  }
}
