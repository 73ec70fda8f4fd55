package rungwright.replay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;

/**
 * Which column of a table means what: the columns of its form by their words, the rest by the names of a
 * spec.
 *
 * @param known the columns whose names are of the form or of the spec
 * @param count how many columns a row has
 */
record Columns(List<Column> known, int count) {
    /** Columns, or why the table is refused as a whole. */
    record Bound(Optional<Columns> columns, Optional<String> refusal) {
        static Bound refused(String why) {
            return new Bound(Optional.empty(), Optional.of(why));
        }
    }

    /**
     * Finds each column's meaning; one that has none refuses the table, unless it is to be ignored.
     *
     * @param table what the table is called in messages
     * @param needed names without which there is no table
     */
    static Bound bind(Row header, String table, Collection<String> names, Set<String> ignored,
            List<String> needed) {
        Optional<String> other = otherText(header, table, names, needed);
        if (other.isPresent()) {
            return Bound.refused(other.get());
        }
        List<Column> known = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int index = 0; index < header.count(); index++) {
            String name = header.cell(index).strip();
            if (ignored.contains(name)) {
                continue;
            }
            if (!seen.add(name)) {
                return Bound.refused("column " + Shown.quoted(name) + " stands twice");
            }
            if (!names.contains(name)) {
                return Bound.refused(unknown(name, names));
            }
            known.add(new Column(name, index));
        }
        Columns columns = new Columns(List.copyOf(known), header.count());
        return needed.stream().filter(name -> !columns.column(name).isThere()).findFirst()
                .map(name -> Bound.refused(missing(table, name)))
                .orElseGet(() -> new Bound(Optional.of(columns), Optional.empty()));
    }

    private static String missing(String table, String name) {
        return table + " has no column `" + name + "`; its first line names the columns";
    }

    /**
     * Why a first row is no header of such a table at all, if so: spreadsheets of some countries part the
     * columns by semicolons, and a text that is no table has no column by any of the names.
     */
    private static Optional<String> otherText(Row header, String table, Collection<String> names,
            List<String> needed) {
        Optional<String> sign = isParted(header, ";", needed) ? Optional.of("semicolons")
                : isParted(header, "\t", needed) ? Optional.of("tabs") : Optional.empty();
        if (sign.isPresent()) {
            return Optional.of("the columns of " + table + " are parted by " + sign.get()
                    + "; save it with commas instead");
        }
        for (int index = 0; index < header.count(); index++) {
            String name = header.cell(index).strip();
            if (names.contains(name) || Suggest.closest(name, names).isPresent()) {
                return Optional.empty();
            }
        }
        return needed.stream().findFirst().map(name -> missing(table, name));
    }

    private static boolean isParted(Row header, String sign, List<String> needed) {
        return header.count() == 1 && header.cell(0).contains(sign)
                && List.of(header.cell(0).split(sign)).containsAll(needed);
    }

    private static String unknown(String name, Collection<String> names) {
        String guess = Suggest.closest(name, names)
                .map(word -> "did you mean " + Shown.quoted(word) + "? or ").orElse("");
        return "column " + Shown.quoted(name) + " is neither of the form nor a name of the spec; "
                + guess + "leave it out of account with `--ignore \"" + Shown.text(name) + "\"`";
    }

    /** The column of that name; one that is nowhere if there is none. */
    Column column(String name) {
        return known.stream().filter(column -> column.name().equals(name)).findFirst()
                .orElse(new Column(name, Column.NOWHERE));
    }

    /** The columns of those names that are there, in the order of the table. */
    List<Column> among(Collection<String> names) {
        return known.stream().filter(column -> names.contains(column.name())).toList();
    }

    /** Why a row cannot be told apart into cells, if so. */
    Optional<String> trouble(Row row) {
        if (row.count() != count) {
            String fields = row.count() == 1 ? " field" : " fields";
            return Optional.of("the row has " + row.count() + fields + ", the header " + count);
        }
        return row.isMisquoted() ? Optional.of("a field with a quote in it stands in quotes, with that quote"
                + " written twice") : Optional.empty();
    }

    /** Why a row is nobody's, if so: spaces count in CSV, and nobody means them in a name. */
    Optional<String> nobody(Column trainee, Row row) {
        String name = trainee.raw(row);
        if (name.isBlank()) {
            return Optional.of("the row names no trainee");
        }
        return name.equals(name.strip()) ? Optional.empty()
                : Optional.of("the trainee " + Shown.quoted(name) + " has a space at an end");
    }
}
