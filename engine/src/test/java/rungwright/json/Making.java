package rungwright.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rungwright.finding.Place;
import rungwright.journal.Entry;
import rungwright.journal.Told;
import rungwright.program.Instead;
import rungwright.program.Standing;
import rungwright.spec.RuleKind;
import rungwright.step.BreakMove;
import rungwright.step.Change;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.NearMiss;
import rungwright.step.Next;
import rungwright.step.Outcome;
import rungwright.step.ProgramId;
import rungwright.step.Progress;
import rungwright.step.Reason;
import rungwright.step.Refusal;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Tally;
import rungwright.step.ToLog;
import rungwright.step.Trainee;

/** Makes values at random. */
final class Making {
    private static final List<String> WORDS = List.of("reps", "9", "8.10", "1:30", "", " ", "yes", "null",
            "\"", "\\", "a\"b", "café", "\u202ereversed", "\u001b[31m", "\u2028", "\u007f", "\uFEFF",
            "\ud83d\ude00", "line\nbreak", "form", "события", "{}");

    private final Random random;

    Making(long seed) {
        this.random = new Random(seed);
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private String word() {
        return one(WORDS) + (random.nextBoolean() ? "" : one(WORDS));
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private <T> List<T> some(Supplier<T> value) {
        return IntStream.range(0, random.nextInt(4)).mapToObj(each -> value.get()).toList();
    }

    private <T> Map<String, T> named(Supplier<T> value) {
        Map<String, T> named = new TreeMap<>();
        some(() -> named.put(word(), value.get()));
        return named;
    }

    private LocalDate day() {
        return LocalDate.parse("2026-01-01").plusDays(random.nextInt(1000));
    }

    private Trainee trainee() {
        return Trainee.of(named(() -> some(this::word)), named(this::word));
    }

    Event event() {
        LocalDate date = day();
        Optional<String> id = maybe(this::word);
        return switch (random.nextInt(6)) {
            case 0 -> new Event.Enrol(date, id, trainee());
            case 1 -> new Event.Session(date, id, named(this::word), some(() -> named(this::word)));
            case 2 -> new Event.Clearance(date, id, word());
            case 3 -> new Event.FactsChanged(date, id, trainee());
            case 4 -> new Event.Move(date, id, word(), word());
            default -> new Event.NewVersion(date, id, trainee());
        };
    }

    private Standing place() {
        return new Standing(random.nextInt(5), word(), 1 + random.nextInt(9), word());
    }

    State state() {
        Status status = one(List.of(Status.values()));
        LocalDate entered = day();
        LocalDate session = entered.plusDays(random.nextInt(9));
        Map<String, Tally> tallies = named(() -> Tally.of(word(), some(random::nextBoolean)));
        return new State(new ProgramId(word(), word(), word()), trainee(), status,
                status == Status.STOPPED ? maybe(this::word) : Optional.empty(), place(), entered,
                Optional.of(session), 4 + random.nextInt(9), tallies, named(this::word),
                named(this::word), session.plusDays(random.nextInt(3)), some(this::word));
    }

    private RuleRef rule() {
        return new RuleRef(one(List.of(RuleKind.values())), word(),
                new Place(1 + random.nextInt(99), 1 + random.nextInt(99)), maybe(this::word));
    }

    private Reason reason() {
        return new Reason(word(), word(), word(), word(), random.nextBoolean());
    }

    private Change change() {
        return new Change(word(), random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(30))
                : OptionalInt.empty(), word(), word(), random.nextInt(99));
    }

    Decision decision() {
        Kind kind = one(List.of(Kind.values()));
        Optional<Refusal> refusal = kind == Kind.REFUSED ? Optional.of(new Refusal(
                one(List.of(Refusal.Code.values())), some(this::word), word())) : Optional.empty();
        Outcome outcome = new Outcome(kind, maybe(this::rule), maybe(this::state), maybe(this::state),
                maybe(() -> new BreakMove(rule(), place(), maybe(this::place), random.nextInt(99),
                        some(this::reason))),
                maybe(() -> new Progress(random.nextInt(4), random.nextInt(4), random.nextInt(4))),
                refusal, maybe(() -> one(List.of(Instead.values()))));
        Optional<Next> next = maybe(() -> new Next(place(), Optional.empty(), some(() -> new ToLog(word(),
                maybe(this::word), random.nextBoolean(), maybe(this::word)))));
        return Decision.of(outcome, some(this::reason), next,
                some(() -> new NearMiss(one(List.of(Kind.values())), rule(), some(this::change))));
    }

    private Told told() {
        return new Told(new ProgramId(word(), word(), word()), one(List.of(Kind.values())), place(),
                one(List.of(Status.values())));
    }

    Entry entry() {
        int number = 2 + random.nextInt(99);
        Optional<String> by = maybe(this::word);
        Event event = event();
        if (event instanceof Event.NewVersion version) {
            return new Entry.Carried(number, by, version, state(), told());
        }
        if (random.nextInt(4) == 0) {
            return new Entry.Corrected(number, day(), by, 1 + random.nextInt(number - 1), maybe(this::event),
                    told());
        }
        int session = event instanceof Event.Session ? 1 + random.nextInt(3) : 0;
        return new Entry.Recorded(number, by, session, event, told());
    }
}
