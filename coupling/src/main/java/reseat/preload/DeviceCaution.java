package reseat.preload;

/** What a person must know before handling or relying on a preload device. */
public enum DeviceCaution {
  /** A compressed spring. */
  STORED_SPRING_ENERGY(
      "The spring is under load: release it slowly with the screw, never let it fly off."),
  /** A pair of magnets or a magnet near iron. */
  MAGNET_PINCH(
      "The magnets snap together and pinch fingers, and brittle magnets splinter; keep them from"
          + " heart pacemakers and magnetic scales, and keep chips away."),
  /** A magnet pulls harder the closer it gets. */
  MAGNET_NEVER_TOUCHES(
      "The magnet faces must never touch in use: a touching face is a seventh contact."),
  /** A stiff screw through both halves. */
  SCREW_LOCATES(
      "A screw through both halves is stiff and may locate them: leave clearance around the shank"
          + " and let head or nut swivel, or put a spring under it."),
  /** Preload set by torque. */
  TORQUE_IS_LOOSE(
      "Torque sets the force only loosely: most of it goes into friction that nobody controls."),
  /** A disc spring with a falling part of its curve. */
  SNAPS_THROUGH("The disc is high for its thickness (h0/t above 1.41) and snaps through."),
  /** A disc spring used past three quarters of its travel. */
  NEARLY_FLAT(
      "The disc is compressed past three quarters of its travel: the force rises faster than"
          + " computed as it rolls onto its neighbour."),
  /** A disc spring hardly compressed. */
  HARDLY_COMPRESSED(
      "The disc is compressed less than 15 % of its travel: it rattles, and the upper inner edge may"
          + " crack under changing load (common practice)."),
  /** A spring stressed beyond its material. */
  OVERSTRESSED("The spring is stressed beyond what its material is stated to bear."),
  /** A weight. */
  FALLING_WEIGHT(
      "The weight falls if the half is lifted or tipped, and it shakes with the machine."),
  /** Compressed gas. */
  PRESSURE_LOSS(
      "When the supply fails the preload is gone: fit a check valve or a spring beside it.");

  private final String text;

  DeviceCaution(String text) {
    this.text = text;
  }

  /**
   * The sentence to print.
   *
   * @return one sentence
   */
  public String text() {
    return text;
  }
}
