package reseat.remedy;

import java.util.Optional;

/**
 * What would halve a scatter or a motion of the tool point.
 *
 * @param what the load case whose motion it is; empty for the scatter of tool changes
 * @param axis name of the machine axis
 * @param now half-width of the scatter, or size of the motion with sliding contacts, m
 * @param cause what gives most of it: a cause of scatter, or the spring that gives most
 * @param share part of the scatter's variance, or of the motion, that this cause gives
 * @param move the smallest change of one key, tried, after which it is half or less; empty if none
 *     within what can be bought or set does
 * @param then what it is with that change, m; as now without one
 * @param holds whether every check holds with that change
 */
public record Halving(
    String what,
    String axis,
    double now,
    String cause,
    double share,
    Optional<Move> move,
    double then,
    boolean holds) {}
