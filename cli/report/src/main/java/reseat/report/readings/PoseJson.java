package reseat.report.readings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.readings.PoseScatter;
import reseat.readings.PoseScatter.Figure;
import reseat.readings.RigidMotion;
import reseat.report.form.JsonWriter;
import reseat.space.Vec3;

/** Motions of the holder as a whole as JSON. */
public final class PoseJson {

  private PoseJson() {}

  /**
   * Writes one object under the key {@code pose}.
   *
   * @param json an object is open
   * @param scatter the motions
   * @param points points, m
   */
  public static void write(JsonWriter json, PoseScatter scatter, List<Vec3> points) {
    json.key("pose").beginObject();
    json.key("probes").value(scatter.layout().probes().size());
    json.key("mounts").value(scatter.poses().size());
    json.key("condition").value(scatter.layout().condition());
    scatter.misfit().ifPresent(m -> json.key("misfit_over_noise").value(m));
    json.key("motions").beginObject();
    for (Map.Entry<RigidMotion, Figure> entry : scatter.motions().entrySet()) {
      String unit = entry.getKey().isRotation() ? "rad" : "m";
      figure(json, entry.getKey().name().toLowerCase(Locale.ROOT), entry.getValue(), unit);
    }
    json.end();
    json.key("points").beginArray();
    for (Vec3 p : points) {
      json.beginObject();
      json.key("at_m").value(p);
      figure(json, "x", scatter.scatterOf(p, Vec3.X), "m");
      figure(json, "y", scatter.scatterOf(p, Vec3.Y), "m");
      figure(json, "z", scatter.scatterOf(p, Vec3.Z), "m");
      json.end();
    }
    json.end();
    json.end();
  }

  private static void figure(JsonWriter json, String name, Figure figure, String unit) {
    json.key(name).beginObject();
    json.key("s_" + unit).value(figure.s());
    json.key("probe_noise_" + unit).value(figure.probeNoise());
    json.end();
  }
}
