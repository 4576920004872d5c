package reseat.report.check;

import java.util.List;
import reseat.check.Measure;
import reseat.design.AssumedValue;
import reseat.report.form.JsonWriter;
import reseat.study.AssumedShare;

/** What a result rests on and the file does not state, for programs, under {@code assumed}. */
public final class AssumedJson {

  private AssumedJson() {}

  /**
   * Writes the list.
   *
   * @param json where to, within an object
   * @param assumed the largest share first
   */
  public static void write(JsonWriter json, List<AssumedShare> assumed) {
    json.key("assumed").beginArray();
    for (AssumedShare s : assumed) {
      AssumedValue a = s.value();
      json.beginObject();
      json.key("key").value(a.key());
      if (a.kind().isPresent()) {
        json.key("value").value(a.value());
        json.key("unit").value(Measure.of(a.kind().get()).symbol());
      } else {
        json.key("value").value(a.words());
      }
      json.key("source").value(a.source());
      json.key("share").value(s.share());
      json.end();
    }
    json.end();
  }
}
