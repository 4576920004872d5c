package reseat.plots.scene;

/** Paints marks: one method per kind, so that a new kind cannot be forgotten. */
public interface MarkPainter {
  /**
   * Paints straight lines or polygons.
   *
   * @param path the mark
   */
  void path(Mark.Path path);

  /**
   * Paints a circle or an ellipse.
   *
   * @param oval the mark
   */
  void oval(Mark.Oval oval);

  /**
   * Paints part of a circle.
   *
   * @param arc the mark
   */
  void arc(Mark.Arc arc);

  /**
   * Paints words.
   *
   * @param text the mark
   */
  void text(Mark.Text text);

  /**
   * Paints a bitmap.
   *
   * @param bitmap the mark
   */
  void bitmap(Mark.Bitmap bitmap);
}
