/**
 * What a shop needs to make, measure and set a coupling: coordinates and sizes of each half as its
 * maker sees them, heights over a gauge ball or pin and how they answer to errors of making, the
 * angle from two gauges, the spacing of pins, the turns of screws, the room that what must not
 * touch needs.
 *
 * <p>Everything is computed from a {@link reseat.design.CouplingDesign} and its rest pose; nothing
 * here is a second model of the coupling.
 */
package reseat.making;
