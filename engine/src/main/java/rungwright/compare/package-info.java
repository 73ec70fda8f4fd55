/**
 * The exact regions where two programs decide differently, and who is moved. Start with
 * {@link rungwright.compare.Comparison} and {@link rungwright.compare.Difference}.
 */
package rungwright.compare;
