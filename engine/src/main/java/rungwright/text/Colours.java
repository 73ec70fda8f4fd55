package rungwright.text;

import rungwright.finding.Severity;

/**
 * Colours for a terminal, or none. Nothing is said by colour alone, so a text without them says as much.
 */
public enum Colours {
    /** Text as it is. */
    OFF,
    /** Marks that terminals understand. */
    ON;

    private static final String RED = "31";
    private static final String YELLOW = "33";
    private static final String BLUE = "34";
    private static final String BOLD = "1";
    private static final String FAINT = "2";

    /** On or off as asked: {@code whether} is the answer, for who has already worked it out. */
    public static Colours when(boolean whether) {
        return whether ? ON : OFF;
    }

    /** Text in the colour of a severity: red for an error, yellow for a warning, blue for a note. */
    public String of(Severity severity, String text) {
        return mark(switch (severity) {
            case ERROR -> RED;
            case WARNING -> YELLOW;
            case NOTE -> BLUE;
        }, text);
    }

    /** Text that stands out. */
    public String strong(String text) {
        return mark(BOLD, text);
    }

    /** Text that stands back. */
    public String faint(String text) {
        return mark(FAINT, text);
    }

    private String mark(String code, String text) {
        return this == OFF || text.isEmpty() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
    }
}
