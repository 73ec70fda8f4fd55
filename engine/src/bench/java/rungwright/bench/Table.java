package rungwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The figures of one part, printed as a table that {@code docs/performance.md} can keep as it stands:
 *
 * <pre>{@code
 * Table table = new Table("One step", "what", "ns a step", "times hand-written");
 * table.row("hand-written", Table.number(21.4), Table.ratio(1));
 * table.print();
 * }</pre>
 */
public final class Table {
    private final String title;
    private final List<List<String>> rows = new ArrayList<>();

    /** A table without a row yet. */
    public Table(String title, String... columns) {
        this.title = title;
        rows.add(List.of(columns));
    }

    /** Adds a row, with a cell for each column. */
    public void row(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + rows.get(0).size() + " columns");
        }
        rows.add(List.of(cells));
    }

    /** A figure with about three digits, such as {@code 21.4} or {@code 1,034}. */
    public static String number(double figure) {
        double size = Math.abs(figure);
        String form = size >= 100 ? "%,.0f" : size >= 10 ? "%.1f" : size >= 1 ? "%.2f" : "%.3f";
        return String.format(Locale.ROOT, form, figure);
    }

    /** A ratio to the baseline of the same run, such as {@code 1.14 x}. */
    public static String ratio(double times) {
        return number(times) + " x";
    }

    /** Prints the title, the machine and the table to the standard output. */
    public void print() {
        System.out.println();
        System.out.println("### " + title);
        System.out.println();
        System.out.println(machine());
        System.out.println();
        int[] widths = IntStream.range(0, rows.get(0).size())
                .map(column -> rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0)).toArray();
        System.out.println(line(rows.get(0), widths));
        System.out.println(Arrays.stream(widths).mapToObj("-"::repeat).collect(Collectors.joining(" | ", "| ", " |")));
        rows.stream().skip(1).forEach(row -> System.out.println(line(row, widths)));
    }

    private static String line(List<String> row, int[] widths) {
        return IntStream.range(0, widths.length)
                .mapToObj(column -> row.get(column) + " ".repeat(widths[column] - row.get(column).length()))
                .collect(Collectors.joining(" | ", "| ", " |"));
    }

    /** What the figures were measured on. */
    private static String machine() {
        return "Java " + System.getProperty("java.version") + ", " + System.getProperty("os.arch") + ", "
                + Runtime.getRuntime().availableProcessors() + " processors.";
    }
}
