package reseat.plots.dxf;

import java.util.List;

/**
 * The layers of a drawing, by trade words.
 *
 * <p>A layer's name has capital letters, digits and hyphens only, as release 12 wants. Colours are
 * numbers of the usual index: 7 is black on white, 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6
 * magenta, 8 grey.
 */
public enum DxfLayer {
  /** Edges of parts in sections. */
  OUTLINE(7, LineType.CONTINUOUS),
  /** Balls that are fitted. */
  BALLS(5, LineType.CONTINUOUS),
  /** Grooves as seen on the face. */
  GROOVES(7, LineType.CONTINUOUS),
  /** Pins as seen on the face. */
  PINS(7, LineType.CONTINUOUS),
  /** Trihedral seats and flats as seen on the face. */
  SEATS(7, LineType.CONTINUOUS),
  /** Holes of ball studs. */
  HOLES(4, LineType.CONTINUOUS),
  /** Balls where they rest, for reference: not part of this half. */
  REFERENCE(8, LineType.PHANTOM),
  /** Axes. */
  CENTRELINES(1, LineType.CENTER),
  /** Hatching of cut material. */
  HATCHING(8, LineType.CONTINUOUS),
  /** Dimension, projection and leader lines with their figures. */
  DIMENSIONS(3, LineType.CONTINUOUS),
  /** Lines of pull of the preloads. */
  PRELOAD(6, LineType.CONTINUOUS),
  /** The tool point. */
  TOOL_POINT(6, LineType.CONTINUOUS),
  /** Names and remarks. */
  NOTES(7, LineType.CONTINUOUS);

  private final int colour;
  private final LineType lineType;

  DxfLayer(int colour, LineType lineType) {
    this.colour = colour;
    this.lineType = lineType;
  }

  /**
   * Returns the name in the file.
   *
   * @return for instance {@code TOOL-POINT}
   */
  public String label() {
    return name().replace('_', '-');
  }

  int colour() {
    return colour;
  }

  LineType lineType() {
    return lineType;
  }

  /** How the lines of a layer are broken. */
  enum LineType {
    CONTINUOUS("Solid line"),
    CENTER("Long dash, short dash"),
    PHANTOM("Long dash, two short dashes");

    private final String words;

    LineType(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    /** Strokes and gaps (negative), mm; none for an unbroken line. */
    List<Double> pattern() {
      return switch (this) {
        case CONTINUOUS -> List.of();
        case CENTER -> List.of(8.0, -1.5, 1.5, -1.5);
        case PHANTOM -> List.of(8.0, -1.5, 1.5, -1.5, 1.5, -1.5);
      };
    }
  }
}
