package rungwright.replay;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * UTF-8 as text. Bytes that are none are a {@link java.nio.charset.CharacterCodingException}, and everything
 * before them has been given by then, however the bytes came.
 */
public final class LogText extends Reader {
    /** Why a text that is not UTF-8 is read no further, and the way out. */
    public static final String NOT_UTF8 = "the text is not UTF-8, here or soon after, and nothing more of it"
            + " is read; save it again as UTF-8";

    private static final int ROOM = 1 << 13;

    private final InputStream in;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer bytes = ByteBuffer.allocate(ROOM).flip();
    // What of a pair had no room in what was asked for.
    private final CharBuffer left = CharBuffer.allocate(2).flip();
    private boolean ended;

    /** The text of a stream. */
    public LogText(InputStream in) {
        this.in = in;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        if (left.hasRemaining() && length > 0) {
            buffer[offset] = left.get();
            return 1;
        }
        CharBuffer out = CharBuffer.wrap(buffer, offset, length).slice();
        while (true) {
            CoderResult result = decoder.decode(bytes, out, ended);
            if (out.position() > 0 || length == 0) {
                return out.position();
            }
            if (result.isError()) {
                result.throwException();
            }
            if (result.isOverflow()) {
                decoder.decode(bytes, left.clear(), ended);
                left.flip();
                return read(buffer, offset, length);
            }
            if (ended) {
                return -1;
            }
            fill();
        }
    }

    private void fill() throws IOException {
        bytes.compact();
        int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
        ended = count < 0;
        bytes.position(bytes.position() + Math.max(0, count)).flip();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
