package reseat.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The program in a process of its own, to be killed, starved or left without its reader. */
final class Launched {

  /** Far longer than any run here takes; a run that hangs meets it. */
  private static final long FOREVER_SECONDS = 300;

  /** Place of signal 2, SIGINT, in a set of signals. */
  private static final long INTERRUPT = 1 << 1;

  /** How a run ended. */
  record End(int code, String out, String err) {}

  private final Process process;
  private final Path out;
  private final Path err;

  private Launched(Process process, Path out, Path err) {
    this.process = process;
    this.out = out;
    this.err = err;
  }

  /**
   * Starts the program by way of a shell.
   *
   * @param folder working folder, where its streams are kept
   * @param line what the shell runs, with {@code "$@"} for the program and its words
   * @param environment variables to set; a null value takes one away
   * @param words the command
   */
  static Launched through(
      Path folder, String line, Map<String, String> environment, List<String> words)
      throws IOException {
    List<String> all = new ArrayList<>(List.of("sh", "-c", line, "sh"));
    all.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    all.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:-UsePerfData", "-XX:+UseSerialGC", "-cp"));
    all.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    all.add(Main.class.getName());
    all.addAll(words);
    Path out = Files.createTempFile(folder, "stdout", ".txt");
    Path err = Files.createTempFile(folder, "stderr", ".txt");
    ProcessBuilder builder =
        new ProcessBuilder(all)
            .directory(folder.toFile())
            .redirectInput(Path.of("/dev/null").toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    environment.forEach(
        (name, value) -> {
          if (value == null) {
            builder.environment().remove(name);
          } else {
            builder.environment().put(name, value);
          }
        });
    return new Launched(builder.start(), out, err);
  }

  /** Starts the program as it is. */
  static Launched plain(Path folder, List<String> words) throws IOException {
    return through(folder, "exec \"$@\"", Map.of(), words);
  }

  boolean runs() {
    return process.isAlive();
  }

  /** Ends it as a power cut would. */
  void kill() {
    process.destroyForcibly();
  }

  /**
   * Says whether what is started here heeds Ctrl-C: a job in the background of a shell script does
   * not, and hands that on to all it starts.
   */
  static boolean heedsInterrupts() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.isReadable(status)) {
      return true;
    }
    for (String line : Files.readAllLines(status)) {
      if (line.startsWith("SigIgn:")) {
        return (Long.parseUnsignedLong(line.substring(7).strip(), 16) & INTERRUPT) == 0;
      }
    }
    return true;
  }

  /** Stops it as Ctrl-C does. */
  void interrupt() throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-INT", String.valueOf(process.pid())).start().waitFor();
  }

  /** Waits for its end. */
  End end() throws IOException, InterruptedException {
    if (!process.waitFor(FOREVER_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("hangs");
    }
    return new End(process.exitValue(), read(out), read(err));
  }

  /** What it has said so far. */
  String said() throws IOException {
    return read(err);
  }

  private static String read(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
