package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.BondJoint;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.plots.NumberText;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Tone;

/**
 * What stands below the section of a ball stud: key, caption, and the words for those who hear it.
 */
final class StudWords {

  private StudWords() {}

  /** The key of the section, a sketched lock nut drawn in the line given. */
  static List<Key.Entry> key(StudMount mount, LineStyle sketch) {
    List<Key.Entry> key = new ArrayList<>();
    mount
        .bond()
        .ifPresent(b -> key.add(Key.Entry.line(LineStyle.solid(Tone.ORANGE, 3), bondWords(b))));
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
                            + NumberText.length(t.engagement()))));
    if (mount.thread().flatMap(StudThread::lockNut).isPresent()) {
      key.add(Key.Entry.line(sketch, "lock nut, sketched"));
    }
    key.add(
        Key.Entry.line(
            LineStyle.HATCH,
            "stud of "
                + mount.material().name()
                + "; the ball gives "
                + NumberText.with(1e9 * mount.compliance().axial(), 3, "nm/N")
                + " along the stud and "
                + NumberText.with(1e9 * mount.compliance().lateral(), 3, "nm/N")
                + " across it"));
    return key;
  }

  private static String bondWords(BondJoint b) {
    return "bond: "
        + b.adhesive().name()
        + ", "
        + NumberText.with(1e6 * b.area(), 3, "mm\u00b2")
        + ", gap "
        + NumberText.with(1e3 * b.gap(), 2, "mm")
        + (b.bottomsOnMetal() ? ", the ball bottoms on metal" : "");
  }

  static String caption(StudMount mount) {
    return "How the ball stands on its stud, "
        + NumberText.with(1e3 * mount.stud().stickOut(), 4, "mm")
        + " out of the body; a shorter or thicker neck gives less.";
  }

  static String altText(String whose, StudMount mount) {
    return "Section along the stud "
        + whose
        + ": "
        + mount.description()
        + mount.bond().map(b -> "; " + bondWords(b)).orElse("")
        + ".";
  }
}
