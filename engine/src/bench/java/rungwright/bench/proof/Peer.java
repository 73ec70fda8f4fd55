package rungwright.bench.proof;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;

/**
 * Something that is asked in a process of its own, which is ended after a minute.
 *
 * @param millis what it took; nothing where it did not answer
 * @param answer what it said
 */
record Peer(OptionalDouble millis, String answer) {
    private static final long LIMIT_SECONDS = 60;

    static Peer ask(Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of("java", "-cp", System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        try {
            Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            if (!process.waitFor(LIMIT_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
                return new Peer(OptionalDouble.empty(), "no answer in " + LIMIT_SECONDS + " s");
            }
            String[] words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip()
                    .split(" ", 2);
            if (process.exitValue() != 0 || words.length < 2) {
                throw new IllegalStateException(main.getName() + " failed");
            }
            return new Peer(OptionalDouble.of(Double.parseDouble(words[0])), words[1]);
        } catch (IOException | InterruptedException problem) {
            throw new IllegalStateException(problem);
        }
    }

    /** The faster of two. */
    Peer or(Peer other) {
        return millis.orElse(Double.MAX_VALUE) <= other.millis.orElse(Double.MAX_VALUE) ? this : other;
    }
}
