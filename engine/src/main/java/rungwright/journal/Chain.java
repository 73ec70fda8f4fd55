package rungwright.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The checksum that each line ends with: the first 16 bytes of SHA-256 over the checksum of the line before
 * and the line itself. A line that was changed, taken out or put in shows, and so does a change of order.
 *
 * <p>{@code {"entry":1,"event":"enrol",...,"check":"0f3ab1..."}}: what is checked ends before the comma. It
 * finds damage; somebody who means to deceive can compute it anew.
 */
final class Chain {
    /** The checksum before the first line. */
    static final String START = "";

    private static final byte[] LEAD = ",\"check\":\"".getBytes(StandardCharsets.UTF_8);
    private static final byte[] TAIL = "\"}".getBytes(StandardCharsets.UTF_8);
    private static final int DIGITS = 32;
    private static final int SEAL = LEAD.length + DIGITS + TAIL.length;

    private final MessageDigest digest;

    Chain() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** An object of JSON with its checksum as the last field. */
    byte[] sealed(String before, String json) {
        byte[] body = json.substring(0, json.length() - 1).getBytes(StandardCharsets.UTF_8);
        byte[] line = Arrays.copyOf(body, body.length + SEAL);
        System.arraycopy(LEAD, 0, line, body.length, LEAD.length);
        byte[] check = check(before, line, 0, body.length).getBytes(StandardCharsets.UTF_8);
        System.arraycopy(check, 0, line, body.length + LEAD.length, DIGITS);
        System.arraycopy(TAIL, 0, line, line.length - TAIL.length, TAIL.length);
        return line;
    }

    /** The checksum of the line between two places, if it has the right one. */
    Optional<String> verified(String before, byte[] bytes, int from, int to) {
        int end = to - SEAL;
        if (end <= from || !stands(LEAD, bytes, end) || !stands(TAIL, bytes, to - TAIL.length)) {
            return Optional.empty();
        }
        String written = new String(bytes, end + LEAD.length, DIGITS, StandardCharsets.ISO_8859_1);
        return Optional.of(written).filter(check(before, bytes, from, end)::equals);
    }

    /** The object of JSON in a line that is verified. */
    static String json(byte[] bytes, int from, int to) {
        return new String(bytes, from, to - SEAL - from, StandardCharsets.UTF_8) + "}";
    }

    private String check(String before, byte[] bytes, int from, int to) {
        digest.update(before.getBytes(StandardCharsets.UTF_8));
        digest.update(bytes, from, to - from);
        return HexFormat.of().formatHex(digest.digest(), 0, DIGITS / 2);
    }

    private static boolean stands(byte[] what, byte[] bytes, int at) {
        return Arrays.equals(what, 0, what.length, bytes, at, at + what.length);
    }
}
