package reseat.designfile;

import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/** Looks at balls and seats: a mouth, a neck or a pin tells the size of the ball it is made for. */
final class BallDoubts {

  /** Diameters of balls of couplings, m. */
  private static final Usual BALL = Usual.of(0.5e-3, 2e-3, 60e-3, 100e-3);

  /** Width of a mouth over the diameter of the ball. */
  private static final Usual MOUTH = Usual.of(0.15, 0.25, 1.35, 1.55);

  private static final Usual LENGTH = Usual.of(0.1, 0.3, 6, 15);
  private static final Usual ROOT = Usual.of(0.002, 0.01, 0.9, 1.2);
  private static final Usual PIN = Usual.of(0.1, 0.2, 1.5, 3);
  private static final Usual SPACING = Usual.of(0.2, 0.4, 0.97, 1.2);
  private static final Usual PAD = Usual.of(0.02, 0.15, 6, 15);
  private static final Usual HOLLOW = Usual.of(0.4, 0.5, 4, 12);
  private static final Usual MADE_FOR = Usual.of(0.5, 0.6, 1.6, 2);
  private static final Usual GAUGE = Usual.of(0.1, 0.2, 4, 8);
  private static final Usual CASE = Usual.of(0.01e-3, 0.05e-3, 8e-3, 15e-3);

  private BallDoubts() {}

  static void look(CouplingDesign d, Doubts doubts) {
    boolean layout = doubts.has("layout.circle_diameter");
    for (int i = 0; i < d.supports().size(); i++) {
      Support s = d.supports().get(i);
      String prefix = layout ? "layout." : "support[" + (i + 1) + "].";
      String seat = prefix + (layout ? inLayout(s.seat(), doubts) : "seat") + ".";
      ball(s, prefix + "ball.diameter", seat, d.couplingRadius(), doubts);
      double ball = doubts.sure(prefix + "ball.diameter", s.ball().diameter());
      seat(s.seat(), seat, ball, doubts);
      MountingDoubts.look(s.mounting(), prefix, ball, doubts);
    }
    String first = layout ? "layout.ball.diameter" : "support[1].ball.diameter";
    double ball = doubts.sure(first, d.supports().get(0).ball().diameter());
    for (Written w : doubts.written().values()) {
      if (w.key().startsWith("gauge.")) {
        doubts.look(w.key(), GAUGE, ball, "a gauge", "the ball's diameter");
      }
    }
  }

  private static String inLayout(Seat seat, Doubts doubts) {
    if (seat instanceof ConeSeat) {
      return "cone";
    }
    return seat instanceof FlatSeat
        ? "flat"
        : seat instanceof TrihedralSeat && doubts.has("layout.trihedral.flank_angle")
            ? "trihedral"
            : "groove";
  }

  /** Doubts the ball if it does not fit its seat but the one that was likely meant does. */
  private static void ball(Support s, String key, String seat, double radius, Doubts doubts) {
    Written w = doubts.at(key);
    if (w == null) {
      return;
    }
    doubts.look(key, BALL, "a ball diameter", " at " + s.name());
    double mouth = mouth(s.seat(), seat, doubts);
    if (!(mouth > 0) || doubts.has(seat + "made_for_ball")) {
      return;
    }
    double fit = mouth / w.size();
    if (fit >= MOUTH.least() && fit <= MOUTH.most()) {
      return;
    }
    double low = Math.max(mouth / MOUTH.high(), 2 * radius / 40);
    double high = Math.min(mouth / MOUTH.low(), 2 * radius / 2.5);
    LikelyValue meant = LikelyValue.of(w, low, high, true);
    if (!meant.isNone()) {
      String reason =
          "a ball of "
              + QuantityFormat.both(w.size(), QuantityKind.LENGTH)
              + " in a seat with a mouth of "
              + QuantityFormat.both(mouth, QuantityKind.LENGTH);
      doubts.add(w, new Usual(low, low, high, high, "judgement, from the mouth"), reason, meant);
    }
  }

  private static double mouth(Seat seat, String prefix, Doubts doubts) {
    boolean round = seat instanceof TrihedralSeat || seat instanceof ConeSeat;
    Written w = doubts.at(prefix + (round ? "mouth_diameter" : "mouth_width"));
    return w == null ? 0 : w.size();
  }

  private static void seat(Seat seat, String prefix, double ball, Doubts doubts) {
    String ofBall = "the ball's diameter";
    doubts.look(prefix + "made_for_ball", MADE_FOR, ball, "a ball", ofBall);
    Written other = doubts.at(prefix + "made_for_ball");
    double cutFor = other == null ? ball : doubts.sure(other.key(), other.size());
    doubts.look(prefix + "mouth_width", MOUTH, cutFor, "a mouth", ofBall);
    doubts.look(prefix + "mouth_diameter", MOUTH, cutFor, "a mouth", ofBall);
    doubts.look(prefix + "root_width", ROOT, cutFor, "a relief at the root", ofBall);
    doubts.look(prefix + "root_diameter", ROOT, cutFor, "a relief at the root", ofBall);
    doubts.look(prefix + "root_depth", ROOT, ball, "the depth of a relief", ofBall);
    doubts.look(prefix + "length", LENGTH, ball, "the length of a groove", ofBall);
    doubts.look(prefix + "pad_diameter", PAD, ball, "a flat", ofBall);
    doubts.look(prefix + "flank_radius", HOLLOW, ball, "a hollow flank", ofBall);
    doubts.look(prefix + "case_depth", CASE, "a hardened case");
    if (seat instanceof CylinderPair) {
      doubts.look(prefix + "pin_diameter", PIN, ball, "a pin", ofBall);
      Written w = doubts.at(prefix + "pin_diameter");
      double pin = w == null ? ball : doubts.sure(w.key(), w.size());
      String sum = "ball and pin radius together";
      doubts.look(prefix + "spacing", SPACING.times(2), (ball + pin) / 2, "pins at a spacing", sum);
      doubts.look(prefix + "floor_depth", Usual.of(0.02, 0.1, 2, 6), pin, "a floor", "the pin");
    }
  }
}
