/** Logged histories run through the stepper, and where the log disagrees. */
package rungwright.replay;
