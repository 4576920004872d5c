package reseat.designfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.design.KeepClear;
import reseat.design.ShopFloor;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/** Reads [gauge], what the shop measures with, and [[keep_clear]], what must not touch. */
final class ShopReader {

  private ShopReader() {}

  static ShopFloor read(Section root) {
    List<Double> balls = new ArrayList<>();
    List<Double> pins = new ArrayList<>();
    Optional<Section> gauge = root.child("gauge");
    if (gauge.isPresent()) {
      balls.addAll(gauge.get().sizes("balls"));
      pins.addAll(gauge.get().sizes("pins"));
      gauge.get().close();
    }
    List<KeepClear> clear = new ArrayList<>();
    for (Section s : root.children("keep_clear")) {
      String name = s.requiredText("name", "unnamed " + (clear.size() + 1));
      if (!s.has("at")) {
        s.error("at", "is missing; write [\"x\", \"y\", \"z\"]");
      }
      Vec3 at = s.vector("at", QuantityKind.LENGTH).orElse(Vec3.ZERO);
      OptionalDouble gap = s.quantity("gap", QuantityKind.LENGTH);
      Optional<Vec3> across = s.direction("across");
      try {
        clear.add(new KeepClear(name, at, gap, across));
      } catch (IllegalArgumentException e) {
        s.refused(e);
      }
      s.close();
    }
    return new ShopFloor(balls, pins, clear);
  }
}
