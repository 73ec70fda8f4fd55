package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.text.Answer;
import rungwright.text.AskText;
import rungwright.text.Question;

/** Asks a person at the terminal one question at a time, again until the answer can be used. */
final class Asking {
    private final BufferedReader in;
    private final PrintStream out;
    private final AskText words;

    Asking(AskText words, Console console) {
        this.words = words;
        this.in = new BufferedReader(new InputStreamReader(console.in(), StandardCharsets.UTF_8));
        this.out = console.out();
    }

    void say(List<String> lines) {
        lines.forEach(out::println);
    }

    /** How many sets there were. */
    int sets(Optional<Integer> usual) throws IOException, EndedException {
        while (true) {
            String answer = line(words.sets(usual)).strip();
            if (answer.isEmpty() && usual.isPresent()) {
                return usual.get();
            }
            if (answer.matches("[1-9][0-9]?") && Integer.parseInt(answer) <= Measure.MOST_SETS) {
                return Integer.parseInt(answer);
            }
            out.println(words.noNumberOfSets(answer, Measure.MOST_SETS));
        }
    }

    /** The values of an answer to a question; for one of each set as many as there are sets. */
    List<String> answer(Question question, int sets) throws IOException, EndedException {
        out.println();
        say(words.question(question, sets));
        while (true) {
            String text = line("> ").strip();
            if (text.equals("?") || text.isEmpty() && question.otherwise().isEmpty()) {
                say(words.more(question, sets));
                continue;
            }
            Answer answer = question.read(question.length().isPresent() && words.isNone(text) ? ""
                    : text, words.language());
            int parts = answer.values().size();
            if (!answer.isFine()) {
                say(AskText.again(answer.mistakes()));
            } else if (question.topic() == Question.Topic.SET && parts != sets && !text.isEmpty()) {
                say(AskText.again(List.of(words.otherNumber(parts, sets))));
            } else {
                return answer.values();
            }
        }
    }

    /** Whether the answer is yes. */
    boolean confirmed() throws IOException, EndedException {
        while (true) {
            Optional<Boolean> answer = words.confirmed(line(words.confirm()).strip());
            if (answer.isPresent()) {
                return answer.get();
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
