package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.NumberText;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/** One polar map. */
final class PolarPanel {

  private static final int RINGS = 4;
  private static final double RING_LABELS_AT = Elementary.toRadians(67.5);
  private static final double SMALLEST_SECTOR = Elementary.toRadians(11);

  static final LineStyle CURVE = LineStyle.solid(Tone.BLUE, 1.8);

  private final PolarLiftOff.Plane plane;
  private final double outer;
  private final double radius;
  private final Point middle;
  private final LabelPlacer placer;
  private final DrawingUnits units;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();

  private PolarPanel(PolarLiftOff.Plane plane, double outer, double width, DrawingUnits units) {
    this.units = units;
    this.plane = plane;
    this.outer = outer;
    this.radius = width / 2 - 58;
    this.middle = new Point(width / 2, 28 + 34 + radius);
    this.placer = new LabelPlacer(new Box(1, 22, width - 1, middle.y() + radius + 36));
  }

  static Scene of(PolarLiftOff.Plane plane, double outer, double width, DrawingUnits units) {
    PolarPanel p = new PolarPanel(plane, outer, width, units);
    p.grid(width);
    p.placer.avoidCircle(p.middle, p.radius);
    p.curve();
    p.weakest();
    p.sectors();
    Scene.Builder scene = new Scene.Builder().addAll(p.marks).addAll(p.words);
    return scene.build(width, p.middle.y() + p.radius + 38);
  }

  private void grid(double width) {
    String heading =
        TextWidth.shortened(
            "force in the " + plane.first() + "\u2013" + plane.second() + " plane",
            TextStyle.LABEL,
            width - 4);
    words.add(Mark.Text.level(heading, new Point(width / 2, 14), Anchor.MIDDLE, TextStyle.LABEL));
    for (int i = 1; i <= RINGS; i++) {
      LineStyle line = i == RINGS ? LineStyle.THIN : LineStyle.HATCH;
      marks.add(Mark.Oval.circle(middle, radius * i / RINGS, line, Fill.NONE));
      String force =
          i == RINGS ? units.force(outer) : NumberText.significant(units.forceIn(outer) * i / RINGS, 3);
      Mark.Text label =
          new Mark.Text(
              force,
              middle.toward(radius * i / RINGS, RING_LABELS_AT).moved(0, 4),
              Anchor.MIDDLE,
              TextStyle.NOTE,
              0,
              true);
      words.add(label);
      placer.keepClear(label.box());
    }
    String[] names = {plane.first(), plane.second(), plane.first(), plane.second()};
    for (int i = 0; i < 4; i++) {
      double angle = i * Math.PI / 2;
      marks.add(Mark.Path.line(middle, middle.toward(radius, angle), LineStyle.HATCH));
      String name =
          TextWidth.shortened(
              (i < 2 ? "+" : "\u2212") + names[i], TextStyle.SMALL, i % 2 == 0 ? 50 : 120);
      Point at = middle.toward(radius + 8, angle);
      Anchor anchor = i == 0 ? Anchor.START : i == 2 ? Anchor.END : Anchor.MIDDLE;
      double down = i == 1 ? 0 : i == 3 ? 8 : 4;
      Mark.Text label = Mark.Text.level(name, at.moved(0, down), anchor, TextStyle.SMALL);
      words.add(label);
      placer.keepClear(label.box().grown(2));
    }
  }

  private Point at(PolarLiftOff.Ray ray) {
    return middle.toward(radius * Math.min(ray.force(), outer) / outer, ray.angle());
  }

  private void curve() {
    List<PolarLiftOff.Ray> rays = plane.rays();
    marks.add(
        Mark.Path.polygon(
            rays.stream().map(this::at).toList(), LineStyle.NONE, new Fill(CURVE.tone(), 0.10)));
    List<List<Point>> parts = new ArrayList<>();
    List<Point> part = new ArrayList<>();
    for (int i = 0; i < rays.size(); i++) {
      PolarLiftOff.Ray ray = rays.get(i);
      PolarLiftOff.Ray next = rays.get((i + 1) % rays.size());
      boolean seen = ray.force() < outer;
      if (seen && part.isEmpty()) {
        part.add(at(ray));
      }
      if (seen && next.force() < outer) {
        part.add(at(next));
      } else if (seen) {
        part.add(crossing(ray, next));
        parts.add(List.copyOf(part));
        part.clear();
      } else if (next.force() < outer) {
        part.add(crossing(next, ray));
        part.add(at(next));
      }
    }
    if (part.size() > 1) {
      parts.add(part);
    }
    if (!parts.isEmpty()) {
      marks.add(new Mark.Path(parts, false, CURVE, Fill.NONE));
    }
  }

  /** Where the line between a ray that is seen and one that is not meets the outer ring. */
  private Point crossing(PolarLiftOff.Ray seen, PolarLiftOff.Ray beyond) {
    Point p = at(seen).minus(middle);
    double far = radius * Math.min(beyond.force(), 1e3 * outer) / outer;
    Point d = middle.toward(far, beyond.angle()).minus(middle).minus(p);
    double a = d.x() * d.x() + d.y() * d.y();
    double b = p.x() * d.x() + p.y() * d.y();
    double c = p.x() * p.x() + p.y() * p.y() - radius * radius;
    double t = a == 0 ? 0 : (-b + Math.sqrt(Math.max(0, b * b - a * c))) / a;
    return middle.plus(p).plus(d.times(Math.max(0, Math.min(1, t))));
  }

  private void weakest() {
    PolarLiftOff.Ray least = plane.rays().get(0);
    for (PolarLiftOff.Ray r : plane.rays()) {
      if (r.force() < least.force()) {
        least = r;
      }
    }
    if (!(least.force() < outer)) {
      return;
    }
    Point p = at(least);
    marks.add(Mark.Oval.circle(p, 3.5, LineStyle.solid(Tone.INK, 1), Fill.full(CURVE.tone())));
    placer.keepClear(Box.about(p, 4));
    placer
        .place(
            List.of(units.force(least.force())),
            TextStyle.SMALL,
            p,
            6,
            least.angle() + Math.PI)
        .ifPresent(l -> words.addAll(l.marks()));
  }

  /** Names, round the ring, the contact that opens first in each sector. */
  private void sectors() {
    keepOutOfTheDisc();
    List<PolarLiftOff.Ray> rays = plane.rays();
    int n = rays.size();
    int start = 0;
    while (start < n && rays.get(start).contact().equals(rays.get((start + n - 1) % n).contact())) {
      start++;
    }
    start %= n;
    int from = start;
    for (int k = 1; k <= n; k++) {
      int i = (start + k) % n;
      if (k == n || !rays.get(i).contact().equals(rays.get(from).contact())) {
        sector(rays, from, start + k - 1);
        from = i;
      }
    }
  }

  /** Names of sectors belong outside; strips fill the disc for the placer, which knows boxes. */
  private void keepOutOfTheDisc() {
    int strips = 12;
    for (int i = 0; i < strips; i++) {
      double from = radius * (2.0 * i / strips - 1);
      double to = radius * (2.0 * (i + 1) / strips - 1);
      double far = Math.max(Math.abs(from), Math.abs(to));
      double half = Math.sqrt(Math.max(0, radius * radius - far * far));
      placer.keepClear(
          new Box(middle.x() - half, middle.y() + from, middle.x() + half, middle.y() + to));
    }
  }

  private void sector(List<PolarLiftOff.Ray> rays, int from, int to) {
    int n = rays.size();
    int steps = Math.floorMod(to - from, n);
    PolarLiftOff.Ray first = rays.get(from);
    if (steps * 2 * Math.PI / n < SMALLEST_SECTOR || first.contact().isEmpty()) {
      return;
    }
    if (steps < n - 1) {
      marks.add(
          Mark.Path.line(
              middle.toward(radius - 5, first.angle()),
              middle.toward(radius + 5, first.angle()),
              LineStyle.solid(Tone.MUTED, 1)));
    }
    double angle = first.angle() + steps * Math.PI / n;
    placer
        .place(lines(first.contact()), TextStyle.NOTE, middle.toward(radius, angle), 7, angle)
        .ifPresent(l -> words.addAll(l.marks()));
  }

  /** A contact's name, what is in brackets on a line of its own. */
  private static List<String> lines(String contact) {
    int bracket = contact.indexOf(" (");
    List<String> lines =
        bracket > 0
            ? List.of(contact.substring(0, bracket), contact.substring(bracket + 1))
            : List.of(contact);
    return lines.stream().map(s -> TextWidth.shortened(s, TextStyle.NOTE, 90)).toList();
  }
}
