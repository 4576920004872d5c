package reseat.designfile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.design.Acceptance;
import reseat.design.BallMountDesign;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.seat.Flank;
import reseat.seat.FlatSeat;
import reseat.units.NearestWord;

/**
 * The places that a decision of a design file may be about: the supports, contacts, load cases,
 * preloads, machine axes and gaps by their names. A place that is none of them is an error, since
 * the decision would lie over nothing.
 */
final class AcceptedPlaces {

  /** What findings on a ball mount by itself call it. */
  private static final List<String> OF_MOUNT = List.of("this mount", "tilt", "film");

  private final Set<String> names = new LinkedHashSet<>();
  private final String words;

  private AcceptedPlaces(String words) {
    this.words = words;
  }

  /** The places of a coupling. */
  static AcceptedPlaces of(CouplingDesign d) {
    AcceptedPlaces places =
        new AcceptedPlaces("the name of a support, contact, load case, preload, axis or gap");
    d.supports().forEach(s -> places.names.add(s.name()));
    d.supports()
        .forEach(
            s -> {
              for (Flank flank : s.seat().flanks()) {
                if (!flank.name().equals(FlatSeat.FLANK)) {
                  places.names.add(
                      s.name() + " (" + flank.name() + (s.seat().isRing() ? ")" : " flank)"));
                }
              }
            });
    d.cases().forEach(c -> places.names.add(c.name()));
    d.preloads().forEach(p -> places.names.add(p.name()));
    for (int k = 0; k < 3; k++) {
      places.names.add(d.axes().axis(k).name());
    }
    d.shop().keepClear().forEach(k -> places.names.add(k.name()));
    return places;
  }

  /** The places of a ball mount. */
  static AcceptedPlaces of(BallMountDesign d) {
    AcceptedPlaces places = new AcceptedPlaces("a part of the mount");
    places.names.addAll(OF_MOUNT);
    d.pivot().ifPresent(p -> places.names.add(p.seat().words()));
    return places;
  }

  /**
   * Tells every decision whose place is not there.
   *
   * @param accepted every decision of the file, in its order
   * @param written keys of the quantities that the file states
   * @param problems takes the errors
   */
  void check(List<Acceptance> accepted, Set<String> written, Problems problems) {
    for (int i = 0; i < accepted.size(); i++) {
      Acceptance a = accepted.get(i);
      boolean input = a.check() == CheckKind.INPUT;
      if (input ? !written.contains(a.where()) : !known(a.where())) {
        problems.error(
            a.line(),
            a.column(),
            "accepted[" + (i + 1) + "].where",
            input ? noKey(a.where(), written) : noPlace(a.where()));
      }
    }
  }

  private boolean known(String where) {
    return where.isEmpty()
        || names.contains(where)
        || names.containsAll(List.of(where.split(", ")));
  }

  private String noPlace(String where) {
    List<String> quoted = new ArrayList<>();
    names.forEach(n -> quoted.add("\"" + n + "\""));
    return "found \""
        + where
        + "\", which is no place of this design"
        + meant(where, names)
        + "; allowed is "
        + words
        + ": "
        + String.join(", ", quoted)
        + "; leave it out for the whole";
  }

  private static String noKey(String where, Set<String> written) {
    return "found \""
        + where
        + "\", which is no quantity that this file states"
        + meant(where, written)
        + "; write the key as the finding names it, such as \"preload[1].force\"";
  }

  private static String meant(String where, Set<String> known) {
    return NearestWord.to(where, known).map(n -> "; did you mean \"" + n + "\"?").orElse("");
  }
}
