package rungwright.journal;

/**
 * When a trainee first stood in a stage or beyond it, counted from their start.
 *
 * @param sessions sessions until then, the one that moved them included
 * @param days days until then
 * @param byProgram false where the coach moved them there or had moved them before, so that the time says
 *     nothing about the program
 */
public record Arrival(long sessions, long days, boolean byProgram) {
}
