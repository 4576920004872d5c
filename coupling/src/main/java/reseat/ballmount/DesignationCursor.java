package reseat.ballmount;

/**
 * Walks along a thread designation. What is asked for and is not there leaves the cursor in place.
 *
 * <p>By hand, for the threads of a design file are read at every start, and the first regular
 * expression of a run costs more than all of them.
 */
final class DesignationCursor {

  private static final String BLANKS = " \t\n\u000B\f\r";

  private final String text;
  private int at;

  DesignationCursor(String text) {
    this.text = text;
  }

  int place() {
    return at;
  }

  void backTo(int place) {
    at = place;
  }

  boolean atEnd() {
    return at == text.length();
  }

  void skipBlanks() {
    while (isOneOf(BLANKS)) {
      at++;
    }
  }

  private boolean isOneOf(String characters) {
    return !atEnd() && characters.indexOf(text.charAt(at)) >= 0;
  }

  /** Takes one character out of several. */
  boolean takesOneOf(String characters) {
    boolean there = isOneOf(characters);
    at += there ? 1 : 0;
    return there;
  }

  /** Takes a word, which is told apart by upper and lower case. */
  boolean takes(String word) {
    boolean there = text.startsWith(word, at);
    at += there ? word.length() : 0;
    return there;
  }

  /** Takes digits; empty if there are none. */
  String digits() {
    int start = at;
    while (isOneOf("0123456789")) {
      at++;
    }
    return text.substring(start, at);
  }

  /** Takes a decimal number without sign or exponent, such as 3, 0.5 or .5; empty if none. */
  String number() {
    int start = at;
    digits();
    int whole = at;
    if (!takesOneOf(".") || digits().isEmpty()) {
      at = whole;
    }
    return text.substring(start, at);
  }
}
