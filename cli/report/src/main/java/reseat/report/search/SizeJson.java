package reseat.report.search;

import java.util.List;
import reseat.designfile.Alteration;
import reseat.report.check.FindingWords;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.JsonWriter;
import reseat.search.Candidate;
import reseat.search.Judgement;
import reseat.search.Merits;
import reseat.search.SizingSpace;
import reseat.search.SizingStudy;
import reseat.search.SizingTally;

/** A search for the best design as JSON. */
public final class SizeJson {

  private final JsonWriter json = new JsonWriter();
  private final SizingStudy study;

  private SizeJson(SizingStudy study) {
    this.study = study;
  }

  /**
   * Writes the document.
   *
   * @param study the search
   * @return JSON, SI units
   */
  public static String of(SizingStudy study) {
    return new SizeJson(study).text();
  }

  private String text() {
    SizingSpace space = study.plan().space();
    json.beginDocument();
    json.key("title").value(space.file().unaltered().design().map(d -> d.title()).orElse(""));
    json.key("rank_by").value(study.plan().wish().rankBy().word());
    json.key("candidates").value(study.judged());
    json.key("verdict").value(VerdictWords.key(study.verdict()));
    json.key("holding").value(study.holding());
    json.key("undecided").value(study.undecided());
    json.key("not_confirmed").value(study.dropped());
    json.key("varied").beginArray();
    for (SizingSpace.Varied v : space.varied()) {
      json.beginObject();
      json.key("key").value(v.axis().key().path());
      texts("values", v.axis().values());
      json.key("continuous").value(v.continuous());
      json.end();
    }
    json.end();
    json.key("ranked").beginArray();
    study.ranked().forEach(this::choice);
    json.end();
    json.key("refined");
    study.refined().ifPresentOrElse(this::choice, json::none);
    json.key("pareto").beginArray();
    for (Candidate c : study.pareto()) {
      json.beginObject();
      json.key("number").value(c.number());
      texts("values", space.values(c.number()));
      judgement(c.judgement());
      json.end();
    }
    json.end();
    json.key("decisions").beginArray();
    for (SizingTally.Miss m : study.decisions()) {
      json.beginObject();
      json.key("check").value(m.check());
      json.key("count").value(m.count());
      texts("nearest", space.values(m.nearest().number()));
      json.end();
    }
    json.end();
    json.key("failing").beginArray();
    for (SizingStudy.NearMiss m : study.misses()) {
      json.beginObject();
      json.key("check").value(m.check());
      json.key("count").value(m.count());
      texts("nearest", m.values());
      json.key("used").value(m.used());
      texts(
          "reasons", m.reasons().stream().map(r -> FindingWords.of(r, FigureText.METRIC)).toList());
      json.end();
    }
    json.end();
    json.end();
    return json.finish();
  }

  private void texts(String key, List<String> texts) {
    json.key(key).beginArray();
    texts.forEach(json::value);
    json.end();
  }

  private void choice(SizingStudy.Choice c) {
    json.beginObject();
    texts("values", c.values());
    json.key("alterations").beginArray();
    for (Alteration a : c.alterations()) {
      json.beginObject();
      json.key("key").value(a.key().path());
      json.key("value").value(a.value());
      json.end();
    }
    json.end();
    json.key("verdict").value(VerdictWords.key(c.check().verdict()));
    judgement(c.judgement());
    json.key("peak_pressure_Pa").value(SizeText.peak(c.check()));
    json.key("stiffness_N_per_m").value(c.check().frictionless().toolPoint().alongAxes());
    json.key("scatter_m");
    c.scatter().ifPresentOrElse(json::value, json::none);
    json.end();
  }

  private void judgement(Judgement j) {
    json.key("nearest_limit").value(j.check());
    json.key("used").value(j.used());
    Merits m = j.merits().orElseThrow();
    json.key("repeatability_bound").value(m.repeatability());
    json.key("least_stiffness_N_per_m").value(m.stiffness());
    json.key("pressure_used").value(m.pressure());
    json.key("size_m").value(m.size());
  }
}
