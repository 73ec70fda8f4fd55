package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;

/** Reads a whole number from 1 to 999999. */
final class WholeNumber implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String word) {
        if (!word.matches("[1-9][0-9]{0,5}")) {
            throw new TypeConversionException(Shown.quoted(word) + " is not a whole number from 1 to 999999");
        }
        return Integer.valueOf(word);
    }
}
