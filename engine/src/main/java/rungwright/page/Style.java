package rungwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The style of a page, and a policy that lets a browser apply it and nothing else: no script, no picture, no
 * font, no frame, no form, nothing fetched.
 */
record Style(String css) {
    /** The style of that name. */
    static Style read(String name) {
        try (InputStream in = Style.class.getResourceAsStream(name)) {
            return new Style(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The content security policy of a page with this style alone, which it knows by its digest. */
    String policy() {
        return "default-src 'none'; style-src 'sha256-" + digest() + "'; base-uri 'none'; form-action 'none'";
    }

    private String digest() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(css.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
