package rungwright.step;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import rungwright.measure.Measure;
import rungwright.program.Rule;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.program.Standing;

/** Puts states of one trainee into words, and words into states. */
record RowState(RowPlan plan, Trainee trainee) {
    private static final int NOT_SAID = -2;
    private static final long FAR = 1 << 29;

    /** Puts a state into words, all or none of them; gives whether it could. */
    boolean write(State state, long[] states, int at) {
        if (!isMine(state)) {
            return false;
        }
        long[] words = new long[plan.words().size()];
        boolean said = place(state, words) && days(state, words) && left(state, words)
                && tallies(state, words) && previous(state, words);
        if (said) {
            System.arraycopy(words, 0, states, at, words.length);
        }
        return said;
    }

    private boolean isMine(State state) {
        return state.program().equals(plan.plan().id()) && state.trainee().equals(trainee)
                && state.ids().isEmpty();
    }

    private boolean place(State state, long[] words) {
        Standing at = state.at();
        words[0] = RowWords.place(state.status(), at.stage(), at.rung(), state.sessionsHere());
        return at.stage() < plan.stages().length && at.equals(standing(at.stage(), at.rung()));
    }

    private Standing standing(int stage, int rung) {
        List<Rung> rungs = rungs(stage);
        return rung == 0 || rung > rungs.size()
                ? plan.plan().noPlace()
                : Standing.on(stages().get(stage), rungs.get(rung - 1));
    }

    private List<Rung> rungs(int stage) {
        return trainee.fit().destinations().rungs(stage);
    }

    private List<Stage> stages() {
        return plan.plan().outline().stages();
    }

    private boolean days(State state, long[] words) {
        long last = state.lastSession().map(LocalDate::toEpochDay).orElse((long) RowWords.NEVER);
        long entered = state.entered().toEpochDay();
        int stop = state.stoppedBy().map(this::stopRule).orElse(0);
        words[1] = RowWords.both((int) entered, (int) last);
        words[2] = RowWords.both((int) state.latest().toEpochDay(), stop);
        return entered > -FAR && state.latest().toEpochDay() < FAR && stop != NOT_SAID
                && state.lastSession().filter(day -> day.toEpochDay() <= -FAR).isEmpty();
    }

    private int stopRule(String label) {
        return IntStream.range(0, plan.rules().size())
                .filter(rule -> plan.rule(rule).fires() == Kind.STOP
                        && plan.rules().get(rule).label().equals(label))
                .map(rule -> rule + 1).findFirst().orElse(NOT_SAID);
    }

    private boolean left(State state, long[] words) {
        for (Map.Entry<String, String> each : state.left().entrySet()) {
            int stage = stages().stream().map(Stage::name).toList().indexOf(each.getKey());
            int rung = stage < 0 ? 0 : rungs(stage).stream().map(Rung::name).toList()
                    .indexOf(each.getValue()) + 1;
            if (rung == 0) {
                return false;
            }
            if (stage != state.at().stage()) {
                RowWords.leftAt(words, 0, stage, rung);
            }
        }
        return true;
    }

    private boolean tallies(State state, long[] words) {
        InForce inForce = plan.plan().inForce(state.at().stage());
        List<String> labels = List.copyOf(inForce.counted().keySet());
        for (Map.Entry<String, Tally> each : state.tallies().entrySet()) {
            if (!inForce.counts(each.getKey(), each.getValue())) {
                return false;
            }
            plan.words().tally(words, 0, 1 + labels.indexOf(each.getKey()), each.getValue().bits());
        }
        return true;
    }

    private boolean previous(State state, long[] words) {
        List<Earlier> earlier = plan.plan().earlier();
        int said = 0;
        for (int slot = 0; slot < earlier.size(); slot++) {
            Measure measure = earlier.get(slot).measure();
            String text = state.previous().get(measure.name());
            OptionalLong position = text == null ? OptionalLong.empty() : measure.values().read(text);
            if (position.isPresent() && measure.values().show(position.getAsLong()).equals(text)) {
                said++;
            }
            plan.words().remember(words, 0, slot, (int) position.orElse(Rows.NONE));
        }
        return said == state.previous().size();
    }

    State read(long[] states, int at) {
        long place = states[at];
        Standing standing = standing(RowWords.stage(place), RowWords.rung(place));
        int last = RowWords.high(states[at + 1]);
        int stop = RowWords.high(states[at + 2]);
        return new State(plan.plan().id(), trainee.at(standing), RowWords.status(place),
                stop == 0 ? Optional.empty() : Optional.of(plan.rules().get(stop - 1).label()), standing,
                LocalDate.ofEpochDay(RowWords.low(states[at + 1])),
                last == RowWords.NEVER ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(last)),
                RowWords.sessionsHere(place), tallies(states, at), left(states, at), previous(states, at),
                LocalDate.ofEpochDay(RowWords.low(states[at + 2])), List.of());
    }

    private Map<String, Tally> tallies(long[] states, int at) {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        List<Counted> counted =
                new ArrayList<>(plan.plan().inForce(RowWords.stage(states[at])).counted().values());
        for (int slot = 0; slot < counted.size(); slot++) {
            Rule rule = counted.get(slot).rule();
            tallies.put(rule.label(), new Tally(counted.get(slot).code(), plan.words().tally(states, at, slot
                    + 1)));
        }
        return tallies;
    }

    private Map<String, String> left(long[] states, int at) {
        Map<String, String> left = new LinkedHashMap<>();
        for (Stage stage : stages()) {
            int rung = stage.number() == RowWords.stage(states[at])
                    ? RowWords.rung(states[at])
                    : RowWords.left(states, at, stage.number());
            if (rung > 0) {
                left.put(stage.name(), rungs(stage.number()).get(rung - 1).name());
            }
        }
        return left;
    }

    private Map<String, String> previous(long[] states, int at) {
        Map<String, String> previous = new LinkedHashMap<>();
        List<Earlier> earlier = plan.plan().earlier();
        for (int slot = 0; slot < earlier.size(); slot++) {
            int position = plan.words().previous(states, at, slot);
            if (position >= 0) {
                previous.put(earlier.get(slot).measure().name(),
                        earlier.get(slot).measure().values().show(position));
            }
        }
        return previous;
    }
}
