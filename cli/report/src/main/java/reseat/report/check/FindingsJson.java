package reseat.report.check;

import java.util.List;
import java.util.Locale;
import reseat.check.Finding;
import reseat.report.form.JsonWriter;

/** Findings for programs, under the key {@code findings}. */
public final class FindingsJson {

  private FindingsJson() {}

  public static void write(JsonWriter json, List<Finding> findings) {
    json.key("findings").beginArray();
    for (Finding f : findings) {
      json.beginObject();
      json.key("check").value(f.check());
      json.key("severity").value(f.severity().name().toLowerCase(Locale.ROOT));
      json.key("where").value(f.where());
      json.key("value").value(f.value());
      json.key("limit").value(f.limit());
      json.key("unit").value(f.measure().symbol());
      json.key("sense").value(f.sense() == Finding.Sense.AT_MOST ? "at most" : "at least");
      json.key("margin").value(f.margin());
      json.key("message").value(f.message());
      json.key("advice").value(f.advice());
      json.end();
    }
    json.end();
  }
}
