/**
 * The spec as the coach wrote it: names unresolved, places kept. Start with {@link rungwright.spec.Spec} and
 * {@link rungwright.spec.RuleSpec}.
 */
package rungwright.spec;
