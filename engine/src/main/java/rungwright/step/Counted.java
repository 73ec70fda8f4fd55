package rungwright.step;

import rungwright.program.Rule;

/** A rule that wants several sessions, and the code of what it means. */
record Counted(Rule rule, String code) {
}
