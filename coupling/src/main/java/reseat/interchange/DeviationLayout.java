package reseat.interchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.seat.Flank;

/**
 * Which number of a state is which dimension of a coupling.
 *
 * <p>A state holds the deviation of every dimension from its drawing, m, rad or K: for each kind
 * one number per support, per contact, per machine axis, or a single one.
 */
final class DeviationLayout {

  /**
   * One dimension.
   *
   * @param kind which kind
   * @param support index of the support; -1 where the kind has none
   * @param contact index of the contact; -1 where the kind has none
   * @param part name of the flank or machine axis; empty where the kind has none
   */
  record Dimension(ToleranceKind kind, int support, int contact, String part) {}

  /** Where the dimensions of each kind begin, by name for the simulation's inner loop. */
  final int ballDiameter;

  final int ballForm;
  final int ballAcross;
  final int ballAlong;
  final int ballHeight;
  final int seatAcross;
  final int seatAlong;
  final int seatDepth;
  final int seatDirection;
  final int seatPitch;
  final int seatRoll;
  final int flankAngle;
  final int flankPosition;
  final int pinDiameter;
  final int pinSpacing;
  final int flankRadius;
  final int archOffset;
  final int toolPoint;
  final int temperature;

  private final Map<ToleranceKind, Integer> first = new EnumMap<>(ToleranceKind.class);
  private final List<Dimension> dimensions = new ArrayList<>();

  DeviationLayout(CouplingDesign design) {
    for (ToleranceKind kind : ToleranceKind.values()) {
      first.put(kind, dimensions.size());
      switch (kind.scope()) {
        case SUPPORT -> {
          for (int b = 0; b < design.supports().size(); b++) {
            dimensions.add(new Dimension(kind, b, -1, ""));
          }
        }
        case FLANK -> addFlanks(kind, design.supports());
        case MACHINE_AXIS -> {
          for (int k = 0; k < 3; k++) {
            dimensions.add(new Dimension(kind, -1, -1, design.axes().axis(k).name()));
          }
        }
        case WHOLE -> dimensions.add(new Dimension(kind, -1, -1, ""));
      }
    }
    ballDiameter = first.get(ToleranceKind.BALL_DIAMETER);
    ballForm = first.get(ToleranceKind.BALL_FORM);
    ballAcross = first.get(ToleranceKind.BALL_ACROSS);
    ballAlong = first.get(ToleranceKind.BALL_ALONG);
    ballHeight = first.get(ToleranceKind.BALL_HEIGHT);
    seatAcross = first.get(ToleranceKind.SEAT_ACROSS);
    seatAlong = first.get(ToleranceKind.SEAT_ALONG);
    seatDepth = first.get(ToleranceKind.SEAT_DEPTH);
    seatDirection = first.get(ToleranceKind.SEAT_DIRECTION);
    seatPitch = first.get(ToleranceKind.SEAT_PITCH);
    seatRoll = first.get(ToleranceKind.SEAT_ROLL);
    flankAngle = first.get(ToleranceKind.FLANK_ANGLE);
    flankPosition = first.get(ToleranceKind.FLANK_POSITION);
    pinDiameter = first.get(ToleranceKind.PIN_DIAMETER);
    pinSpacing = first.get(ToleranceKind.PIN_SPACING);
    flankRadius = first.get(ToleranceKind.FLANK_RADIUS);
    archOffset = first.get(ToleranceKind.ARCH_OFFSET);
    toolPoint = first.get(ToleranceKind.TOOL_POINT);
    temperature = first.get(ToleranceKind.TEMPERATURE);
  }

  private void addFlanks(ToleranceKind kind, List<Support> supports) {
    int contact = 0;
    for (int b = 0; b < supports.size(); b++) {
      for (Flank f : supports.get(b).seat().flanks()) {
        dimensions.add(new Dimension(kind, b, contact++, f.name()));
      }
    }
  }

  /** How many numbers a state has. */
  int size() {
    return dimensions.size();
  }

  /** What a number of the state stands for. */
  Dimension at(int place) {
    return dimensions.get(place);
  }

  /** Where the first dimension of a kind stands; those of other supports, contacts, axes follow. */
  int first(ToleranceKind kind) {
    return first.get(kind);
  }
}
