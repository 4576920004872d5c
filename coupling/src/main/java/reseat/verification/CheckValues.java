package reseat.verification;

import java.util.List;

/** Every check value the program is held to, by topic. */
public final class CheckValues {

  private CheckValues() {}

  /**
   * Returns the topics.
   *
   * @return topics with their values, from the contact outward
   */
  public static List<Topic> topics() {
    return List.of(
        HertzContacts.topic(),
        HertzCoefficients.topic(),
        HandbookContacts.topic(),
        SubsurfaceStresses.topic(),
        DentedContacts.topic(),
        TangentialContacts.topic(),
        CouplingStatics.topic(),
        CouplingErrors.topic(),
        SeatingLimits.topic(),
        MaterialData.topic(),
        ScrewThreads.topic(),
        PreloadDevices.topic(),
        BallMounts.topic(),
        RemountScatter.topic(),
        RemountTrends.topic());
  }

  /**
   * Returns all values.
   *
   * @return values of all topics in order
   */
  public static List<CheckValue> all() {
    return topics().stream().flatMap(topic -> topic.values().stream()).toList();
  }
}
