package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.units.QuantityKind;

/** Reads [size]. What the keys to vary are is found out when the search begins. */
final class SizeReader {

  private static final Map<String, SizeTargets.RankBy> RULES = rules();

  private SizeReader() {}

  private static Map<String, SizeTargets.RankBy> rules() {
    Map<String, SizeTargets.RankBy> words = new LinkedHashMap<>();
    for (SizeTargets.RankBy rule : SizeTargets.RankBy.values()) {
      words.put(rule.word(), rule);
    }
    return words;
  }

  static SizeTargets read(Section s) {
    SizeTargets none = SizeTargets.NONE;
    List<String> vary = s.texts("vary", none.vary());
    SizeTargets.RankBy rank = s.choice("rank_by", RULES).orElse(none.rankBy());
    double stiffness =
        s.has("least_stiffness") ? s.positive("least_stiffness", QuantityKind.STIFFNESS, 1) : 0;
    double size = s.positiveOr("largest_size", QuantityKind.LENGTH, none.largestSize());
    boolean follow = s.flag("seats_follow_ball", none.seatsFollowBall());
    s.close();
    try {
      return new SizeTargets(vary, rank, stiffness, size, follow);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return none;
    }
  }
}
