/**
 * Spec tests: cases, coverage, boundary sessions, planted faults. Start with {@link rungwright.trial.Cases}
 * and {@link rungwright.trial.CaseRun}.
 */
package rungwright.trial;
