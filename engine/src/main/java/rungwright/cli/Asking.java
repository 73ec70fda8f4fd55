package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.text.Answer;
import rungwright.text.AskText;
import rungwright.text.Question;

/** Asks a person at the terminal one question at a time, again until the answer can be used. */
final class Asking {
    private final BufferedReader in;
    private final PrintStream out;

    Asking(Console console) {
        this.in = new BufferedReader(new InputStreamReader(console.in(), StandardCharsets.UTF_8));
        this.out = console.out();
    }

    void say(List<String> lines) {
        lines.forEach(out::println);
    }

    /** How many sets there were. */
    int sets(Optional<Integer> usual) throws IOException, EndedException {
        while (true) {
            String answer = line(AskText.sets(usual)).strip();
            if (answer.isEmpty() && usual.isPresent()) {
                return usual.get();
            }
            if (answer.matches("[1-9][0-9]?") && Integer.parseInt(answer) <= Measure.MOST_SETS) {
                return Integer.parseInt(answer);
            }
            out.println(AskText.noNumberOfSets(answer, Measure.MOST_SETS));
        }
    }

    /** The values of an answer to a question; for one of each set as many as there are sets. */
    List<String> answer(Question question, int sets) throws IOException, EndedException {
        out.println();
        say(AskText.question(question, sets));
        while (true) {
            String text = line("> ").strip();
            if (text.equals("?") || text.isEmpty() && question.otherwise().isEmpty()) {
                say(AskText.more(question, sets));
                continue;
            }
            Answer answer = question.read(question.length().isPresent() && text.equals("none") ? "" : text);
            int parts = answer.values().size();
            if (!answer.isFine()) {
                say(AskText.again(answer.mistakes()));
            } else if (question.topic() == Question.Topic.SET && parts != sets && !text.isEmpty()) {
                out.println(AskText.otherNumber(parts, sets));
            } else {
                return answer.values();
            }
        }
    }

    /** Whether the answer is yes. */
    boolean confirmed() throws IOException, EndedException {
        while (true) {
            switch (line(AskText.confirm()).strip().toLowerCase(Locale.ROOT)) {
                case "yes", "y" -> {
                    return true;
                }
                case "no", "n" -> {
                    return false;
                }
                default -> {
                    // Asked again: neither yes nor no.
                }
            }
        }
    }

    private String line(String prompt) throws IOException, EndedException {
        out.print(prompt);
        out.flush();
        String line = in.readLine();
        if (line == null) {
            out.println();
            throw new EndedException();
        }
        return line;
    }

    /** The person has ended the input. */
    static final class EndedException extends Exception {
        private static final long serialVersionUID = 1L;
    }
}
