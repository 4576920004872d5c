package reseat.plots.scene;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;

/** The font of bitmaps: DejaVu Sans where it is installed, else the machine's own sans-serif. */
public final class Typeface {

  static {
    needNoScreen();
  }

  private static final String WANTED = "DejaVu Sans";

  /** One measure for layout and drawing, so that what fits on paper fits in the bitmap. */
  public static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

  private Typeface() {}

  /**
   * Tells the class library that no screen is wanted; to be called before any of its graphics
   * classes is used. No picture needs a screen, and without this a stale DISPLAY variable makes the
   * library fail.
   */
  public static void needNoScreen() {
    if (System.getProperty("java.awt.headless") == null) {
      System.setProperty("java.awt.headless", "true");
    }
  }

  /**
   * Returns the font for words.
   *
   * @param words what is to be written
   * @param style how it is set
   * @return a font that has the letters, if any font here has
   * @throws IllegalStateException if this machine has no fonts at all
   */
  public static Font of(String words, TextStyle style) {
    int weight = style.bold() ? Font.BOLD : Font.PLAIN;
    try {
      Font font = new Font(WANTED, weight, 1).deriveFont((float) style.size());
      if (!font.getFamily().equals(WANTED) || font.canDisplayUpTo(words) >= 0) {
        font = new Font(Font.SANS_SERIF, weight, 1).deriveFont((float) style.size());
      }
      new TextLayout("0", font, CONTEXT).getAdvance();
      return font;
    } catch (InternalError | RuntimeException e) {
      throw new IllegalStateException(
          "bitmaps need a font, and none is installed on this machine; install one,"
              + " for instance the package fonts-dejavu-core",
          e);
    }
  }
}
