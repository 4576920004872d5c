package reseat.designfile;

import java.util.Optional;
import reseat.units.QuantityKind;

/**
 * A key that may stand in a particular design file.
 *
 * @param path as the user writes it, for instance {@code load_case[rough].force.X}
 * @param inFile as problems of the file name it, for instance {@code load_case[3].force.X}
 * @param kind the quantity that it takes; empty if it takes a word, a count, a list or a table
 */
public record DesignKey(String path, String inFile, Optional<QuantityKind> kind) {}
