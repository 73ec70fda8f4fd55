package rungwright.replay;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * The rows of a CSV text (RFC 4180), one after the other; lines with nothing on them are no rows, and a byte
 * order mark before the first is none of its letters. Where the text cannot be read on, the rows end and
 * {@link #trouble} says why.
 */
final class CsvRows implements Iterator<Row> {
    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private final RowHandler handler;
    private final Iterator<Row> rows;
    private Optional<Row> next = Optional.empty();
    private Optional<String> trouble = Optional.empty();

    private CsvRows(Reader text, long linesBefore) {
        this.handler = new RowHandler(linesBefore);
        // A quote that is never closed would otherwise swallow the rest of the log without a word.
        this.rows = CsvReader.builder().allowUnclosedQuote(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .build(handler, text).iterator();
        advance();
    }

    static CsvRows of(Reader text) {
        return new CsvRows(new Unmarked(new BufferedReader(text)), 0);
    }

    /** The rows of a part of a text that begins behind so many lines. */
    static CsvRows of(Reader text, long linesBefore) {
        return linesBefore == 0 ? of(text) : new CsvRows(text, linesBefore);
    }

    /** Why the rows ended before the text did. */
    Optional<String> trouble() {
        return trouble;
    }

    /** The line on which the latest row that was looked at began, be it whole or not. */
    long line() {
        return handler.line();
    }

    /** The row that comes next, if there is one. */
    Optional<Row> peek() {
        return next;
    }

    @Override
    public boolean hasNext() {
        return next.isPresent();
    }

    @Override
    public Row next() {
        Row row = next.orElseThrow(NoSuchElementException::new);
        advance();
        return row;
    }

    private void advance() {
        next = Optional.empty();
        try {
            if (rows.hasNext()) {
                next = Optional.of(rows.next());
            }
        } catch (CsvParseException e) {
            trouble = Optional.of("from here on the text is not CSV: look for a quote that is not closed, or"
                    + " for one that closes before the end of its field");
        } catch (UncheckedIOException e) {
            trouble = Optional.of(e.getCause() instanceof CharacterCodingException
                    ? LogText.NOT_UTF8 : "from here on the text cannot be read");
        }
    }

    /** A text without the byte order mark that it may begin with. */
    private static final class Unmarked extends Reader {
        private final BufferedReader text;
        private boolean begun;

        Unmarked(BufferedReader text) {
            this.text = text;
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            if (!begun) {
                begun = true;
                text.mark(1);
                if (text.read() != BYTE_ORDER_MARK) {
                    text.reset();
                }
            }
            return text.read(buffer, offset, length);
        }

        @Override
        public void close() throws IOException {
            text.close();
        }
    }
}
