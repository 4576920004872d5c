package reseat.search;

/**
 * One combination of values, judged.
 *
 * @param number number of the combination from 0
 * @param kind the same number for all combinations that differ in continuous inputs only
 * @param judgement how it stands
 */
public record Candidate(long number, long kind, Judgement judgement) {}
