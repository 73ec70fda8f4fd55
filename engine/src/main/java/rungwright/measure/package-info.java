/**
 * What a coach can measure, and exactly which values it can take. Start with
 * {@link rungwright.measure.Values} and {@link rungwright.measure.Quantity}.
 */
package rungwright.measure;
