package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.finding.Witness;

/**
 * A witness in one line: {@code stage `tuck`, rung 40 kg, reps 8, hold 20 s}. Sets and lists stand in
 * brackets, {@code reps (9, 7, none)}.
 */
final class WitnessText {
    private WitnessText() {
    }

    static String of(Witness witness) {
        List<String> parts = new ArrayList<>();
        witness.stage().ifPresent(stage -> parts.add("stage " + Shown.quoted(stage)));
        witness.rung().filter(rung -> !rung.isEmpty())
                .ifPresent(rung -> parts.add("rung " + Shown.text(rung)));
        witness.readings().forEach(reading -> parts.add(of(reading)));
        return parts.isEmpty() ? "any trainee" : String.join(", ", parts);
    }

    private static String of(Witness.Reading reading) {
        String name = Shown.text(reading.name()) + " ";
        if (!reading.isList()) {
            return name + value(reading.values().get(0));
        }
        return name + (reading.values().isEmpty() ? "none" : reading.values().stream().map(WitnessText::value)
                .collect(Collectors.joining(", ", "(", ")")));
    }

    private static String value(String value) {
        return value.isEmpty() ? "none" : Shown.text(value);
    }
}
