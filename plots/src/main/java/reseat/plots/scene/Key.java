package reseat.plots.scene;

import java.util.List;

/** Explains signs under a picture: a sample and words, in columns. */
public final class Key {

  /** Width kept for a sample, sheet units. */
  public static final double SAMPLE = 30;

  private static final double GAP = 7;
  private static final double COLUMN_GAP = 16;
  private static final double NARROWEST = 220;

  /**
   * One line of the key.
   *
   * @param sample marks drawn about the origin, within half of {@link #SAMPLE} to each side
   * @param words what they mean
   */
  public record Entry(List<Mark> sample, String words) {

    /** Copies the sample. */
    public Entry {
      sample = List.copyOf(sample);
    }

    /**
     * Explains a line.
     *
     * @param line how it is drawn
     * @param words what it means
     * @return the entry
     */
    public static Entry line(LineStyle line, String words) {
      return new Entry(
          List.of(Mark.Path.line(new Point(-SAMPLE / 2, 0), new Point(SAMPLE / 2, 0), line)),
          words);
    }

    /**
     * Explains an area.
     *
     * @param line how its edge is drawn
     * @param fill how it is filled
     * @param words what it means
     * @return the entry
     */
    public static Entry area(LineStyle line, Fill fill, String words) {
      return new Entry(
          List.of(Mark.Path.rectangle(new Box(-SAMPLE / 2, -5, SAMPLE / 2, 5), line, fill)), words);
    }
  }

  private Key() {}

  /**
   * Sets a key.
   *
   * @param entries what to explain
   * @param width width of the sheet
   * @param columns columns, for a sheet wide enough to hold them
   * @return a sheet as wide as asked and as high as needed, or one unit high without entries
   */
  public static Scene of(List<Entry> entries, double width, int columns) {
    TextStyle style = TextStyle.NOTE.in(Tone.INK);
    int n = Math.max(1, Math.min(columns, (int) (width / NARROWEST)));
    double columnWidth = (width - (n - 1) * COLUMN_GAP) / n;
    Scene.Builder scene = new Scene.Builder();
    double top = 0;
    for (int row = 0; row * n < entries.size(); row++) {
      double height = 0;
      for (int c = 0; c < n && row * n + c < entries.size(); c++) {
        Entry e = entries.get(row * n + c);
        double left = c * (columnWidth + COLUMN_GAP);
        List<String> lines = TextWidth.wrapped(e.words(), style, wordWidth(width, n));
        for (Mark m : e.sample()) {
          scene.add(m.moved(left + SAMPLE / 2, top + 9));
        }
        for (int i = 0; i < lines.size(); i++) {
          Point base = new Point(left + SAMPLE + GAP, top + 13 + i * style.lineHeight());
          scene.add(Mark.Text.level(lines.get(i), base, Anchor.START, style));
        }
        height = Math.max(height, 5 + lines.size() * style.lineHeight());
      }
      top += height;
    }
    return scene.build(width, Math.max(1, top + 2));
  }

  private static double wordWidth(double width, int columns) {
    return (width - (columns - 1) * COLUMN_GAP) / columns - SAMPLE - GAP;
  }
}
