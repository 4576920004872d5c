package reseat.material;

/**
 * A material as a contact needs it.
 *
 * @param name trade designation
 * @param elastic elastic constants
 */
public record Material(String name, ElasticConstants elastic) {}
