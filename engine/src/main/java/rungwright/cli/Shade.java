package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;
import rungwright.text.Colours;

/** The option {@code --color}, for commands that write text. */
final class Shade {
    @Option(names = "--color", paramLabel = "auto|always|never", converter = Reader.class,
            defaultValue = "auto",
            description = "Colours: auto (the usual) is on a terminal, unless NO_COLOR is set.")
    private When when = When.AUTO;

    /** The colours that were asked for, or that suit the terminal. */
    Colours colours(Console console) {
        return Colours.when(switch (when) {
            case AUTO -> console.likesColours();
            case ALWAYS -> true;
            case NEVER -> false;
        });
    }

    /** When there are colours. */
    private enum When {
        AUTO, ALWAYS, NEVER
    }

    /** Reads the option's word. */
    static final class Reader implements ITypeConverter<When> {
        @Override
        public When convert(String word) {
            return switch (word) {
                case "auto" -> When.AUTO;
                case "always" -> When.ALWAYS;
                case "never" -> When.NEVER;
                default -> throw new TypeConversionException(Shown.quoted(word)
                        + " is none of auto, always, never");
            };
        }
    }
}
