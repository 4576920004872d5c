package reseat.cli.command;

/** The words of an HTML page as a reader sees them. */
final class PaperWords {

  private PaperWords() {}

  static String of(String html) {
    return html.replaceAll("(?s)<style>.*?</style>", "")
        .replaceAll("<[^>]+>", " ")
        .replace("&#39;", "'")
        .replace("&amp;", "&")
        .replace('\u00a0', ' ')
        .replaceAll("\\s+", " ");
  }
}
