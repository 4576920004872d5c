/**
 * The program's entry and its streams. This is the only module that writes to the standard streams
 * or ends the process; {@link reseat.cli.Main} does both and hands everything else to {@code
 * reseat.cli.command}.
 *
 * <p>May import {@code reseat.cli.command} and the Java library. Start reading at {@link
 * reseat.cli.Main}.
 */
package reseat.cli;
