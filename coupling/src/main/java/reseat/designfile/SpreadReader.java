package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import reseat.numerics.Shape;
import reseat.numerics.Spread;
import reseat.units.QuantityKind;

/**
 * Reads a scatter: a limit alone ({@code scatter = "2 %"}) or with its shape ({@code scatter = {
 * limit = "2 %", shape = "normal" }}).
 */
final class SpreadReader {

  static final Map<String, Shape> SHAPES = shapes();

  private SpreadReader() {}

  private static Map<String, Shape> shapes() {
    Map<String, Shape> words = new LinkedHashMap<>();
    words.put("uniform", Shape.UNIFORM);
    words.put("normal", Shape.NORMAL);
    words.put("triangular", Shape.TRIANGULAR);
    words.put("arcsine", Shape.ARCSINE);
    return words;
  }

  static Spread read(Section s, String key, QuantityKind kind, Spread otherwise) {
    if (!s.has(key)) {
      return otherwise;
    }
    if (s.isTable(key)) {
      Section t = s.child(key).orElseThrow();
      double limit = limit(t, "limit", kind, otherwise.limit());
      Shape shape = t.choice("shape", SHAPES).orElse(otherwise.shape());
      t.close();
      return new Spread(limit, shape);
    }
    return new Spread(limit(s, key, kind, otherwise.limit()), otherwise.shape());
  }

  private static double limit(Section s, String key, QuantityKind kind, double otherwise) {
    double limit =
        kind == QuantityKind.RATIO ? s.ratio(key, otherwise) : s.quantity(key, kind, otherwise);
    if (!(limit >= 0)) {
      s.error(key, "a scatter is a half-width and cannot be negative; write it without a sign");
      return otherwise;
    }
    return limit;
  }
}
