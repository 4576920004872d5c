package reseat.report.remount;

import reseat.design.MachineAxes;
import reseat.numerics.VectorScatter;
import reseat.report.form.JsonWriter;
import reseat.space.Vec3;

/** Scatter of a vector for programs: the same keys for tool changes and for holders. */
public final class ScatterJson {

  private static final String[] NAMES = {"x", "y", "z"};

  private final JsonWriter json;
  private final MachineAxes axes;

  public ScatterJson(JsonWriter json, MachineAxes axes) {
    this.json = json;
    this.axes = axes;
  }

  /**
   * Writes {@code tool_point} and {@code covariance_m2}.
   *
   * @param v shift of the tool point along x, y, z of the coupling frame, m
   */
  public void toolPoint(VectorScatter v) {
    json.key("tool_point").beginObject();
    for (int k = 0; k < NAMES.length; k++) {
      json.key(NAMES[k]).beginObject();
      statistics(v, k, "_m");
      json.end();
    }
    json.end();
    Vec3 s = v.deviation();
    Vec3 c = v.covariances();
    json.key("covariance_m2").beginArray();
    json.row(s.x() * s.x(), c.x(), c.z());
    json.row(c.x(), s.y() * s.y(), c.y());
    json.row(c.z(), c.y(), s.z() * s.z());
    json.end();
  }

  /**
   * Writes the name, direction and statistics of one machine axis into an open object.
   *
   * @param v shift of the tool point along the machine's axes, m
   * @param k number of the axis, 0 to 2
   */
  public void machineAxis(VectorScatter v, int k) {
    json.key("name").value(axes.axis(k).name());
    json.key("direction").value(axes.axis(k).direction());
    statistics(v, k, "_m");
  }

  /**
   * Writes an array with one object for each machine axis; an empty one if nothing was counted.
   *
   * @param key name of the array
   * @param v along the machine's axes
   * @param unit end of each key, such as {@code _rad}
   */
  public void along(String key, VectorScatter v, String unit) {
    json.key(key).beginArray();
    for (int k = 0; k < 3 && v.count() > 0; k++) {
      json.beginObject();
      json.key("axis").value(axes.axis(k).name());
      statistics(v, k, unit);
      json.end();
    }
    json.end();
  }

  private void statistics(VectorScatter v, int k, String unit) {
    json.key("mean" + unit).value(v.mean().component(k));
    json.key("sd" + unit).value(v.deviation().component(k));
    json.key("range" + unit).value(v.range().component(k));
    json.key("p95" + unit).value(v.band().component(k));
    json.key("least" + unit).value(v.least().component(k));
    json.key("greatest" + unit).value(v.greatest().component(k));
  }
}
