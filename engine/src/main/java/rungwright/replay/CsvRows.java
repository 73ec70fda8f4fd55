package rungwright.replay;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * The rows of a CSV text (RFC 4180), one after the other. Where the text cannot be read on, the rows end and
 * {@link #trouble} says why.
 */
final class CsvRows implements Iterator<CsvRecord> {
    private final Iterator<CsvRecord> records;
    private Optional<CsvRecord> next = Optional.empty();
    private Optional<String> trouble = Optional.empty();
    private long line = 1;

    private CsvRows(Iterator<CsvRecord> records) {
        this.records = records;
        advance();
    }

    static CsvRows of(Reader text) {
        return new CsvRows(CsvReader.builder().missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)
                .iterator());
    }

    /** Why the rows ended before the text did. */
    Optional<String> trouble() {
        return trouble;
    }

    /** The line on which the latest row began. */
    long line() {
        return line;
    }

    /** The row that comes next, if there is one. */
    Optional<CsvRecord> peek() {
        return next;
    }

    @Override
    public boolean hasNext() {
        return next.isPresent();
    }

    @Override
    public CsvRecord next() {
        CsvRecord row = next.orElseThrow(NoSuchElementException::new);
        line = row.getStartingLineNumber();
        advance();
        return row;
    }

    private void advance() {
        next = Optional.empty();
        try {
            if (records.hasNext()) {
                next = Optional.of(records.next());
            }
        } catch (CsvParseException e) {
            trouble = Optional.of("after this line the text is not CSV: look for a quote that is not closed");
        } catch (UncheckedIOException e) {
            trouble = Optional.of(e.getCause() instanceof CharacterCodingException
                    ? "after this line the text is not UTF-8" : "after this line the text cannot be read");
        }
    }
}
