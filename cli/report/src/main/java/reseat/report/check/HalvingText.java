package reseat.report.check;

import java.util.List;
import reseat.remedy.Halving;
import reseat.remedy.Lever;
import reseat.remedy.Move;
import reseat.report.form.FigureText;
import reseat.report.form.JsonWriter;
import reseat.report.form.Paragraph;

/** What would halve each scatter and each motion, in words and for programs. */
public final class HalvingText {

  private HalvingText() {}

  /**
   * A line for each scatter and each motion.
   *
   * @param halving what was found
   * @param figures how numbers are written
   * @return lines with their ends; empty if nothing was sought
   */
  public static String of(List<Halving> halving, FigureText figures) {
    if (halving.isEmpty()) {
      return "";
    }
    StringBuilder out = new StringBuilder("What would halve it, one change at a time:\n");
    for (Halving h : halving) {
      out.append("  ").append(Paragraph.of("    ", line(h, figures)).stripLeading());
    }
    return out.toString();
  }

  private static String line(Halving h, FigureText figures) {
    String what =
        h.what().isEmpty()
            ? "scatter along " + h.axis() + " ±" + figures.length(h.now())
            : h.what() + " along " + h.axis() + " " + figures.length(h.now());
    String cause = ", " + FigureText.percent(h.share()) + " of it " + h.cause();
    if (h.move().isEmpty()) {
      return what + cause + ": nothing that can be bought or set halves it.";
    }
    return what
        + cause
        + ": "
        + RemedyWords.move(h.move().get())
        + " makes it "
        + figures.length(h.then())
        + (h.holds() ? "; every check holds then." : "; not every check holds then.");
  }

  /**
   * Writes {@code halving}.
   *
   * @param json where to, within an object
   * @param halving what was found
   */
  public static void json(JsonWriter json, List<Halving> halving) {
    json.key("halving").beginArray();
    for (Halving h : halving) {
      json.beginObject();
      json.key("case").value(h.what());
      json.key("axis").value(h.axis());
      json.key("now_m").value(h.now());
      json.key("cause").value(h.cause());
      json.key("share").value(h.share());
      json.key("lever").value(h.move().map(Move::lever).map(Lever::name).orElse(""));
      json.key("from").value(h.move().map(Move::from).orElse(""));
      json.key("to").value(h.move().map(Move::to).orElse(""));
      json.key("then_m").value(h.then());
      json.key("holds").value(h.holds());
      json.end();
    }
    json.end();
  }
}
