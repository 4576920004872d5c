package reseat.equilibrium;

/**
 * How far all preloads together may be scaled.
 *
 * @param least smallest scale, not negative; infinite if no size of these preloads does
 * @param most largest scale; infinite if no strength is known, negative if loads alone exceed it
 */
public record PreloadBand(double least, double most) {}
