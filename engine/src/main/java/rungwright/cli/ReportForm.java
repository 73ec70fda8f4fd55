package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;

/** How a report is written. */
enum ReportForm {
    /** Words for people at a terminal. */
    TEXT,
    /** For programs. */
    JSON,
    /** A page to print or to look at. */
    HTML;

    /** Reads {@code --format}. */
    static final class Reader implements ITypeConverter<ReportForm> {
        @Override
        public ReportForm convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                case "html" -> HTML;
                default -> throw new TypeConversionException(
                        Shown.quoted(word) + " is none of text, json, html");
            };
        }
    }
}
