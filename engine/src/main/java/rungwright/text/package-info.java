/**
 * Words for people. Start with {@link rungwright.text.FindingText} and {@link rungwright.text.Colours}.
 */
package rungwright.text;
