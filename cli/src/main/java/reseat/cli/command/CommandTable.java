package reseat.cli.command;

import java.util.List;

/** The commands that a command line may name; each is built only when it is asked for. */
interface CommandTable {

  /**
   * Lists the commands.
   *
   * @return their names, in the order in which help shows them
   */
  List<String> names();

  /**
   * Finds the command that a word names.
   *
   * @param word first word of a command line
   * @return the name that help shows, if the word is another name of that command; else the word
   */
  default String named(String word) {
    return word;
  }

  /**
   * Builds one command.
   *
   * @param name one of {@link #names()}
   * @return the command; nothing is read or run yet
   */
  Subcommand command(String name);
}
