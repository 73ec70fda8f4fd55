package rungwright.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * What ties the lines of a journal together: each ends with a check of itself and of the check before, 16
 * bytes of SHA-256. A changed, missing, doubled or moved line breaks it. It finds damage, not forgery.
 */
final class Chain {
    /** How long the end of a line is that holds the check. */
    static final int TAIL = 44;

    private static final byte[] OPENING = ",\"check\":\"".getBytes(StandardCharsets.US_ASCII);
    private static final String CLOSING = "\"}";
    private static final int CHECK_BYTES = 16;

    private final MessageDigest digest;
    private byte[] before = new byte[0];

    Chain() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Where an end with a check begins, from a place on and before another; -1 where there is none. */
    static int tail(byte[] bytes, int from, int to) {
        for (int at = from; at + TAIL <= to; at++) {
            if (bytes[at] == OPENING[0] && isTail(bytes, at)) {
                return at;
            }
        }
        return -1;
    }

    private static boolean isTail(byte[] bytes, int at) {
        int end = at + TAIL;
        return Arrays.equals(bytes, at, at + OPENING.length, OPENING, 0, OPENING.length)
                && bytes[end - 2] == CLOSING.charAt(0) && bytes[end - 1] == CLOSING.charAt(1);
    }

    /** Whether a line that ends with a check at {@code tail} follows the line before; the next follows it. */
    boolean follows(byte[] bytes, int from, int tail) {
        byte[] check = check(bytes, from, tail);
        int at = tail + OPENING.length;
        boolean fits = Arrays.equals(bytes, at, at + check.length, check, 0, check.length);
        before = fits ? check : before;
        return fits;
    }

    /** The line that follows with an object of JSON, without an end of line. */
    byte[] line(String object) {
        if (!object.startsWith("{\"") || !object.endsWith("}") || object.indexOf('\n') >= 0) {
            throw new IllegalArgumentException("an entry is an object with a field, on one line");
        }
        byte[] body = object.substring(0, object.length() - 1).getBytes(StandardCharsets.UTF_8);
        byte[] line = Arrays.copyOf(body, body.length + TAIL);
        System.arraycopy(OPENING, 0, line, body.length, OPENING.length);
        byte[] check = check(line, 0, body.length);
        System.arraycopy(check, 0, line, body.length + OPENING.length, check.length);
        line[line.length - 2] = (byte) CLOSING.charAt(0);
        line[line.length - 1] = (byte) CLOSING.charAt(1);
        return line;
    }

    private byte[] check(byte[] bytes, int from, int to) {
        digest.update(before);
        digest.update(bytes, from, to - from);
        return HexFormat.of().formatHex(digest.digest(), 0, CHECK_BYTES).getBytes(StandardCharsets.US_ASCII);
    }
}
