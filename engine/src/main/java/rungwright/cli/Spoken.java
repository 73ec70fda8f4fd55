package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;
import rungwright.text.Language;

/** {@code --language}: how people are spoken to. */
final class Spoken {
    @Option(names = "--language", paramLabel = "en|de", converter = Reader.class, defaultValue = "en",
            description = "The language of our own words, en (the usual) or de; what the spec says stands"
                    + " as it is.")
    private Language language = Language.ENGLISH;

    /** Reads the option. */
    static final class Reader implements ITypeConverter<Language> {
        @Override
        public Language convert(String word) {
            return Language.read(word).orElseThrow(() -> new TypeConversionException(
                    Shown.quoted(word) + " is neither en nor de"));
        }
    }

    /** That which was asked for. */
    Language language() {
        return language;
    }
}
