package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;

/** How a sheet is written. */
enum SheetForm {
    /** Words for people at a terminal. */
    TEXT,
    /** For programs. */
    JSON,
    /** A page to print or to look at. */
    HTML,
    /** A calendar. */
    ICS;

    /** Reads {@code --format}. */
    static final class Reader implements ITypeConverter<SheetForm> {
        @Override
        public SheetForm convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                case "html" -> HTML;
                case "ics" -> ICS;
                default -> throw new TypeConversionException(
                        Shown.quoted(word) + " is none of text, json, html, ics");
            };
        }
    }
}
