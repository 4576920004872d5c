package reseat.designfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Commented files to begin a design from; the same files are the examples of the guide. */
public enum Starter {
  /** A quick-change tool post with three vee grooves. */
  TOOL_POST("tool-post", "quick-change tool post on three vee grooves, spring preload"),
  /** A pallet on pairs of dowel pins. */
  PALLET("pallet", "fixture pallet on dowel-pin pairs, one spring through each ball"),
  /** A bracket on a wall with trihedral seat, vee and flat. */
  SENSOR_MOUNT("sensor-mount", "bracket on a wall: trihedral seat, vee and flat, magnets"),
  /** A stand with a ball in a cone, one in a vee, one on a flat. */
  CONE_VEE_FLAT(
      "cone-vee-flat", "sensor stand that turns about a ball in a cone; vee, flat, spring"),
  /** One ball mount by itself. */
  BALL_MOUNT(
      "ball-mount",
      "one ball on a bonded stud, turning in a seat under an air-bearing pad",
      "mount");

  private final String word;
  private final String description;
  private final String command;

  Starter(String word, String description) {
    this(word, description, "check");
  }

  Starter(String word, String description, String command) {
    this.word = word;
    this.description = description;
    this.command = command;
  }

  /**
   * Returns the command that looks at such a file.
   *
   * @return {@code check} for a coupling, {@code mount} for a ball mount
   */
  public String command() {
    return command;
  }

  /**
   * Returns the word for the kind on the command line.
   *
   * @return for instance {@code tool-post}
   */
  public String word() {
    return word;
  }

  /**
   * Says what the file describes.
   *
   * @return a few words
   */
  public String description() {
    return description;
  }

  /**
   * Finds a kind by its word.
   *
   * @param word as typed
   * @return the kind, if there is one
   */
  public static Optional<Starter> named(String word) {
    return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
  }

  /**
   * Returns the words of all kinds.
   *
   * @return words, in the order they are offered
   */
  public static List<String> words() {
    return Arrays.stream(values()).map(Starter::word).toList();
  }

  /**
   * Returns the text of the file.
   *
   * @return a design file with comments
   */
  public String text() {
    try (InputStream in = Starter.class.getResourceAsStream("starter/" + word + ".toml")) {
      if (in == null) {
        throw new IllegalStateException("the starter file " + word + " was not packed");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
