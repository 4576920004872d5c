package reseat.making;

import java.util.List;
import java.util.OptionalDouble;
import reseat.space.Vec3;

/**
 * One thing that is made, in the axes of its maker.
 *
 * @param kind what it is
 * @param name the support, preload or point it belongs to
 * @param at where it is, maker's axes, m; each kind says which point that is
 * @param direction which way it runs on the maker's plan, rad from x toward y; empty if it has none
 * @param place how far it may stand from there
 * @param sizes its sizes, possibly none
 * @param note what cannot be told as a number, for instance the thread; possibly empty
 */
public record MadeFeature(
    Kind kind,
    String name,
    Vec3 at,
    OptionalDouble direction,
    PlaceTolerance place,
    List<MadeDimension> sizes,
    String note) {

  /** What is made, and which of its points is told. */
  public enum Kind {
    /** A ball; its centre. */
    BALL("ball centre"),
    /** The hole of a ball stud; where its axis leaves the face of the body. */
    STUD_HOLE("stud hole at face"),
    /** Where the centre of a ball of the design's size rests in a seat. */
    BALL_REST("ball centre at rest"),
    /** A groove with plane flanks; where the flanks would meet, under the middle of its length. */
    VEE_GROOVE("vee groove, sharp root"),
    /** A groove with hollow flanks; centre of the ball it is designed for. */
    GOTHIC_GROOVE("gothic groove"),
    /** A pin of a pair; the middle of its axis. */
    PIN("pin axis, middle"),
    /** The pocket of a pair of pins; its floor under the ball. */
    POCKET("pocket floor"),
    /** A seat with three flanks; where they would meet. Its direction is the first flank's push. */
    TRIHEDRAL_SEAT("trihedral seat, sharp root"),
    /** A cone; its apex. */
    CONE("cone, sharp root"),
    /** A flat; the middle of its pad. */
    FLAT("flat, middle"),
    /** The line of pull of a preload; where it pierces the plane of the ball centres. */
    LINE_OF_PULL("line of pull"),
    /** The tool point. */
    TOOL_POINT("tool point");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * Returns the kind in words.
     *
     * @return for instance {@code ball centre}
     */
    public String words() {
      return words;
    }
  }

  /** Copies the sizes. */
  public MadeFeature {
    sizes = List.copyOf(sizes);
  }
}
