/**
 * Logged histories run through the stepper, and where the log disagrees. Start with {@link
 * rungwright.replay.Replay} and {@link rungwright.replay.CsvLog}.
 */
package rungwright.replay;
