package rungwright.text;

/** Numbers of things: {@code 1 error}, {@code 3 errors}, {@code no stages}. */
final class Count {
    private Count() {
    }

    /** A number with its word, which takes an s where there is not one of it. */
    static String of(long number, String word) {
        return (number == 0 ? "no" : Long.toString(number)) + " " + word + (number == 1 ? "" : "s");
    }
}
