/**
 * What can be wrong with a spec, and where in its text. Start with {@link rungwright.finding.Finding} and
 * {@link rungwright.finding.Code}.
 */
package rungwright.finding;
