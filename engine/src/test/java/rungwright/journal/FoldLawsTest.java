package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;

/** Whatever was recorded, corrected and withdrawn in whatever order. */
class FoldLawsTest {
    private static final int LENGTH = 30;

    private static ShelfStore history(long seed) throws IOException {
        return Winter.history(new Random(seed), LENGTH);
    }

    private static List<String> sense(Fold fold) {
        return fold.happenings().stream()
                .map(each -> each.number() + " " + each.event() + " " + each.decision().outcome()).toList();
    }

    @Property(tries = 200)
    void aPrefixAndThenTheRestIsTheWhole(@ForAll long seed) throws IOException {
        List<Entry> entries = history(seed).read().entries();
        Fold fold = Fold.of(Winter.FIRST, List.of());
        for (int length = 0; length < entries.size(); length++) {
            fold = fold.with(entries.get(length));
            assertEquals(Fold.of(Winter.FIRST, entries.subList(0, length + 1)), fold);
            assertEquals(Optional.empty(), fold.toldOtherwise(), "what is told is what a fold comes to");
        }
    }

    /**
     * Slowly and plainly: the last word on each entry, in order of days, each decided from the one before.
     */
    @Property(tries = 200)
    void itComesToWhatSteppingComesTo(@ForAll long seed) throws IOException {
        List<Entry> entries = history(seed).read().entries();
        List<Event> events = new ArrayList<>();
        for (Entry entry : entries) {
            Optional<Event> event = entry.match(new FirstEvent());
            for (Entry later : entries) {
                if (later instanceof Entry.Corrected its && its.corrects() == entry.number()) {
                    event = its.instead();
                }
            }
            event.ifPresent(events::add);
        }
        events.sort(Comparator.comparing(Event::date));
        Optional<State> state = Optional.empty();
        for (Event event : events) {
            Decision decision = state.isPresent() ? Stepper.step(Winter.FIRST, state.get(), event)
                    : Stepper.begin(Winter.FIRST, event);
            assertTrue(!decision.isRefused(), () -> "recorded, yet refused: " + decision);
            state = decision.after();
        }
        Fold fold = Fold.of(Winter.FIRST, entries);
        assertEquals(state, fold.state());
        assertEquals(events, fold.happenings().stream().map(Happening::event).toList());
    }

    @Property(tries = 100)
    void aCorrectionThatChangesNothingChangesNothing(@ForAll long seed) throws IOException {
        ShelfStore store = history(seed);
        Journal journal = Journal.of(Winter.FIRST, store);
        List<Entry> entries = store.read().entries();
        Fold fold = journal.fold();
        for (Happening each : fold.happenings()) {
            Optional<Event> same = Optional.of(each.event());
            Entry correction = new Entry.Corrected(entries.size() + 1, Winter.day("2026-03-02"),
                    Optional.empty(), each.number(), same, each.entry().told());
            assertEquals(sense(fold), sense(fold.with(correction)));
            Written written = journal.correct(each.number(), same, Winter.day("2026-03-02"),
                    Optional.of("Ida"));
            assertInstanceOf(Written.Already.class, written);
            assertEquals(entries, store.read().entries());
        }
    }

    @Property(tries = 100)
    void withdrawnAndReinstatedIsNeverTouched(@ForAll long seed) throws IOException {
        ShelfStore store = history(seed);
        Journal journal = Journal.of(Winter.FIRST, store);
        Fold before = journal.fold();
        Random random = new Random(seed);
        Happening one = before.happenings().get(random.nextInt(before.happenings().size()));
        Written withdrawn = journal.correct(one.number(), Optional.empty(), Winter.day("2026-03-02"),
                Optional.empty());
        if (withdrawn instanceof Written.Done done) {
            assertEquals(Optional.empty(), done.happening());
            assertInstanceOf(Written.Already.class, journal.correct(one.number(), Optional.empty(),
                    Winter.day("2026-03-02"), Optional.empty()));
            assertInstanceOf(Written.Done.class, journal.correct(one.number(), Optional.of(one.event()),
                    Winter.day("2026-03-03"), Optional.empty()));
        } else {
            assertInstanceOf(Written.Refused.class, withdrawn);
        }
        assertEquals(sense(before), sense(journal.fold()));
    }

    @Property(tries = 100)
    void theSameOnceMoreIsRecordedOnce(@ForAll long seed) throws IOException {
        ShelfStore store = history(seed);
        Journal journal = Journal.of(Winter.FIRST, store);
        List<Entry> entries = store.read().entries();
        for (Happening each : journal.fold().happenings()) {
            if (each.entry() instanceof Entry.Recorded its && its.session() > 0) {
                Written again = journal.record(each.event(), Note.NONE.session(its.session()));
                assertEquals(each.number(), assertInstanceOf(Written.Already.class, again).number());
            }
        }
        assertEquals(entries, store.read().entries());
    }

    @Property(tries = 100)
    void theEndOfADayIsWhatItsEventsComeTo(@ForAll long seed) throws IOException {
        Fold fold = Journal.of(Winter.FIRST, history(seed)).fold();
        for (Happening each : fold.happenings()) {
            Fold cut = fold.asOf(each.date());
            Happening last = cut.latest().orElseThrow();
            assertEquals(each.date(), last.date());
            assertEquals(last.decision().after(), cut.state());
            assertEquals(Optional.empty(), cut.toldOtherwise());
        }
    }
}
