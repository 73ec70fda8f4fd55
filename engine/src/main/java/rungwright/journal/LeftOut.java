package rungwright.journal;

/**
 * Something that a cohort was meant to hold and does not.
 *
 * @param name a trainee, or a line of a log; may be empty
 */
public record LeftOut(String name, String reason) {
}
