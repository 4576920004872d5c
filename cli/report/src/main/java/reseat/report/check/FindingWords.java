package reseat.report.check;

import reseat.check.Statement;
import reseat.report.form.FigureText;

/** Statements of findings in plain words: the thing first, then what to do. */
public final class FindingWords {

  private FindingWords() {}

  /**
   * Puts a statement into words.
   *
   * @param statement what is to be said
   * @param figures how numbers are written
   * @return one sentence or more; empty for nothing
   */
  public static String of(Statement statement, FigureText figures) {
    Spoken s = new Spoken(statement, figures);
    return switch (statement.key()) {
      case NOTHING -> "";
      case PRESSURE,
          RING_CRACK,
          DENTED,
          WORK_IN,
          POLISH,
          STRENGTH_UNKNOWN,
          STATE_STRENGTH,
          CASE_DEPTH,
          PATCH_OVER_RADIUS,
          CLOSE_CONFORMITY,
          RING,
          LAP_RING,
          NEAR_EDGE,
          BOTTOMS,
          FLOOR_ROOM,
          FLANKS_NOT_STATED,
          STATE_FLANKS ->
          ContactWords.of(s);
      case OVER_CONSTRAINED,
          MOTION_FREE,
          BARELY_HELD,
          BARELY_HELD_SEVERAL,
          ALL_HELD,
          MOTION,
          LAYOUT_NOT_MADE,
          REFUSED,
          TOO_LARGE,
          TOO_SOFT,
          ERROR_MOTION,
          GROOVES_ON_BISECTORS,
          GROOVE_OFF_BISECTOR,
          TURN_TO_BISECTORS,
          NOT_PRESSED,
          LIFTS_OFF,
          LIFT_OFF_FACTOR,
          LITTLE_FORCE_LEFT,
          LOAD_INSIDE,
          LOAD_OUTSIDE,
          WIDEN_TRIANGLE,
          MOUNTINGS_GIVE,
          SHORTEN_STUDS,
          SOFTEST_AXIS ->
          LayoutWords.of(s);
      case PRELOAD_LINE,
          PRELOAD_SCATTER,
          STATE_TARGETS,
          DEVICE_SETTING,
          SETTING,
          BAND_AIM,
          BAND_TOO_NARROW,
          BAND_OUT_OF_REACH,
          ALL_IT_GIVES,
          MEASURE_FORCE,
          DEVICE_CAUTION,
          SEATS_BELOW,
          SEATS_ALWAYS ->
          PreloadWords.of(s);
      case STUD_STRESS,
          STUD_STRESS_UNJUDGED,
          STATE_YIELD,
          THICKEN_NECK,
          THREAD_UNJUDGED,
          STATE_TENSILE,
          THREAD_SLIPS,
          LOCK_THREAD,
          THREAD_BEARS,
          TIGHTEN_LESS,
          ENGAGE_MORE,
          NUT_TOO_LOOSE,
          TIGHTEN_NUT,
          NUT_SHIFT,
          SET_LOCK_READ,
          HAND_STEP,
          FINER_PITCH,
          BOND_USE,
          BOND_MORE,
          BOND_CAUTION,
          PIVOT_PRESSURE,
          PIVOT_UNJUDGED,
          DRAWN_OUT,
          LEAVES_PIVOT,
          PRESS_HARDER,
          STATE_PIVOT_YIELD,
          EASE_PIVOT,
          PIVOT_OVER_DETERMINED,
          TAKE_TRIHEDRAL,
          PIVOT_BY_FRICTION,
          GUIDE_SIDEWAYS,
          PAD_TILT,
          PAD_CURES,
          PAD_EDGE,
          DO_NOT_RUN,
          PAD_STIFFNESS ->
          BallMountWords.of(s);
      case GAP,
          REPEATABILITY,
          AT_THE_TARGET,
          HANG_UP,
          SEATS_WITH,
          HOLDERS_MISFIT,
          HOLDERS_APART,
          SURELY_SEATS,
          SEATING_NOT_LOOKED_AT,
          MOSTLY_FROM,
          UNUSUAL_VALUE,
          MEND_OR_ACCEPT,
          RESTS_ON,
          STATE_IT,
          ACCEPTANCE_UNUSED,
          ACCEPTANCE_LAPSED ->
          UseWords.of(s);
    };
  }
}
