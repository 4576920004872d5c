package reseat.plots;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import reseat.plots.scene.Mark;

/**
 * Whether the pictures changed: kinds and numbers of marks, and all words; not their places.
 *
 * <p>Says nothing about right or wrong. When a picture was changed on purpose, look at it, then
 * take over the file that the failing test leaves in the target directory.
 */
class PictureGoldenTest {

  @Test
  void picturesHoldTheSameMarksAndWordsAsBefore() throws IOException {
    String now =
        PictureGallery.all().stream()
            .map(PictureGoldenTest::structure)
            .collect(Collectors.joining());
    Path left = Path.of("target", "pictures.golden");
    Files.writeString(left, now);
    try (InputStream in = getClass().getResourceAsStream("pictures.golden")) {
      assertThat(in).as("golden file").isNotNull();
      String before = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(now).as("compare with " + left).isEqualTo(before);
    }
  }

  private static String structure(Picture p) {
    List<Mark> marks = p.scene().marks();
    return p.name()
        + ": "
        + p.title()
        + "\n  "
        + count(marks, Mark.Path.class)
        + " paths, "
        + count(marks, Mark.Oval.class)
        + " ovals, "
        + count(marks, Mark.Arc.class)
        + " arcs, "
        + count(marks, Mark.Bitmap.class)
        + " bitmaps\n"
        + p.scene().texts().stream()
            .map(t -> "  " + t.words() + "\n")
            .collect(Collectors.joining());
  }

  private static long count(List<Mark> marks, Class<? extends Mark> kind) {
    return marks.stream().filter(kind::isInstance).count();
  }
}
