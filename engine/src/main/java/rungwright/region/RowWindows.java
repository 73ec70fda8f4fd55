package rungwright.region;

/**
 * What a question asks of one row quantity.
 *
 * @param allowed where every row must lie
 * @param low where some row must lie for the lowest to be low enough; {@link Window#ALL} where any will do
 * @param high where some row must lie for the highest to be high enough
 * @param first where the first row must lie
 * @param last where the last row must lie
 * @param total where the sum of amounts must lie
 */
record RowWindows(Window allowed, Window low, Window high, Window first, Window last, Window total) {

    /** From the windows of the takes. */
    static RowWindows of(Window lowest, Window highest, Window first, Window last, Window total) {
        Window allowed = Window.of(lowest.low(), highest.high());
        Window low = Window.of(Window.ALL.low(), lowest.high());
        Window high = Window.of(highest.low(), Window.ALL.high());
        return new RowWindows(allowed, asked(low, allowed), asked(high, allowed), asked(first, allowed),
                asked(last, allowed), total);
    }

    /** Nothing is asked where all that is allowed will do. */
    private static Window asked(Window window, Window allowed) {
        return window.and(allowed).equals(allowed) ? Window.ALL : window;
    }
}
