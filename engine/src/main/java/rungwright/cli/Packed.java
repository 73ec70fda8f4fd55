package rungwright.cli;

import java.io.IOException;
import java.io.InputStream;

/** Files that come with the command. */
final class Packed {
    private Packed() {
    }

    /** The bytes of one. */
    static byte[] bytes(String name) throws IOException {
        try (InputStream in = Packed.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        }
    }
}
