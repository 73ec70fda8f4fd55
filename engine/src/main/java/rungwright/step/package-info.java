/**
 * One event in, one decision out, with its reasons. Start with {@link rungwright.step.Stepper} and
 * {@link rungwright.step.Decision}.
 */
package rungwright.step;
