package reseat.ballmount;

/** How closely screw and nut are made: the pair of tolerance classes. */
public enum ThreadFit {
  /** The ordinary fit: 6H/6g for metric threads, 2B/2A for Unified threads. */
  MEDIUM("6H/6g", "2B/2A"),
  /** The close fit: 5H/4h for metric threads, 3B/3A for Unified threads; no allowance. */
  CLOSE("5H/4h", "3B/3A");

  private final String metric;
  private final String unified;

  ThreadFit(String metric, String unified) {
    this.metric = metric;
    this.unified = unified;
  }

  /**
   * The tolerance classes as written on a drawing, nut first.
   *
   * @param form the thread form
   * @return for instance {@code 6H/6g}
   */
  public String classes(ThreadForm form) {
    return form == ThreadForm.METRIC ? metric : unified;
  }
}
