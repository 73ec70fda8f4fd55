package rungwright.program;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The code of what a program decides: the first 16 hexadecimal digits of the SHA-256 of its {@link Meaning}.
 */
final class Fingerprint {
    private static final int BYTES = 8;

    private Fingerprint() {
    }

    static String of(Outline outline) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(Meaning.of(outline).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
