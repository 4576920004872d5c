package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.units.QuantityKind;

/**
 * Reads a scatter: a limit alone ({@code scatter = "2 %"}) or with its shape ({@code scatter = {
 * limit = "2 %", shape = "normal" }}).
 */
final class SpreadReader {

  static final Map<String, DistributionShape> SHAPES = shapes();

  private SpreadReader() {}

  private static Map<String, DistributionShape> shapes() {
    Map<String, DistributionShape> words = new LinkedHashMap<>();
    words.put("uniform", DistributionShape.UNIFORM);
    words.put("normal", DistributionShape.NORMAL);
    words.put("triangular", DistributionShape.TRIANGULAR);
    words.put("arcsine", DistributionShape.ARCSINE);
    return words;
  }

  static Distribution read(Section s, String key, QuantityKind kind, Distribution otherwise) {
    if (!s.has(key)) {
      return otherwise;
    }
    if (s.isTable(key)) {
      Section t = s.child(key).orElseThrow();
      double limit = limit(t, "limit", kind, otherwise.limit());
      DistributionShape shape = t.choice("shape", SHAPES).orElse(otherwise.shape());
      t.close();
      return new Distribution(limit, shape);
    }
    return new Distribution(limit(s, key, kind, otherwise.limit()), otherwise.shape());
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
