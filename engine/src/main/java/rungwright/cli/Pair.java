package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;

/** Two texts with an equals sign between them: {@code alva=stage free dip}. */
record Pair(String name, String value) {
    /** Reads one; the name is what stands before the first equals sign. */
    static final class Reader implements ITypeConverter<Pair> {
        @Override
        public Pair convert(String word) {
            int equals = word.indexOf('=');
            if (equals < 1 || equals == word.length() - 1) {
                throw new TypeConversionException(Shown.quoted(word)
                        + " is not two names with = between them");
            }
            return new Pair(word.substring(0, equals).strip(), word.substring(equals + 1).strip());
        }
    }
}
