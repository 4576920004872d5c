package reseat.ballmount;

/** The two families of 60 degree screw threads, which share one basic profile. */
public enum ThreadForm {
  /** ISO metric thread of ISO 68-1 and ISO 261: diameter and pitch in millimetres. */
  METRIC,
  /** Unified inch thread of ASME B1.1: diameter in inches and threads per inch. */
  UNIFIED
}
