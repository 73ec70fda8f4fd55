package rungwright.json;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;

/** What all our JSON has in common: UTF-8, and the number of its form. */
final class Form {
    /** The form that is written and read; it changes when a reader of the old one would go wrong. */
    static final int NUMBER = 1;

    private static final JsonFactory FACTORY = JsonFactory.builder().build();

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
}
