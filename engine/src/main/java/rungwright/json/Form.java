package rungwright.json;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HexFormat;
import rungwright.finding.Shown;

/** What all our JSON has in common: UTF-8, the number of its form, and how it escapes. */
final class Form {
    /** The form that is written and read; it changes when a reader of the old one would go wrong. */
    static final int NUMBER = 1;

    private static final JsonFactory FACTORY =
            new JsonFactoryBuilder().characterEscapes(new Unseen()).build();

    private Form() {
    }

    /** Writes to a stream that stays open when the generator is closed. */
    static JsonGenerator generator(OutputStream out) throws IOException {
        return FACTORY.createGenerator(out, JsonEncoding.UTF8)
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    }

    /** Writes documents one below the other, each on a line of its own. */
    static JsonGenerator lines(OutputStream out) throws IOException {
        return generator(out).setPrettyPrinter(new MinimalPrettyPrinter("\n"));
    }

    /** Marks that cannot be seen, and could turn the text around them, stand as escapes. */
    private static final class Unseen extends CharacterEscapes {
        private static final long serialVersionUID = 1L;
        private static final int DELETE = 0x7F;

        @Override
        public int[] getEscapeCodesForAscii() {
            int[] codes = standardAsciiEscapesForJSON();
            codes[DELETE] = ESCAPE_STANDARD;
            return codes;
        }

        @Override
        public SerializableString getEscapeSequence(int point) {
            boolean half = point <= Character.MAX_VALUE && Character.isSurrogate((char) point);
            return Shown.isPlain(point) || half ? null
                    : new SerializedString("\\u" + HexFormat.of().toHexDigits((char) point));
        }
    }
}
