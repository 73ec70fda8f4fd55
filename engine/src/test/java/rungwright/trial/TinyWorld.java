package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** Every short history of a program with two small measures, for who wants to know by counting. */
final class TinyWorld {
    private static final int TOP = 4;

    private TinyWorld() {
    }

    static String spec(String stage) {
        return """
                program: Tiny
                version: 1
                goal: Done
                cautions: [Stop where it hurts.]
                measures: { hold: { values: 0 to 4 }, pain: { values: 0 to 4 } }
                ladders: { wall: { rungs: [high, middle, low] } }
                stop: { name: Hurt, when: { pain: 4 }, say: See a doctor., once cleared: 1 rung down }
                stages:
                  one:
                    ladder: wall
                """ + stage.indent(4) + """
                  two: { advance: { when: { hold: 4 } }, hold: { when: { hold: under 4 } } }
                """;
    }

    /** All that can be logged in one session. */
    private static List<Map<String, String>> sessions() {
        List<Map<String, String>> all = new ArrayList<>();
        for (int hold = 0; hold <= TOP; hold++) {
            for (int pain = 0; pain <= TOP; pain++) {
                all.add(Map.of("hold", "" + hold, "pain", "" + pain));
            }
        }
        return all;
    }

    /** Whether some history of so many sessions, from any place, is decided otherwise by two programs. */
    static boolean differ(Program one, Program other, int length) {
        for (String place : List.of("one / high", "one / middle", "one / low", "two")) {
            Event.Enrol enrol = Event.Enrol.of(CaseMaker.FIRST_DAY, Trainee.UNKNOWN);
            Event start = new Event.Move(CaseMaker.FIRST_DAY, Optional.empty(), place, "here");
            if (differ(one, other, new Play(enrol, Optional.of(start), List.of()), length)) {
                return true;
            }
        }
        return false;
    }

    private static boolean differ(Program one, Program other, Play play, int length) {
        if (!told(one, play).equals(told(other, play))) {
            return true;
        }
        if (length == 0) {
            return false;
        }
        List<Event> next = new ArrayList<>();
        sessions().forEach(readings -> next.add(Event.Session.of(CaseMaker.FIRST_DAY, readings, List.of())));
        next.add(new Event.Clearance(CaseMaker.FIRST_DAY, Optional.empty(), "Dr Amrit"));
        return next.stream().anyMatch(event -> differ(one, other, play.then(event), length - 1));
    }

    private static String told(Program program, Play play) {
        StringBuilder told = new StringBuilder();
        for (CaseRun.Decided each : play.run(program).decisions()) {
            told.append(each.decision().kind()).append(each.decision().after()
                    .map(state -> state.at().show() + state.status()).orElse("")).append('\n');
        }
        return told.toString();
    }

    /** Whether a session on its own, somewhere, is decided by a rule of that name. */
    static boolean speaks(Program program, String rule) {
        return sessions().stream().anyMatch(readings -> List.of("one / high", "one / low", "two").stream()
                .anyMatch(place -> speaks(program, rule, place, readings)));
    }

    private static boolean speaks(Program program, String rule, String place, Map<String, String> readings) {
        Event.Enrol enrol = Event.Enrol.of(CaseMaker.FIRST_DAY, Trainee.UNKNOWN);
        Event move = new Event.Move(CaseMaker.FIRST_DAY, Optional.empty(), place, "here");
        return Stepper.step(program, Stepper.step(program, Stepper.enrol(program, enrol).after()
                .orElseThrow(), move)
                .after().orElseThrow(), Event.Session.of(CaseMaker.FIRST_DAY, readings, List.of())).rule()
                .filter(each -> each.label().equals(rule)).isPresent();
    }
}
