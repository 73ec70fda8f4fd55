package rungwright.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Finding;
import rungwright.finding.Witness;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.program.Outline;
import rungwright.program.Stage;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.text.Language;
import rungwright.text.RuleWords;
import rungwright.text.Words;

/** Ways through a program that can be drawn on its picture. */
public final class Trails {
    private Trails() {
    }

    /** A trainee's history: a step for each time in a stage, with its sessions and rungs. */
    public static Trail of(String trainee, Fold fold, Language language) {
        Walk walk = new Walk(fold.program().outline(), language);
        fold.happenings().forEach(walk::take);
        walk.leave();
        return new Trail(trainee, walk.steps);
    }

    /** The trainee and session that show a finding, where it has one in a stage. */
    public static Optional<Trail> of(Outline outline, Finding finding, Language language) {
        Optional<Witness> witness = finding.witness();
        Optional<Integer> stage = witness.flatMap(Witness::stage).flatMap(name -> outline.stages().stream()
                .filter(each -> each.name().equals(name)).map(Stage::number).findFirst());
        return stage.map(number -> new Trail(finding.code().word(),
                List.of(new Trail.Step(number, words(finding, witness.orElseThrow(),
                        new RuleWords(outline, language))))));
    }

    private static String words(Finding finding, Witness witness, RuleWords rules) {
        Words words = rules.language().words("picture");
        List<String> said = new ArrayList<>();
        witness.rung().filter(rung -> !rung.isEmpty()).ifPresent(rung -> said.add(words.say("trail.rung",
                rules.rung(rung))));
        witness.readings().forEach(reading -> said.add(reading.name() + " "
                + rules.asked(reading.name(), String.join(", ", reading.values()))));
        return words.say("trail.finding", finding.code().word(), Integer.toString(finding.place().line()),
                String.join(", ", said));
    }

    /** Goes through a history and closes a step whenever the stage changes. */
    private static final class Walk {
        private final int goal;
        private final RuleWords rules;
        private final Words said;
        private final List<Trail.Step> steps = new ArrayList<>();
        private final Set<String> rungs = new LinkedHashSet<>();
        private Optional<Integer> stage = Optional.empty();
        private int sessions;
        private int first;

        Walk(Outline outline, Language language) {
            this.goal = outline.stages().size();
            this.rules = new RuleWords(outline, language);
            this.said = language.words("picture");
        }

        void take(Happening each) {
            if (each.decision().isRefused() || each.decision().after().isEmpty()) {
                return;
            }
            sessions += each.isSession() ? 1 : 0;
            State after = each.decision().after().get();
            int at = after.status() == Status.REACHED ? goal : after.at().stage();
            if (stage.filter(known -> known == at).isEmpty()) {
                leave();
                stage = Optional.of(at);
                first = sessions + 1;
            }
            if (!after.at().rungName().isEmpty() && at != goal) {
                rungs.add(after.at().rungName());
            }
        }

        void leave() {
            stage.ifPresent(at -> steps.add(new Trail.Step(at, words(at))));
            rungs.clear();
        }

        private String words(int at) {
            if (at == goal) {
                return said.say("trail.after", Integer.toString(first - 1));
            }
            String from = Integer.toString(first);
            String which = sessions < first ? said.say("trail.noSession")
                    : sessions == first ? said.say("trail.session", from)
                            : said.say("trail.sessions", from, Integer.toString(sessions));
            return rungs.isEmpty() ? which : said.say("trail.on", which,
                    String.join(", ", rungs.stream().map(rules::rung).toList()));
        }
    }
}
