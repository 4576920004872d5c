package reseat.toml;

/** Ends the reading of one statement; caught by {@link TomlReader}, which goes on after it. */
final class TomlMistake extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Place place;

  TomlMistake(Place place, String message) {
    super(message, null, false, false);
    this.place = place;
  }

  TomlDocument.SyntaxError error() {
    return new TomlDocument.SyntaxError(place.line(), place.column(), getMessage());
  }
}
