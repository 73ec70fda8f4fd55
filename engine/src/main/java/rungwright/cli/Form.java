package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;

/** How a command writes what it has to say. */
enum Form {
    /** Words for people. */
    TEXT,
    /** For programs. */
    JSON,
    /** For spreadsheets. */
    CSV,
    /** The XML in which build servers read test results. */
    JUNIT,
    /** The JSON in which code hosts and editors read findings. */
    SARIF;

    /** Reads {@code --format} of a command that writes text, JSON or SARIF. */
    static final class TextJsonOrSarif implements ITypeConverter<Form> {
        @Override
        public Form convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                case "sarif" -> SARIF;
                default -> throw new TypeConversionException(
                        Shown.quoted(word) + " is none of text, json, sarif");
            };
        }
    }

    /** Reads {@code --format} of a command that writes text or JSON. */
    static final class TextOrJson implements ITypeConverter<Form> {
        @Override
        public Form convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                default -> throw new TypeConversionException(
                        Shown.quoted(word) + " is neither text nor json");
            };
        }
    }

    /** Reads {@code --format} of a command that writes text, JSON or CSV. */
    static final class TextJsonOrCsv implements ITypeConverter<Form> {
        @Override
        public Form convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                case "csv" -> CSV;
                default -> throw new TypeConversionException(
                        Shown.quoted(word) + " is none of text, json, csv");
            };
        }
    }

    /** Reads {@code --format} of a command that writes text, JSON or the XML of build servers. */
    static final class TextJsonOrJunit implements ITypeConverter<Form> {
        @Override
        public Form convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                case "junit" -> JUNIT;
                default -> throw new TypeConversionException(
                        Shown.quoted(word) + " is none of text, json, junit");
            };
        }
    }
}
