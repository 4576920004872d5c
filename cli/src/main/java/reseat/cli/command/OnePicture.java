package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import reseat.plots.Picture;
import reseat.report.form.PictureSet;
import reseat.units.NearestWord;

/**
 * Writes one picture instead of a page.
 *
 * @param command the command as typed, such as {@code reseat report}
 * @param about what has the pictures, such as {@code this design}
 * @param target the file to write
 * @param png whether it is wanted as PNG whatever the file is called; else its ending tells
 * @param force whether a file that is there is replaced
 */
record OnePicture(String command, String about, Path target, boolean png, boolean force) {

  private static final double SCALE = 2;

  /**
   * Writes the picture of a name.
   *
   * @param name the name as typed
   * @param pictures where to look
   * @param out told what was written
   * @param err told which pictures there are if there is none of this name
   * @return an {@link ExitCode}
   * @throws IOException if it cannot be written
   */
  int write(String name, PictureSet pictures, PrintWriter out, PrintWriter err) throws IOException {
    Optional<Picture> picture = pictures.named(name);
    if (picture.isPresent()) {
      return write(picture.get(), out);
    }
    err.println(
        command
            + ": no picture '"
            + name
            + "'"
            + NearestWord.to(name, pictures.names())
                .map(n -> "; did you mean " + n + "?")
                .orElse(""));
    err.println("Pictures of " + about + ": " + String.join(", ", pictures.names()));
    return ExitCode.BAD_INPUT;
  }

  /**
   * Writes a picture.
   *
   * @param picture which
   * @param out told what was written
   * @return {@link ExitCode#HOLDS}
   * @throws IOException if it cannot be written
   */
  int write(Picture picture, PrintWriter out) throws IOException {
    // a file called .png is one, asked for or not
    boolean raster = png || target.toString().toLowerCase(Locale.ROOT).endsWith(".png");
    AtomicFile.write(target, raster ? picture.png(SCALE) : picture.svg(), force);
    out.println("wrote " + target + ": " + picture.caption());
    return ExitCode.HOLDS;
  }
}
