package rungwright.trial;

/** A kind of thing that cases can try of a program. */
public enum Aspect {
    /** A rule speaks, once it is complete where it wants several sessions. */
    RULE("rules"),
    /** A rule that wants several sessions counts them right. */
    COUNT("rows and windows"),
    /** One of the alternatives of a rule holds. */
    ALTERNATIVE("alternatives"),
    /** A session just inside an edge of a criterion. */
    INSIDE("edges from inside"),
    /** A session just outside an edge of a criterion. */
    OUTSIDE("edges from outside"),
    /** A rule that moves by rungs, at the end of a ladder or not. */
    END("ladder ends"),
    /** A stop is cleared. */
    CLEARED("clearances");

    private final String words;

    Aspect(String words) {
        this.words = words;
    }

    /** Several of them, in words. */
    public String words() {
        return words;
    }
}
