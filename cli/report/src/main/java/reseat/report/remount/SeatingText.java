package reseat.report.remount;

import java.util.List;
import reseat.design.Friction;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.seating.SelfSeating;
import reseat.study.RemountStudy;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/** Whether the holder seats itself: the friction at which each slide home stalls. */
public final class SeatingText {

  private SeatingText() {}

  public static String of(RemountStudy study, Screen screen) {
    return screen.all() ? whole(study, screen) : brief(study, screen);
  }

  /** The lowest friction at which the holder sticks, by hand and by preload. */
  private static String brief(RemountStudy study, Screen screen) {
    Friction f = study.design().friction();
    return Paragraph.of(
        "",
        "Seats by itself below a friction of "
            + limit(lowest(study.byHand().oneOpen()))
            + " pushed by hand ("
            + screen.figures().quantity(study.design().remount().seatingForce(), QuantityKind.FORCE)
            + "), "
            + limit(lowest(study.byPreload().oneOpen()))
            + " under full preload; expected "
            + number(f.low())
            + " to "
            + number(f.high())
            + ".");
  }

  private static double lowest(List<SelfSeating.Path> ways) {
    return ways.stream().mapToDouble(SelfSeating.Path::limitFriction).min().orElseThrow();
  }

  private static String whole(RemountStudy study, Screen screen) {
    Friction f = study.design().friction();
    TextTable table =
        new TextTable(
            "lrrrrl",
            "last to close",
            "sticks above",
            "rests above",
            "jams above",
            "tips over above",
            "verdict");
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
            "Sticks above: friction at which the slide stops, pushed home by weight and seating"
                + " force ("
                + screen
                    .figures()
                    .quantity(study.design().remount().seatingForce(), QuantityKind.FORCE)
                + "). Rests above: friction from which it can stand still there, set down gently under"
                + " the same force. Jams above: the same under weight and full preload. Tips over above: friction"
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
        verdict(Math.min(hand.restFriction(), clamp.restFriction()), f));
  }

  private static String verdict(double limit, Friction f) {
    return limit > f.high()
        ? "seats"
        : limit > f.nominal()
            ? "MAY HANG UP in the expected range"
            : "HANGS UP at " + number(f.nominal());
  }

  private static String limit(double friction) {
    return friction >= SelfSeating.GREATEST ? "never" : number(friction);
  }

  private static String number(double friction) {
    return FilledText.of("%.2f", friction);
  }
}
