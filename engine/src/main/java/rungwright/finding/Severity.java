package rungwright.finding;

import java.util.Locale;

/** How bad a finding is: only an error keeps a spec from being proven. */
public enum Severity {
    /** The spec is not proven while it stands. */
    ERROR,
    /** Probably not what was meant. */
    WARNING,
    /** Worth a look. */
    NOTE;

    /** As it is printed: {@code error}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
