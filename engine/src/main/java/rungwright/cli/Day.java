package rungwright.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rungwright.text.UsageText;

/** Reads the option {@code --date}: a day such as 2026-03-04. */
final class Day implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String word) {
        try {
            return LocalDate.parse(word.strip());
        } catch (DateTimeParseException e) {
            throw new TypeConversionException(UsageText.noDate(word));
        }
    }
}
