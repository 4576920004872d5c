package reseat.cli.command;

import java.math.BigDecimal;
import picocli.CommandLine.ParseResult;

/** Reads whole numbers on the command line: plain, or as 1e6. */
final class WholeNumber {

  private static final int MOST_THREADS = 1024;

  private WholeNumber() {}

  /**
   * Reads the number an option was given, or its standard value.
   *
   * @param given the options as read; this one as text
   * @param option its name
   * @param least smallest number allowed
   * @param most largest number allowed
   * @return the number
   * @throws UnusableChoice if it is none, or not within the limits
   */
  static long of(ParseResult given, String option, long least, long most) throws UnusableChoice {
    return of(option, given.commandSpec().findOption(option).getValue(), least, most);
  }

  /** Reads the seed of the random numbers: any whole number that fits into 64 bits. */
  static long seed(ParseResult given) throws UnusableChoice {
    return of(given, Options.SEED, Long.MIN_VALUE, Long.MAX_VALUE);
  }

  /** Reads the number of threads. */
  static int threads(ParseResult given) throws UnusableChoice {
    return (int) of(given, Options.THREADS, 1, MOST_THREADS);
  }

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
