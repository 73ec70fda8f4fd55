/**
 * A trainee's history on disk, appended to and never lost. Start with {@link rungwright.journal.Journal},
 * which records events, and {@link rungwright.journal.Fold}, which says what they come to.
 */
package rungwright.journal;
