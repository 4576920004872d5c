/**
 * Whether a holder seats itself, a property of the layout.
 *
 * <p>{@link reseat.seating.SelfSeating} finds the friction at which a slide home stalls, {@link
 * reseat.seating.HalfSeatedRest} that from which a holder set down gently can stand still half
 * seated, {@link reseat.seating.SeatingPaths} the last stages of the slide home of a design.
 *
 * <p>Mechanics: statics of sliding contacts with Coulomb friction. May import the packages up to
 * {@code equilibrium}.
 */
package reseat.seating;
