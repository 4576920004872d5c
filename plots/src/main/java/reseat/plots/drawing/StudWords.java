package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.BondJoint;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Tone;

/**
 * What stands below the section of a ball stud: key, caption, and the words for those who hear it.
 */
final class StudWords {

  private StudWords() {}

  /** The key of the section, a sketched lock nut drawn in the line given. */
  static List<Key.Entry> key(StudMount mount, LineStyle sketch, DrawingUnits units) {
    List<Key.Entry> key = new ArrayList<>();
    mount
        .bond()
        .ifPresent(b -> key.add(Key.Entry.line(LineStyle.solid(Tone.ORANGE, 3), bondWords(b, units))));
    mount
        .thread()
        .ifPresent(
            t ->
                key.add(
                    Key.Entry.line(
                        LineStyle.THIN,
                        "thread "
                            + t.limits().thread().designation()
                            + ", engaged over "
                            + units.dimension(t.engagement()))));
    if (mount.thread().flatMap(StudThread::lockNut).isPresent()) {
      key.add(Key.Entry.line(sketch, "lock nut, sketched"));
    }
    key.add(
        Key.Entry.line(
            LineStyle.HATCH,
            "stud of "
                + mount.material().name()
                + "; the ball gives "
                + units.give(mount.compliance().axial())
                + " along the stud and "
                + units.give(mount.compliance().lateral())
                + " across it"));
    return key;
  }

  private static String bondWords(BondJoint b, DrawingUnits units) {
    return "bond: "
        + b.adhesive().name()
        + ", "
        + units.area(b.area())
        + ", gap "
        + units.length(b.gap(), 2)
        + (b.bottomsOnMetal() ? ", the ball bottoms on metal" : "");
  }

  private static String described(StudMount mount, DrawingUnits units) {
    return mount.material().name()
        + " stud "
        + units.dimension(mount.stud().neckDiameter())
        + ", standing out "
        + units.dimension(mount.stud().stickOut())
        + mount.thread().map(t -> ", thread " + t.limits().thread()).orElse("");
  }

  static String caption(StudMount mount, DrawingUnits units) {
    return "How the ball stands on its stud, "
        + units.length(mount.stud().stickOut(), 4)
        + " out of the body; a shorter or thicker neck gives less.";
  }

  static String altText(String whose, StudMount mount, DrawingUnits units) {
    return "Section along the stud "
        + whose
        + ": "
        + described(mount, units)
        + mount.bond().map(b -> "; " + bondWords(b, units)).orElse("")
        + ".";
  }
}
