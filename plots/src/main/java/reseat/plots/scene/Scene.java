package reseat.plots.scene;

import java.util.ArrayList;
import java.util.List;
import reseat.units.PrintedNumber;

/**
 * A sheet with marks, in the order in which they are painted.
 *
 * @param width width of the sheet, sheet units
 * @param height height of the sheet
 * @param marks what is drawn
 */
public record Scene(double width, double height, List<Mark> marks) {

  /** Copies the marks. */
  public Scene {
    marks = List.copyOf(marks);
    if (!(width > 0) || !(height > 0) || Double.isInfinite(width + height)) {
      throw new IllegalArgumentException(
          "bad sheet size "
              + PrintedNumber.shortest(width)
              + " x "
              + PrintedNumber.shortest(height));
    }
  }

  /**
   * Returns the whole sheet.
   *
   * @return the box from the origin to its far corner
   */
  public Box frame() {
    return new Box(0, 0, width, height);
  }

  /**
   * Returns the words on the sheet.
   *
   * @return text marks in painting order
   */
  public List<Mark.Text> texts() {
    return marks.stream().filter(Mark.Text.class::isInstance).map(Mark.Text.class::cast).toList();
  }

  /**
   * Makes a sheet just high enough for its marks.
   *
   * @param width width of the sheet, sheet units
   * @param air room left above and below
   * @param marks what is drawn, at least one
   * @return the sheet, its marks moved up or down to fit
   */
  public static Scene trimmed(double width, double air, List<Mark> marks) {
    double top = Double.POSITIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Mark m : marks) {
      top = Math.min(top, m.box().top());
      bottom = Math.max(bottom, m.box().bottom());
    }
    double up = air - top;
    return new Scene(
        width, bottom - top + 2 * air, marks.stream().map(m -> m.moved(0, up)).toList());
  }

  /** Gathers marks. Not for use by several threads. */
  public static final class Builder {
    private final List<Mark> marks = new ArrayList<>();

    /**
     * Adds a mark on top of the others.
     *
     * @param mark the mark
     * @return this builder
     */
    public Builder add(Mark mark) {
      marks.add(mark);
      return this;
    }

    /**
     * Adds marks on top of the others.
     *
     * @param more the marks
     * @return this builder
     */
    public Builder addAll(List<? extends Mark> more) {
      marks.addAll(more);
      return this;
    }

    /**
     * Adds all marks of another sheet.
     *
     * @param scene the other sheet
     * @param dx where its left edge comes
     * @param dy where its top edge comes
     * @return this builder
     */
    public Builder place(Scene scene, double dx, double dy) {
      scene.marks().forEach(m -> marks.add(m.moved(dx, dy)));
      return this;
    }

    /**
     * Finishes the sheet.
     *
     * @param width width of the sheet
     * @param height height of the sheet
     * @return the sheet
     */
    public Scene build(double width, double height) {
      return new Scene(width, height, marks);
    }
  }
}
