package reseat.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import reseat.check.Measure;
import reseat.remedy.Change;
import reseat.remedy.Conflict;
import reseat.remedy.Cost;
import reseat.remedy.Lever;
import reseat.remedy.Move;
import reseat.remedy.Remedies;
import reseat.remedy.Remedy;
import reseat.report.form.FigureText;
import reseat.report.form.JsonWriter;
import reseat.report.form.Paragraph;

/** Remedies in words and for programs. */
public final class RemedyWords {

  /** Costs told of one remedy. */
  private static final int COSTS = 3;

  private RemedyWords() {}

  /**
   * What to do, a numbered line for each remedy, or what is in the way.
   *
   * @param remedies what was found
   * @param figures how numbers are written
   * @return lines with their ends; empty if nothing was sought
   */
  public static String paragraphs(Remedies remedies, FigureText figures) {
    List<String> lines = lines(remedies, figures);
    if (lines.isEmpty()) {
      return "";
    }
    if (remedies.remedies().isEmpty()) {
      return Paragraph.of("", "What to do: " + lines.get(0));
    }
    StringBuilder out = new StringBuilder("What to do; with any one of these every check holds:\n");
    for (int i = 0; i < lines.size(); i++) {
      out.append("  ").append(Paragraph.of("     ", (i + 1) + ". " + lines.get(i)).stripLeading());
    }
    return out.toString();
  }

  /**
   * Each remedy in one sentence or two, or one sentence that says what is in the way.
   *
   * @param remedies what was found
   * @param figures how numbers are written
   * @return sentences, not numbered; empty if nothing was sought
   */
  public static List<String> lines(Remedies remedies, FigureText figures) {
    List<String> lines = new ArrayList<>();
    for (Remedy r : remedies.remedies()) {
      lines.add(line(r, figures));
    }
    if (lines.isEmpty() && remedies.state() != Remedies.State.NOT_SOUGHT) {
      lines.add(inTheWay(remedies));
    }
    return lines;
  }

  private static String inTheWay(Remedies remedies) {
    if (remedies.state() == Remedies.State.TO_BE_STATED) {
      return "mend or accept the values in doubt first; remedies are then looked for.";
    }
    boolean pairs = remedies.state() == Remedies.State.PAIRS;
    String tried = pairs ? "no change of one key or of two" : "no change of one key";
    String more = pairs ? "" : " --remedies looks at pairs of keys.";
    if (remedies.conflict().isPresent()) {
      Conflict c = remedies.conflict().get();
      return c.one() == c.other()
          ? tried
              + " within what can be bought or set cures "
              + c.one().words()
              + " everywhere at once."
              + more
          : tried
              + " within what can be bought or set is enough: "
              + c.one().words()
              + " and "
              + c.other().words()
              + " are in conflict: whatever cures the first leaves or breaks the second."
              + more;
    }
    return tried
        + " within what can be bought or set "
        + remedies
            .uncured()
            .map(k -> "cures " + k.words())
            .orElse("makes every check hold with 5 % in hand")
        + "."
        + more;
  }

  /**
   * A remedy in one sentence or two.
   *
   * @param r the remedy
   * @param figures how numbers are written
   * @return what to change, and what it costs
   */
  public static String line(Remedy r, FigureText figures) {
    List<String> moves = new ArrayList<>();
    for (Move m : r.moves()) {
      moves.add(move(m));
    }
    String costs =
        r.costs().stream()
            .filter(
                c ->
                    !value(c.measure(), c.from(), figures)
                        .equals(value(c.measure(), c.to(), figures)))
            .limit(COSTS)
            .map(c -> cost(c, figures))
            .collect(Collectors.joining(", "));
    return String.join(" and ", moves)
        + (r.tight() ? ", with little in hand" : "")
        + (costs.isEmpty() ? "." : ". Costs: " + costs + ".");
  }

  static String move(Move m) {
    String to = m.to().replace("\"", "");
    String what = words(m.lever());
    boolean follows =
        m.lever() == Lever.BALL || m.lever() == Lever.FLANK_ANGLE || m.lever() == Lever.PINS;
    return what
        + " "
        + to
        + (m.from().isEmpty() ? "" : " instead of " + m.from())
        + (follows ? ", seats cut to fit" : "");
  }

  private static String words(Lever lever) {
    return switch (lever) {
      case PRELOAD -> "preload";
      case LINE_OF_PULL -> "line of pull through";
      case DIRECTION_OF_PULL -> "direction of pull";
      case BALL -> "ball";
      case FLANK_ANGLE -> "flank angle";
      case FIRST_SEAT_ANGLE -> "flank angle of the first seat";
      case PIN_SPACING -> "pin spacing";
      case PINS -> "pins";
      case CIRCLE -> "ball circle";
      case TURN -> "supports turned, first ball at";
      case GROOVE_DIRECTION -> "grooves turned to the bisectors:";
      case BALL_MATERIAL -> "balls of";
      case SEAT_MATERIAL -> "seats of";
      case NECK -> "stud neck";
      case STICK_OUT -> "stud stick-out";
      case PRELOAD_SCATTER -> "preload that scatters by";
      case LINE_WANDER -> "line of pull that wanders by";
      case SEATING_FORCE -> "seating force";
      case TEMPERATURE -> "temperatures within";
      case ADHESIVE -> "adhesive";
      case BOND_AREA -> "bonded area";
      case BOND_GAP -> "bond gap";
      case LUBRICATION -> "seats";
      case ENGAGEMENT -> "thread engagement";
      case LOCK_TORQUE -> "lock-nut torque";
      case MOUTH -> "seat mouth";
      case RELIEF -> "root relief";
      case SEAT_LENGTH -> "seat length";
      case SEAT_DEPTH -> "depth below the ball";
      case CASE_DEPTH -> "case depth";
      case CLEARANCE -> "gap";
    };
  }

  private static String cost(Cost c, FigureText figures) {
    return c.quantity().words()
        + (c.where().isEmpty() ? "" : " (" + c.where() + ")")
        + " "
        + value(c.measure(), c.from(), figures)
        + " to "
        + value(c.measure(), c.to(), figures);
  }

  private static String value(Measure measure, double si, FigureText figures) {
    return figures.of(measure, si, true);
  }

  /**
   * Writes {@code remedies}, {@code conflict} and {@code uncured}.
   *
   * @param json where to, within an object
   * @param remedies what was found
   */
  public static void json(JsonWriter json, Remedies remedies) {
    json.key("remedies").beginArray();
    for (Remedy r : remedies.remedies()) {
      json.beginObject();
      json.key("changes").beginArray();
      for (Change c : r.changes()) {
        json.beginObject();
        json.key("key").value(c.key());
        json.key("value").value(c.value());
        json.key("was").value(c.was());
        json.end();
      }
      json.end();
      json.key("costs").beginArray();
      for (Cost c : r.costs()) {
        json.beginObject();
        json.key("quantity").value(c.quantity().words());
        json.key("where").value(c.where());
        json.key("from").value(c.from());
        json.key("to").value(c.to());
        json.key("unit").value(c.measure().symbol());
        json.end();
      }
      json.end();
      json.key("distance").value(r.distance());
      json.key("tight").value(r.tight());
      json.end();
    }
    json.end();
    json.key("conflict").beginArray();
    remedies
        .conflict()
        .ifPresent(
            c -> {
              json.value(c.one().words());
              json.value(c.other().words());
            });
    json.end();
    json.key("uncured").value(remedies.uncured().map(k -> k.words()).orElse(""));
  }
}
