package reseat.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.space.Vec3;

/** Gathers the parts of a design. Not for use by several threads. */
public final class DesignBuilder {
  String title = "";
  Half ballsOn = Half.HOLDER;
  List<Support> supports = new ArrayList<>();
  List<Preload> preloads = new ArrayList<>();
  Holder holder = new Holder(0, Vec3.ZERO, Vec3.ZERO);
  Vec3 gravity = Vec3.Z.negated();
  List<LoadCase> cases = new ArrayList<>();
  Vec3 toolPoint = Vec3.ZERO;
  MachineAxes axes = MachineAxes.ofCoupling();
  Friction friction =
      new Friction(0.08, 0.1, 0.15, "common practice for lightly oiled hard steel, no source");
  Targets targets = Targets.DEFAULT;
  Optional<TurningRoles> turning = Optional.empty();
  RemountConditions remount = RemountConditions.DEFAULT;
  Tolerances tolerances = Tolerances.NONE;
  ShopFloor shop = ShopFloor.UNKNOWN;

  /** Starts with no supports, no load and no mass. */
  DesignBuilder() {}

  /**
   * Sets the title.
   *
   * @param value any text
   * @return this builder
   */
  public DesignBuilder title(String value) {
    Objects.requireNonNull(value, "title of a design must be given, found null");
    title = value;
    return this;
  }

  /**
   * Sets which half carries the balls.
   *
   * @param value the half
   * @return this builder
   */
  public DesignBuilder ballsOn(Half value) {
    Objects.requireNonNull(value, "half that carries the balls must be given, found null");
    ballsOn = value;
    return this;
  }

  /**
   * Replaces the supports.
   *
   * @param value supports with different names
   * @return this builder
   */
  public DesignBuilder supports(List<Support> value) {
    Objects.requireNonNull(value, "supports of a design must be given, found null");
    supports = new ArrayList<>(value);
    return this;
  }

  /**
   * Adds a support.
   *
   * @param value the support
   * @return this builder
   */
  public DesignBuilder support(Support value) {
    Objects.requireNonNull(value, "support of a design must be given, found null");
    supports.add(value);
    return this;
  }

  /**
   * Replaces the preloads.
   *
   * @param value preloads
   * @return this builder
   */
  public DesignBuilder preloads(List<Preload> value) {
    Objects.requireNonNull(value, "preloads of a design must be given, found null");
    preloads = new ArrayList<>(value);
    return this;
  }

  /**
   * Adds a preload.
   *
   * @param value the preload
   * @return this builder
   */
  public DesignBuilder preload(Preload value) {
    Objects.requireNonNull(value, "preload of a design must be given, found null");
    preloads.add(value);
    return this;
  }

  /**
   * Sets the holder's mass.
   *
   * @param value the holder
   * @return this builder
   */
  public DesignBuilder holder(Holder value) {
    Objects.requireNonNull(value, "holder of a design must be given, found null");
    holder = value;
    return this;
  }

  /**
   * Sets the direction of gravity.
   *
   * @param value any vector that is not zero
   * @return this builder
   */
  public DesignBuilder gravity(Vec3 value) {
    Objects.requireNonNull(value, "gravity of a design must be given, found null");
    gravity = value.unit();
    return this;
  }

  /**
   * Replaces the load cases.
   *
   * @param value cases with different names
   * @return this builder
   */
  public DesignBuilder cases(List<LoadCase> value) {
    Objects.requireNonNull(value, "cases of a design must be given, found null");
    cases = new ArrayList<>(value);
    return this;
  }

  /**
   * Sets the tool point.
   *
   * @param value point, m
   * @return this builder
   */
  public DesignBuilder toolPoint(Vec3 value) {
    Objects.requireNonNull(value, "tool point of a design must be given, found null");
    toolPoint = value;
    return this;
  }

  /**
   * Sets the machine axes.
   *
   * @param value axes
   * @return this builder
   */
  public DesignBuilder axes(MachineAxes value) {
    Objects.requireNonNull(value, "axes of a design must be given, found null");
    axes = value;
    return this;
  }

  /**
   * Sets the friction range.
   *
   * @param value range
   * @return this builder
   */
  public DesignBuilder friction(Friction value) {
    Objects.requireNonNull(value, "friction of a design must be given, found null");
    friction = value;
    return this;
  }

  /**
   * Sets the targets.
   *
   * @param value targets
   * @return this builder
   */
  public DesignBuilder targets(Targets value) {
    Objects.requireNonNull(value, "targets of a design must be given, found null");
    targets = value;
    return this;
  }

  /**
   * Sets what differs from mounting to mounting.
   *
   * @param value conditions
   * @return this builder
   */
  public DesignBuilder remount(RemountConditions value) {
    Objects.requireNonNull(value, "remount of a design must be given, found null");
    remount = value;
    return this;
  }

  /**
   * Sets how far the parts may depart from the drawing.
   *
   * @param value tolerances
   * @return this builder
   */
  public DesignBuilder tolerances(Tolerances value) {
    Objects.requireNonNull(value, "tolerances of a design must be given, found null");
    tolerances = value;
    return this;
  }

  /**
   * Says what the shop has to do with.
   *
   * @param value gauges, and what must not touch
   * @return this builder
   */
  public DesignBuilder shop(ShopFloor value) {
    Objects.requireNonNull(value, "shop of a design must be given, found null");
    shop = value;
    return this;
  }

  /**
   * Says what the machine axes are to a turned part.
   *
   * @param value roles; empty if the machine does not turn
   * @return this builder
   */
  public DesignBuilder turning(Optional<TurningRoles> value) {
    Objects.requireNonNull(value, "turning of a design must be given, found null");
    turning = value;
    return this;
  }

  /**
   * Builds the design.
   *
   * @return the design
   * @throws IllegalArgumentException if there are no supports or a name is used twice
   */
  public CouplingDesign build() {
    return new CouplingDesign(this);
  }
}
