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
        return of(Meaning.of(outline));
    }

    /** The same of a single rule, so that nobody goes on counting for one that means something else now. */
    static String of(Rule rule) {
        return of(Meaning.rule(rule));
    }

    private static String of(String meaning) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(meaning.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
