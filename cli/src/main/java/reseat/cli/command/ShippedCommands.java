package reseat.cli.command;

import java.util.List;
import java.util.concurrent.Callable;

/**
 * The commands of the program. A new command is one name and one case of a {@code switch} here; not
 * a map of constructors, since the first lambda of a run costs milliseconds.
 */
public final class ShippedCommands implements CommandTable {

  private static final List<String> NAMES = List.of();

  @Override
  public List<String> names() {
    return NAMES;
  }

  @Override
  public Callable<Integer> command(String name) {
    throw new IllegalArgumentException("no command is named " + name);
  }
}
