package rungwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;
import rungwright.program.Checked;

/** The option {@code --budget}, for commands that prove a spec. */
final class ProofSize {
    @Option(names = "--budget", paramLabel = "BOXES", converter = Reader.class,
            description = "How many boxes of readings the proof may look at in each stage and section;"
                    + " 5000000 where nothing is said. To be raised where a spec is called too complex.")
    private long boxes = Checked.USUAL_BUDGET;

    long boxes() {
        return boxes;
    }

    /** Reads a whole number from 1. */
    static final class Reader implements ITypeConverter<Long> {
        @Override
        public Long convert(String word) {
            if (!word.matches("[1-9][0-9]{0,17}")) {
                throw new TypeConversionException(Shown.quoted(word) + " is not a whole number from 1");
            }
            return Long.valueOf(word);
        }
    }
}
