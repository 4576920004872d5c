package reseat.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** Makes the HTML of a page. */
public final class PageWriter {

  private PageWriter() {}

  /**
   * Fills the template.
   *
   * @param page what stands on the page
   * @return one HTML document that needs nothing else: style and pictures are inside, no script
   */
  public static String html(Page page) {
    TemplateEngine engine =
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, "reseat.cli.page.made");
    StringOutput out = new StringOutput();
    engine.render("page.jte", page, out);
    return out.toString();
  }
}
