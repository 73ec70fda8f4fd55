package rungwright.step;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import rungwright.measure.Measure;

/** Reads what a session logged; blank text is no reading. */
final class EntryReader {
    private final Index<Measure> measures;
    private final List<Table> tables;
    private final Entries entries;

    private EntryReader(Names names, int sets) {
        this.measures = names.measures();
        this.tables = names.tables();
        this.entries = new Entries(measures.all(), sets);
    }

    static Entries read(Names names, Event.Session session) throws Refused {
        List<Map<String, String>> sets = session.sets();
        if (sets.size() > Measure.MOST_SETS) {
            throw Refusals.tooManySets(sets.size());
        }
        EntryReader reader = new EntryReader(names, Math.max(1, sets.size()));
        reader.row(session.readings(), Optional.empty());
        for (int set = 0; set < sets.size(); set++) {
            reader.row(sets.get(set), Optional.of(set));
        }
        return reader.entries;
    }

    private void row(Map<String, String> row, Optional<Integer> set) throws Refused {
        int known = 0;
        for (int number = 0; number < measures.size(); number++) {
            String text = row.get(measures.get(number).name());
            if (text != null) {
                known++;
                put(number, text, set);
            }
        }
        if (known < row.size()) {
            refuseUnknown(row);
        }
    }

    private void put(int number, String text, Optional<Integer> set) throws Refused {
        if (text.isBlank()) {
            return;
        }
        Measure measure = measures.get(number);
        if (measure.bySet() != set.isPresent()) {
            throw measure.bySet()
                    ? Refusals.notForTheSession(measure.name())
                    : Refusals.notInASet(measure.name());
        }
        long position = tables.get(number).position(text);
        if (position == Entries.NONE) {
            throw Refusals.wrongValue(measure.name(), text, measure.values());
        }
        entries.put(number, set.orElse(0), position);
    }

    private void refuseUnknown(Map<String, String> row) throws Refused {
        for (String name : new TreeSet<>(row.keySet())) {
            if (measures.number(name) == Index.NONE) {
                throw Refusals.unknownName("measure", name, measures.names());
            }
        }
    }
}
