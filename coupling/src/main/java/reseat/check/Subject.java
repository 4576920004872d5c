package reseat.check;

import java.util.List;

/**
 * What a finding is about.
 *
 * @param kind kind of thing
 * @param name its name in the design; several joined by a comma; empty for the coupling as a whole
 */
public record Subject(Kind kind, String name) {

  /** The coupling as a whole. */
  public static final Subject COUPLING = new Subject(Kind.COUPLING, "");

  /** Kinds of things that findings are about. */
  public enum Kind {
    /** The coupling as a whole. */
    COUPLING,
    /** A support: one ball with its seat and mounting. */
    SUPPORT,
    /** A contact of a ball with a flank. */
    CONTACT,
    /** A load case. */
    LOAD_CASE,
    /** A preload. */
    PRELOAD,
    /** A machine axis. */
    AXIS,
    /** A material. */
    MATERIAL,
    /** A seat that a ball turns in, or one quality of it. */
    PIVOT,
    /** A key of the design file. */
    KEY,
    /** A part that must not be touched. */
    GAP
  }

  /**
   * Says whether a name means this subject.
   *
   * @param called a name; empty for the coupling as a whole
   * @return true if it is its name, or one of its names
   */
  public boolean isCalled(String called) {
    return name.equals(called)
        || (!called.isEmpty() && List.of(name.split(", ", -1)).contains(called));
  }

  /**
   * A support.
   *
   * @param name its name
   * @return the subject
   */
  public static Subject support(String name) {
    return new Subject(Kind.SUPPORT, name);
  }

  /**
   * A contact.
   *
   * @param name its name
   * @return the subject
   */
  public static Subject contact(String name) {
    return new Subject(Kind.CONTACT, name);
  }

  /**
   * A load case.
   *
   * @param name its name
   * @return the subject
   */
  public static Subject loadCase(String name) {
    return new Subject(Kind.LOAD_CASE, name);
  }

  /**
   * A preload.
   *
   * @param name its name
   * @return the subject
   */
  public static Subject preload(String name) {
    return new Subject(Kind.PRELOAD, name);
  }

  /**
   * A machine axis.
   *
   * @param name its name
   * @return the subject
   */
  public static Subject axis(String name) {
    return new Subject(Kind.AXIS, name);
  }
}
