package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;
import reseat.seat.Ball;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;

/**
 * A section through a ball and its seat, to scale, with contact normals and patches, and one
 * contact enlarged to show its distance from the nearest edge.
 */
public final class SeatSection {

  private static final double WIDTH = 600;
  private static final double VIEW_WIDTH = 350;
  private static final double VIEW_HEIGHT = 300;
  private static final double HATCH = 7;

  private SeatSection() {}

  /**
   * Draws the section.
   *
   * @param name name of the picture, for instance {@code seat-front}
   * @param support the ball and its seat
   * @param contacts this support's contacts in some state, in the order of the seat's flanks
   * @param units units of its words
   * @return the picture
   * @throws IllegalArgumentException if there is not one contact per flank
   */
  public static Picture draw(
      String name,
      Support support,
      List<Equilibrium.Contact> contacts,
      DrawingUnits units) {
    return draw(name, "of ball " + support.name(), support, contacts, units);
  }

  static Picture draw(
      String name,
      String whose,
      Support support,
      List<Equilibrium.Contact> contacts,
      DrawingUnits units) {
    if (contacts.size() != support.seat().flanks().size()) {
      throw new IllegalArgumentException(
          "support "
              + support.name()
              + " has "
              + support.seat().flanks().size()
              + " flanks, found "
              + contacts.size()
              + " contacts");
    }
    List<SectionContact> drawn = SectionContact.of(support, contacts);
    Scene.Builder scene = new Scene.Builder();
    SheetView view = view(support);
    scene.addAll(section(support, drawn, view, units));
    SectionContact shown = mostCritical(drawn);
    Scene inset = ContactInset.of(support, shown, view, WIDTH - VIEW_WIDTH - 14, units);
    scene.place(inset, VIEW_WIDTH + 8, 6);
    scene.addAll(ScaleBar.of(view, WIDTH - 8, VIEW_HEIGHT - 14, 150, units));
    Scene key = Key.of(key(drawn, units), WIDTH - 12, 1);
    scene.place(key, 6, VIEW_HEIGHT + 12);
    return Picture.of(
        PictureKind.SEAT_SECTION,
        name,
        "Section through the seat " + whose,
        caption(shown, units),
        altText(support, drawn, units),
        scene.build(WIDTH, VIEW_HEIGHT + 12 + key.height()));
  }

  private static SheetView view(Support support) {
    SeatProfile.Cut cut = SeatProfile.of(support.seat(), support.ball());
    Ball ball = support.ball();
    Point c = SeatProfile.inCut(support.seat(), ball.centre());
    SheetView.Extent e = new SheetView.Extent();
    e.include(c.x(), c.y(), 1.02 * ball.radius());
    cut.bodies().forEach(b -> b.forEach(p -> e.include(p.x(), p.y(), 0)));
    e.include(c.x(), cut.low() - 0.12 * ball.radius(), 0);
    return SheetView.fitting(e, new Box(12, 26, VIEW_WIDTH - 12, VIEW_HEIGHT - 26));
  }

  private static List<Mark> section(
      Support support, List<SectionContact> contacts, SheetView view, DrawingUnits units) {
    Seat seat = support.seat();
    SeatProfile.Cut cut = SeatProfile.of(seat, support.ball());
    List<Mark> marks = new ArrayList<>();
    LabelPlacer placer = new LabelPlacer(new Box(2, 2, VIEW_WIDTH, VIEW_HEIGHT));
    boolean falling = false;
    for (List<Point> body : cut.bodies()) {
      List<Point> polygon = body.stream().map(p -> view.of(p.x(), p.y())).toList();
      Hatch.of(polygon, HATCH, falling).ifPresent(marks::add);
      Mark.Path outline = Mark.Path.polygon(polygon, LineStyle.OUTLINE, Fill.NONE);
      marks.add(outline);
      placer.avoid(outline);
      falling = !falling;
    }
    Point c = SeatProfile.inCut(seat, support.ball().centre());
    Point centre = view.of(c.x(), c.y());
    double r = view.length(support.ball().radius());
    marks.add(Mark.Oval.circle(centre, r, LineStyle.OUTLINE, new Fill(Tone.SKY, 0.15)));
    marks.add(Sign.centreCross(centre, r + 8));
    placer.avoidCircle(centre, r);
    if (cut.mouth().size() == 2) {
      List<Mark> dimension = mouth(cut, view, units);
      marks.addAll(dimension);
      placer.keepClear(dimension.get(dimension.size() - 1).box().grown(2));
    }
    for (SectionContact contact : contacts) {
      marks.addAll(contact.marks(view, centre, r));
      contact.avoid(placer, view, centre);
    }
    for (SectionContact contact : contacts) {
      marks.addAll(contact.label(placer, view, centre, r, units));
    }
    marks.addAll(outsideTheCut(contacts, placer, view));
    placer
        .place(
            List.of("ball \u00d8" + units.dimension(support.ball().diameter())),
            TextStyle.SMALL,
            centre.toward(r, Math.PI / 3),
            4,
            Math.PI / 2)
        .ifPresent(p -> marks.addAll(p.marks()));
    return marks;
  }

  /** One label for the contacts that lie before or behind the cut, on the same spot. */
  private static List<Mark> outsideTheCut(
      List<SectionContact> contacts, LabelPlacer placer, SheetView view) {
    List<SectionContact> outside = contacts.stream().filter(c -> !c.inPlane()).toList();
    if (outside.isEmpty()) {
      return List.of();
    }
    String names = outside.stream().map(SectionContact::flank).collect(Collectors.joining(" and "));
    Point at = view.of(outside.get(0).at().x(), outside.get(0).at().y());
    return placer
        .place(List.of(names, "outside the cut"), TextStyle.SMALL, at, 5, 0)
        .map(LabelPlacer.Placed::marks)
        .orElse(List.of());
  }

  private static List<Mark> mouth(SeatProfile.Cut cut, SheetView view, DrawingUnits units) {
    Point a = cut.mouth().get(0);
    Point b = cut.mouth().get(1);
    Point left = view.of(a.x(), a.y());
    Point right = view.of(b.x(), b.y());
    double down = view.of(0, cut.low()).y() - Math.max(left.y(), right.y()) + 16;
    return DimensionLine.of(
        new Point(left.x(), Math.max(left.y(), right.y())),
        new Point(right.x(), Math.max(left.y(), right.y())),
        -down,
        units.dimension(b.x() - a.x()));
  }

  private static SectionContact mostCritical(List<SectionContact> contacts) {
    SectionContact best = contacts.get(0);
    for (SectionContact c : contacts) {
      if (c.inPlane() && c.edgeDistance() < best.edgeDistance()) {
        best = c;
      }
    }
    return best;
  }

  private static List<Key.Entry> key(List<SectionContact> contacts, DrawingUnits units) {
    List<Key.Entry> entries = new ArrayList<>();
    for (SectionContact c : contacts) {
      entries.add(
          new Key.Entry(
              List.of(Mark.Path.line(new Point(-9, 0), new Point(9, 0), SectionContact.PATCH)),
              c.words(units)));
    }
    return entries;
  }

  private static String caption(SectionContact shown, DrawingUnits units) {
    String edge =
        Double.isFinite(shown.edgeDistance())
            ? "the patch of the "
                + shown.flank()
                + " contact ends "
                + units.length((shown.edgeDistance() - shown.halfPatch()), 3)
                + " before the edge"
            : "no edge is stated near the contacts";
    return "How the ball lies in its seat, cut through the ball's centre: " + edge + ".";
  }

  private static String altText(
      Support support, List<SectionContact> contacts, DrawingUnits units) {
    Optional<SeatClearance> floor =
        support.seat().clearances(support.ball()).stream()
            .filter(c -> c.feature() == SeatClearance.Feature.FLOOR)
            .findFirst();
    return "Section through ball "
        + support.name()
        + ", diameter "
        + units.length(support.ball().diameter(), 5)
        + ". "
        + contacts.stream().map(c -> c.words(units)).collect(Collectors.joining("; "))
        + floor
            .map(f -> "; ball clears the floor by " + units.length(f.distance(), 3))
            .orElse("")
        + ".";
  }
}
