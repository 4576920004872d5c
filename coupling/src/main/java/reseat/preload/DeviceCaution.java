package reseat.preload;

/** What a person must know before handling or relying on a preload device. */
public enum DeviceCaution {
  /** A compressed spring. */
  STORED_SPRING_ENERGY,
  /** A pair of magnets or a magnet near iron. */
  MAGNET_PINCH,
  /** A magnet pulls harder the closer it gets. */
  MAGNET_NEVER_TOUCHES,
  /** A stiff screw through both halves. */
  SCREW_LOCATES,
  /** Preload set by torque. */
  TORQUE_IS_LOOSE,
  /** A disc spring with a falling part of its curve. */
  SNAPS_THROUGH,
  /** A disc spring used past three quarters of its travel. */
  NEARLY_FLAT,
  /** A disc spring hardly compressed. */
  HARDLY_COMPRESSED,
  /** A spring stressed beyond its material. */
  OVERSTRESSED,
  /** A weight. */
  FALLING_WEIGHT,
  /** Compressed gas. */
  PRESSURE_LOSS
}
