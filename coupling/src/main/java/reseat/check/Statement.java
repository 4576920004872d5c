package reseat.check;

import java.util.List;

/**
 * What is to be said, as data: a key and what it speaks of. The words are made where they are
 * printed, in the units asked for.
 *
 * @param key what is said
 * @param arguments what it speaks of, in the order that the key's comment gives
 */
public record Statement(Said key, List<Argument> arguments) {

  /** Nothing to say. */
  public static final Statement NOTHING = new Statement(Said.NOTHING, List.of());

  /** Copies the list. */
  public Statement {
    arguments = List.copyOf(arguments);
  }

  /**
   * Puts a statement together.
   *
   * @param key what is said
   * @param about what it speaks of: amounts, names (strings), constants of enums, statements
   * @return the statement
   * @throws IllegalArgumentException if something is none of these
   */
  public static Statement of(Said key, Object... about) {
    Argument[] arguments = new Argument[about.length];
    for (int i = 0; i < arguments.length; i++) {
      arguments[i] = argument(about[i]);
    }
    return new Statement(key, List.of(arguments));
  }

  private static Argument argument(Object one) {
    if (one instanceof Argument ready) {
      return ready;
    }
    if (one instanceof String name) {
      return new Argument.Name(name);
    }
    if (one instanceof Enum<?> term) {
      return new Argument.Term(term);
    }
    if (one instanceof Statement inner) {
      return new Argument.Inner(inner);
    }
    throw new IllegalArgumentException("nothing that can be said: " + one);
  }

  /**
   * Says whether there is nothing to say.
   *
   * @return true for {@link #NOTHING}
   */
  public boolean isEmpty() {
    return key == Said.NOTHING;
  }
}
