package reseat.ballmount;

import java.util.List;
import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * A trihedral seat cut by three slots: the spindle leans by the flank angle, the work is indexed by
 * a third of a turn (two steps of a 60 degree plate) between them.
 *
 * <p>The end of the cutter makes the flanks, so a flank's normal lies along the spindle. Each flank
 * is taken to pass through the apex when its slot has its depth, and to pivot about it: the depth
 * is set where the flank meets the axis. Then, to first order, for a ball of radius R and flanks at
 * angle &alpha;:
 *
 * <pre>
 *   spindle off by d:       ball up by R sin/cos&sup2; d, contact angle by d
 *   one index off by d:     ball stays (exactly), contact angle stays, that contact moves round by d
 *   axis leaning by d:      ball aside by R/cos d, contact angles by up to d
 *   one slot high by e:     ball up by e/(3 cos), aside by 2 e/(3 sin)
 * </pre>
 *
 * <p>Derived here from the geometry. What is told is exact, from the point where the three planes
 * as cut put the ball's centre. Frame: origin at the apex as drawn, z along the seat's axis out of
 * it.
 *
 * @param ballRadius radius R of the ball, m
 * @param flankAngle angle of the spindle from the seat's axis, rad: that of the flanks to the plane
 *     of the seat, and of the contact normals to its axis
 * @param limits how far each setting may be off
 */
public record IndexedSlotting(double ballRadius, double flankAngle, Limits limits) {

  /** What can be off. */
  public enum Source {
    /** Lean of the spindle, the same for all slots. */
    SPINDLE("spindle angle"),
    /** Place of the index, each slot its own. */
    INDEX("index, each slot"),
    /** Lean of the indexing axis from that of the seat. */
    AXIS("lean of index axis"),
    /** Depth of the slots, each its own. */
    DEPTH("depth, each slot"),
    /** All of them at their limits in the worst way. */
    ALL("all at their limits");

    private final String words;

    Source(String words) {
      this.words = words;
    }

    /**
     * Returns the source in words.
     *
     * @return for instance {@code spindle angle}
     */
    public String words() {
      return words;
    }
  }

  /**
   * How far each setting may be off, either way.
   *
   * @param spindle lean of the spindle, rad
   * @param index place of the index, rad
   * @param axis lean of the indexing axis, rad
   * @param depth depth of a slot along its flank's normal, m
   */
  public record Limits(double spindle, double index, double axis, double depth) {

    private static final double MOST = Elementary.toRadians(5);

    /** Refuses limits that are no limits. */
    public Limits {
      angle("error of the spindle angle", spindle);
      angle("error of the index", index);
      angle("lean of the indexing axis", axis);
      Bounds.notNegative("error of the slot depth", depth, "m");
    }

    private static void angle(String words, double value) {
      Bounds.notNegative(words, value, "rad");
      if (value > MOST) {
        throw new IllegalArgumentException(
            words
                + " is "
                + PrintedNumber.shortest(Elementary.toDegrees(value))
                + " deg: it must be at most 5 deg");
      }
    }

    Limits only(Source source) {
      return switch (source) {
        case SPINDLE -> new Limits(spindle, 0, 0, 0);
        case INDEX -> new Limits(0, index, 0, 0);
        case AXIS -> new Limits(0, 0, axis, 0);
        case DEPTH -> new Limits(0, 0, 0, depth);
        case ALL -> this;
      };
    }
  }

  /**
   * What the errors do at worst.
   *
   * @param up how far the ball stands too high or too low, m
   * @param aside how far it stands off the axis, m
   * @param contactAngle how far the angle of a contact normal from the seat's axis as drawn is off,
   *     rad
   * @param force greatest force on a contact over that of the seat as drawn, less 1, under a force
   *     along the seat's axis
   */
  public record Effect(double up, double aside, double contactAngle, double force) {}

  /**
   * The seat as cut.
   *
   * @param ballCentre where the ball's centre stands, m
   * @param normals unit normals of the three flanks, out of the seat
   */
  public record Cut(Vec3 ballCentre, List<Vec3> normals) {

    /** Copies the list. */
    public Cut {
      Objects.requireNonNull(ballCentre, "ball centre of a cut must be given, found null");
      Objects.requireNonNull(normals, "normals of a cut must be given, found null");
      normals = List.copyOf(normals);
    }

    /**
     * Returns the angle of a contact.
     *
     * @param slot 0 to 2
     * @return angle of its normal from the seat's axis as drawn, rad; the flank angle as cut
     */
    public double contactAngle(int slot) {
      return Elementary.acos(Math.min(1, normals.get(slot).z()));
    }

    /**
     * Returns the force on a contact.
     *
     * @param slot 0 to 2
     * @return its normal force for a force of 1 into the seat along the axis as drawn
     */
    public double forceShare(int slot) {
      Vec3 next = normals.get((slot + 1) % 3);
      Vec3 last = normals.get((slot + 2) % 3);
      Vec3 across = next.cross(last);
      return across.z() / across.dot(normals.get(slot));
    }
  }

  private static final double THIRD = 2 * Math.PI / 3;
  private static final int LEANS = 24;

  /** Refuses a ball without size and an angle at which it would wedge. */
  public IndexedSlotting {
    Objects.requireNonNull(limits, "limits of an indexed slotting must be given, found null");
    Bounds.positive("ball radius", ballRadius, "m");
    PivotSeat.checkedFlank("angle of the spindle", flankAngle);
  }

  /**
   * Returns the seat as cut with given errors.
   *
   * @param spindle error of the spindle's lean, rad; positive makes the flanks steeper
   * @param index error of the index at each of the three slots, rad
   * @param lean turn of the indexing axis about the apex, as a vector across the seat's axis, rad
   * @param high how far each slot is too shallow along its flank's normal, m
   * @return flanks and ball
   */
  public Cut cut(double spindle, double[] index, Vec3 lean, double[] high) {
    Pose turned = Pose.of(lean, Vec3.ZERO);
    Vec3[] n = new Vec3[3];
    for (int k = 0; k < 3; k++) {
      double angle = flankAngle + spindle;
      Vec3 push = Vec3.atAzimuth(k * THIRD + index[k]);
      n[k] =
          turned.rotate(
              push.times(Elementary.sin(angle)).plus(Vec3.Z.times(Elementary.cos(angle))));
    }
    Vec3 sum =
        n[1].cross(n[2])
            .times(ballRadius + high[0])
            .plus(n[2].cross(n[0]).times(ballRadius + high[1]))
            .plus(n[0].cross(n[1]).times(ballRadius + high[2]));
    return new Cut(sum.times(1 / n[0].dot(n[1].cross(n[2]))), List.of(n[0], n[1], n[2]));
  }

  /**
   * Finds what one source of error, or all, does at worst.
   *
   * @param source which
   * @return the worst of all combinations of limits, each quantity by itself
   */
  public Effect worst(Source source) {
    Limits at = limits.only(source);
    Cut drawn = cut(0, new double[3], Vec3.ZERO, new double[3]);
    double up = 0;
    double aside = 0;
    double angle = 0;
    double force = 0;
    int leans = at.axis() > 0 ? LEANS : 1;
    for (int signs = 0; signs < 128; signs++) {
      double[] index = new double[3];
      double[] high = new double[3];
      for (int k = 0; k < 3; k++) {
        index[k] = (signs >> k & 1) == 0 ? at.index() : -at.index();
        high[k] = (signs >> (k + 3) & 1) == 0 ? at.depth() : -at.depth();
      }
      double spindle = (signs >> 6 & 1) == 0 ? at.spindle() : -at.spindle();
      for (int d = 0; d < leans; d++) {
        Vec3 lean = Vec3.atAzimuth(2 * Math.PI * d / leans).times(at.axis());
        Cut cut = cut(spindle, index, lean, high);
        Vec3 off = cut.ballCentre().minus(drawn.ballCentre());
        up = Math.max(up, Math.abs(off.z()));
        aside = Math.max(aside, Elementary.hypot(off.x(), off.y()));
        for (int k = 0; k < 3; k++) {
          angle = Math.max(angle, Math.abs(cut.contactAngle(k) - flankAngle));
          force = Math.max(force, cut.forceShare(k) / drawn.forceShare(k) - 1);
        }
      }
    }
    return new Effect(up, aside, angle, force);
  }
}
