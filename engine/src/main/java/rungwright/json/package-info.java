/**
 * JSON in and out; nothing else knows JSON. Start with {@link rungwright.json.CheckJson} and
 * {@link rungwright.json.CheckedSpec}.
 */
package rungwright.json;
