package rungwright.journal;

import java.io.IOException;

/**
 * Where the entries of one trainee are kept. {@link FileStore} keeps them in a file; an app may keep them in
 * its own database instead: a row an entry, unique by trainee and number.
 */
public interface Store {
    /** What is there now; {@link Contents#EMPTY} where there is nothing yet. */
    Contents read() throws IOException;

    /**
     * Adds an entry, and returns only when it will outlive the process and the power. An exception means that
     * it is not recorded.
     *
     * @throws OvertakenException if the store holds an entry of that number already, as when somebody else
     * has
     *     added one since it was read
     * @throws BusyException if somebody else is writing and does not finish
     * @throws DamagedException if what is there cannot be read whole
     */
    void append(Entry entry) throws IOException;
}
