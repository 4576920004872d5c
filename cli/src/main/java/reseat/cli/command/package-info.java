/**
 * One class per command. A command parses its arguments, calls {@code study} or another package of
 * the library, and hands the result to {@code reseat.report}; it holds no formula. The only package
 * that imports picocli.
 *
 * <p>Start reading at {@link reseat.cli.command.ReseatCommand}, which lists the commands, and at
 * {@link reseat.cli.command.ExitCode}, which lists how they may end.
 */
package reseat.cli.command;
