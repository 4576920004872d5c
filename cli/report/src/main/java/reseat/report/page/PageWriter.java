package reseat.report.page;

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
    return filled("page.jte", page);
  }

  /**
   * Fills the template of a sheet.
   *
   * @param sheet what stands on the sheet
   * @return one HTML document that needs nothing else and prints on one page
   */
  public static String html(Sheet sheet) {
    return filled("sheet.jte", sheet);
  }

  private static String filled(String template, Object content) {
    TemplateEngine engine =
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, "reseat.report.page.made");
    StringOutput out = new StringOutput();
    engine.render(template, content, out);
    return out.toString();
  }
}
