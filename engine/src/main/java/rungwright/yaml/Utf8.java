package rungwright.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import rungwright.finding.Place;

/** Bytes as text, and the place of the first byte that is none. */
final class Utf8 {
    private static final int CHUNK = 8192;

    private Utf8() {
    }

    /** The text of bytes that have no bad place. */
    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The place of the first byte that is not UTF-8; empty where all are. */
    static Optional<Place> badPlace(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(CHUNK);
        while (in.hasRemaining()) {
            out.clear();
            if (decoder.decode(in, out, true).isError()) {
                return Optional.of(placeAfter(text(Arrays.copyOf(bytes, in.position()))));
            }
        }
        return Optional.empty();
    }

    private static Place placeAfter(String before) {
        Source source = Source.of(before, new Findings());
        return source.place(source.size());
    }
}
