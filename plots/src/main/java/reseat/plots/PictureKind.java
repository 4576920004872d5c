package reseat.plots;

/** What a picture shows; a page finds its pictures by it. */
public enum PictureKind {
  /** The coupling from above. */
  PLAN,
  /** The coupling from the side. */
  SIDE_VIEW,
  /** A ball in its seat. */
  SEAT_SECTION,
  /** The stud that carries a ball. */
  STUD_SECTION,
  /** The seat that a ball turns in. */
  PIVOT_SECTION,
  /** Force that opens a contact, by direction. */
  LIFT_OFF_MAP,
  /** What gives way, by direction. */
  COMPLIANCE_SHARES,
  /** Natural frequencies. */
  FREQUENCIES,
  /** Tool point over simulated mounts. */
  REPEAT_ELLIPSE,
  /** Which dimension moves the tool point. */
  SENSITIVITY,
  /** Error budget. */
  BUDGET,
  /** What a preload device is set to. */
  DEVICE_BAND,
  /** Results over the preload. */
  PRELOAD_CURVES,
  /** Results over the ball size. */
  BALL_SIZE_CURVES,
  /** One output over one dimension. */
  RESPONSE,
  /** Outputs over one key of a design file. */
  SWEEP_CURVES,
  /** One output over two keys of a design file. */
  SWEEP_MAP,
  /** Candidates of a search. */
  PARETO,
  /** Readings in their order. */
  READINGS,
  /** Measured mounts in a plane. */
  MEASURED_PLANE,
  /** How often each reading came. */
  HISTOGRAM,
  /** Readings against control limits. */
  CONTROL_CHART
}
