package rungwright.cli;

import java.util.List;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.Colours;

/** Two versions of a program, each from its file. */
record Versions(Program old, Program changed) {
    /** Reads and proves both; where one is not proven its findings are shown, and there is nothing. */
    static Optional<Versions> read(String old, String changed, Console console, long budget,
            Colours colours) {
        List<byte[]> bytes = Input.all(List.of(old, changed), console);
        Optional<Program> before = read(old, bytes.get(0), console, budget, colours);
        Optional<Program> after = read(changed, bytes.get(1), console, budget, colours);
        return before.isEmpty() || after.isEmpty() ? Optional.empty()
                : Optional.of(new Versions(before.get(), after.get()));
    }

    private static Optional<Program> read(String file, byte[] bytes, Console console, long budget,
            Colours colours) {
        Examined examined = Examined.of(file, bytes, budget);
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), colours).forEach(console.err()::println);
        }
        return examined.checked().program();
    }
}
