package rungwright.text;

/** Numbers of things: {@code 1 error}, {@code 3 errors}, {@code no stages}. */
final class Count {
    private Count() {
    }

    /** A number with its word, which takes an s where there is not one of it. */
    static String of(long number, String word) {
        return of(number, word, word + "s");
    }

    /** A number with its word, one or many: {@code 1 entry}, {@code 2 entries}. */
    static String of(long number, String one, String many) {
        return (number == 0 ? "no" : Long.toString(number)) + " " + (number == 1 ? one : many);
    }
}
