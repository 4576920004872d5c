package reseat.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import reseat.cli.command.Dispatch;
import reseat.cli.command.ExitCode;

/** The program: opens the standard streams, runs one command, ends with its exit code. */
public final class Main {

  private Main() {}

  /**
   * Runs the command line and ends the process; the exit codes are those of {@link ExitCode}.
   *
   * @param args the words after the program's name
   */
  public static void main(String[] args) {
    // Charts are drawn into files; a display would only be one more thing that can be missing.
    System.setProperty("java.awt.headless", "true");
    OutputChannel out = channel(FileDescriptor.out, 1);
    OutputChannel err = channel(FileDescriptor.err, 2);
    PrintWriter errWriter = err.writer();
    int code = run(args, out.writer(), errWriter);
    if (out.failed() && !out.readerWentAway()) {
      errWriter.println("reseat: cannot write the result: " + out.failure());
      code = Math.max(code, ExitCode.BAD_INPUT);
    }
    errWriter.flush();
    System.exit(code);
  }

  private static OutputChannel channel(FileDescriptor stream, int number) {
    return new OutputChannel(new FileOutputStream(stream), Path.of("/proc/self/fd/" + number));
  }

  private static int run(String[] args, PrintWriter out, PrintWriter err) {
    try {
      return new Dispatch().run(args, out, err);
    } catch (OutOfMemoryError e) {
      err.println("reseat: not enough memory for this run; ask for less, or give Java more with");
      err.println("  JAVA_TOOL_OPTIONS=-Xmx4g");
      return ExitCode.OUR_FAULT;
    } finally {
      out.flush();
    }
  }
}
