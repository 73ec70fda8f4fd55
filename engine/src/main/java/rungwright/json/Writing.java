package rungwright.json;

import java.io.IOException;

/** What writes something when it is run. */
interface Writing {
    /** Writes it. */
    void write() throws IOException;
}
