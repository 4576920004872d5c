package reseat.report.check;

import reseat.check.Argument;
import reseat.check.Argument.Amount;
import reseat.check.Statement;
import reseat.report.form.FigureText;

/**
 * A statement that is being put into words: its arguments by place, written in the units asked for.
 *
 * @param statement what is said
 * @param figures how numbers are written
 */
record Spoken(Statement statement, FigureText figures) {

  /** A name as it stands. */
  String name(int place) {
    return ((Argument.Name) at(place)).text();
  }

  /** An amount with its unit. */
  String amount(int place) {
    return figures.of((Amount) at(place));
  }

  /** An amount with its unit, by so many figures that it does not read as another beside it. */
  String beside(int place, int other) {
    Amount one = (Amount) at(place);
    return figures.beside(one.measure(), one.si(), si(other), one.computed());
  }

  /** An amount in SI. */
  double si(int place) {
    return ((Amount) at(place)).si();
  }

  /** A word of the program. */
  Enum<?> term(int place) {
    return ((Argument.Term) at(place)).value();
  }

  /** A statement within this one, in words. */
  String inner(int place) {
    return FindingWords.of(((Argument.Inner) at(place)).statement(), figures);
  }

  /** Whether a name is empty or an amount zero: an argument that is not there. */
  boolean absent(int place) {
    Argument one = at(place);
    return one instanceof Argument.Name n
        ? n.text().isEmpty()
        : one instanceof Amount a
            ? a.si() == 0
            : one instanceof Argument.Inner inner && inner.statement().isEmpty();
  }

  int size() {
    return statement.arguments().size();
  }

  private Argument at(int place) {
    return statement.arguments().get(place);
  }
}
