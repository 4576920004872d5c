package reseat.material;

/** What lies between two surfaces. */
public enum SurfaceState {
  /** Clean and dry. */
  DRY,
  /** A film of oil or grease. */
  OILED
}
