package rungwright.step;

/**
 * One thing that a rule asks, what it needs and what was logged: {@code reps} at least 12, logged 9, not met.
 *
 * @param rule the label of the rule that asks
 * @param name what is asked about, as the spec writes it
 * @param needed what it must be, as the spec writes it
 * @param logged what it was, with its unit; the readings of all sets where several are asked about
 */
public record Reason(String rule, String name, String needed, String logged, boolean met) {
}
