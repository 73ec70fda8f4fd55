package rungwright.replay;

import java.util.Iterator;

/** The lines of a log, or of a part of one, read the long way. */
public interface Stretch extends Iterator<LogLine> {
    /** Whether, as far as it has been read, it turned out that nothing behind it can be read. */
    boolean isBroken();
}
