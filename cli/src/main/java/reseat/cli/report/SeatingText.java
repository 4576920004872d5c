package reseat.cli.report;

import java.util.Locale;
import reseat.design.Friction;
import reseat.remount.SelfSeating;
import reseat.study.RemountStudy;

/** Whether the holder seats itself: the friction at which each slide home stalls. */
final class SeatingText {

  private SeatingText() {}

  static String of(RemountStudy study) {
    Friction f = study.design().friction();
    TextTable table =
        new TextTable(
            "lrrrrl",
            "last to close",
            "stalls above",
            "rests above",
            "clamped above",
            "tips above",
            "seat");
    for (int i = 0; i < study.byHand().oneOpen().size(); i++) {
      SelfSeating.Path hand = study.byHand().oneOpen().get(i);
      SelfSeating.Path clamp = study.byPreload().oneOpen().get(i);
      row(table, String.join(", ", hand.open()), hand, clamp, f);
    }
    row(
        table,
        "worst with two open",
        study.byHand().worstTwoOpen(),
        study.byPreload().worstTwoOpen(),
        f);
    row(
        table,
        "worst with three open",
        study.byHand().worstThreeOpen(),
        study.byPreload().worstThreeOpen(),
        f);
    return "\nWill it seat? Friction "
        + number(f.low())
        + " to "
        + number(f.high())
        + ", computed with "
        + number(f.nominal())
        + "\n"
        + table.text()
        + Paragraph.of(
            "  ",
            "Stalls above: friction at which the slide stops, pushed home by weight and seating"
                + " force ("
                + Shown.force(study.design().remount().seatingForce())
                + "). Rests above: friction from which it can stand still there, set down gently under"
                + " the same force. Clamped above: the same under weight and full preload. Tips above: friction"
                + " from which a sliding contact opens and the holder goes another way. Friction"
                + " from: "
                + f.source()
                + ".");
  }

  private static void row(
      TextTable table, String name, SelfSeating.Path hand, SelfSeating.Path clamp, Friction f) {
    table.row(
        name,
        limit(hand.limitFriction()),
        limit(hand.restFriction()),
        limit(clamp.limitFriction()),
        limit(hand.tipFriction()),
        hand.lastSeat() + ": " + verdict(Math.min(hand.restFriction(), clamp.restFriction()), f));
  }

  private static String verdict(double limit, Friction f) {
    return limit > f.high()
        ? "seats"
        : limit > f.nominal()
            ? "MAY HANG UP within the range of friction"
            : "HANGS UP at " + number(f.nominal());
  }

  private static String limit(double friction) {
    return friction >= SelfSeating.GREATEST ? "never" : number(friction);
  }

  private static String number(double friction) {
    return String.format(Locale.ROOT, "%.2f", friction);
  }
}
