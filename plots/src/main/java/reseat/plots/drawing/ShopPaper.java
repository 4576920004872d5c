package reseat.plots.drawing;

import java.util.List;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Tone;

/** A sheet of paper, lying. */
enum ShopPaper {
  /** ISO 216 A4, 297 mm by 210 mm. */
  A4(0.297, 0.210, "297mm", "210mm"),
  /** Letter, 11 in by 8.5 in. */
  LETTER(11 * 0.0254, 8.5 * 0.0254, "11in", "8.5in");

  /** What common printers leave white, m. */
  private static final double MARGIN = 0.008;

  private final double wide;
  private final double high;
  private final String cssWidth;
  private final String cssHeight;

  ShopPaper(double wide, double high, String cssWidth, String cssHeight) {
    this.wide = wide;
    this.high = high;
    this.cssWidth = cssWidth;
    this.cssHeight = cssHeight;
  }

  double width() {
    return wide * PaperScale.UNITS_PER_METRE;
  }

  double height() {
    return high * PaperScale.UNITS_PER_METRE;
  }

  String cssWidth() {
    return cssWidth;
  }

  String cssHeight() {
    return cssHeight;
  }

  /** Where may be drawn. */
  Box frame() {
    return new Box(0, 0, width(), height()).grown(-MARGIN * PaperScale.UNITS_PER_METRE);
  }

  List<Mark> frameMarks() {
    return List.of(Mark.Path.rectangle(frame(), LineStyle.solid(Tone.INK, 1), Fill.NONE));
  }
}
