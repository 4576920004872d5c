package reseat.designfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.AdjustingScrews;
import reseat.ballmount.ScrewThread;
import reseat.design.AdjustmentTask;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/** Reads three adjusting screws and the three indicators that watch them. */
final class AdjustmentReader {

  private static final Map<String, AdjustingScrews.Clockwise> CLOCKWISE = clockwise();

  private AdjustmentReader() {}

  private static Map<String, AdjustingScrews.Clockwise> clockwise() {
    Map<String, AdjustingScrews.Clockwise> words = new LinkedHashMap<>();
    words.put("raises", AdjustingScrews.Clockwise.RAISES);
    words.put("lowers", AdjustingScrews.Clockwise.LOWERS);
    return words;
  }

  /**
   * Reads the task.
   *
   * @param s its table
   * @param ofStud thread of the stud, taken unless the table names another
   * @return the task, unless something is wrong
   */
  static Optional<AdjustmentTask> read(Section s, Optional<ScrewThread> ofStud) {
    Optional<ScrewThread> thread = s.has("thread") ? ThreadReader.designation(s, "thread") : ofStud;
    if (thread.isEmpty() && !s.has("thread")) {
      s.error("thread", "is missing; write the thread of the adjusting screws, such as \"3/8-40\"");
    }
    Optional<AdjustingScrews.Clockwise> turn = s.requiredChoice("clockwise", CLOCKWISE);
    List<Vec3> screws = new ArrayList<>();
    List<String> screwNames = new ArrayList<>();
    for (Section t : s.children("screw")) {
      screwNames.add(t.text("name", "screw " + (screwNames.size() + 1)));
      screws.add(place(t));
      t.close();
    }
    List<Vec3> stations = new ArrayList<>();
    List<String> stationNames = new ArrayList<>();
    List<Double> readings = new ArrayList<>();
    List<Double> wanted = new ArrayList<>();
    for (Section t : s.children("indicator")) {
      stationNames.add(t.text("name", "indicator " + (stationNames.size() + 1)));
      stations.add(place(t));
      readings.add(t.required("reads", QuantityKind.LENGTH, 0));
      wanted.add(t.quantity("wanted", QuantityKind.LENGTH, 0));
      t.close();
    }
    three(s, "screw", screws.size());
    three(s, "indicator", stations.size());
    s.close();
    if (thread.isEmpty() || turn.isEmpty() || screws.size() != 3 || stations.size() != 3) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new AdjustmentTask(
              new AdjustingScrews(thread.get(), turn.get(), screws, stations),
              screwNames,
              stationNames,
              readings,
              wanted));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static Vec3 place(Section t) {
    if (!t.has("at")) {
      t.error("at", "is missing; write [\"x\", \"y\", \"z\"]; z does not count");
    }
    return t.vector("at", QuantityKind.LENGTH).orElse(Vec3.ZERO);
  }

  private static void three(Section s, String key, int found) {
    if (found != 3) {
      s.error(
          key,
          "found "
              + found
              + "; three [["
              + s.key(key)
              + "]] tables are wanted, for a plane has"
              + " three heights");
    }
  }
}
