package reseat.plots;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Whether pictures are drawn and written as SVG by a Java that has no graphics classes at all, as
 * in a browser.
 */
class WithoutGraphicsTest {

  @Test
  void picturesOfMarksNeedNoGraphicsClasses() throws Exception {
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--limit-modules",
                "java.base,jdk.random",
                "-cp",
                System.getProperty("java.class.path"),
                Bare.class.getName())
            .redirectErrorStream(true)
            .start();
    String told = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(java.waitFor()).as(told).isZero();
    StringBuilder expected = new StringBuilder();
    for (Picture p : PictureGallery.ofMarks()) {
      expected.append(Bare.line(p));
    }
    assertThat(told).isEqualTo(expected + "no bitmaps here");
  }

  /** What the bare Java runs. */
  static final class Bare {

    private Bare() {}

    static String line(Picture p) {
      return p.name() + " " + new String(p.svg(), StandardCharsets.UTF_8).hashCode() + "\n";
    }

    public static void main(String[] args) {
      List<Picture> pictures = PictureGallery.ofMarks();
      StringBuilder lines = new StringBuilder();
      pictures.forEach(p -> lines.append(line(p)));
      try {
        pictures.get(0).png(1);
        lines.append("it has graphics classes");
      } catch (NoClassDefFoundError e) {
        lines.append("no bitmaps here");
      }
      System.out.print(lines);
    }
  }
}
