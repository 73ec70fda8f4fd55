package rungwright.journal;

import java.util.Arrays;

/**
 * What was read of a journal's bytes.
 *
 * @param kept how many of the bytes hold its entries
 * @param chain what the next line is to follow
 */
record Scanned(Contents contents, int kept, byte[] bytes, Chain chain) {
    /** The bytes after the last entry. */
    byte[] torn() {
        return Arrays.copyOfRange(bytes, kept, bytes.length);
    }

    /** The bytes that add a line with an object of JSON, and end the line before where nothing did. */
    byte[] addition(String object) {
        byte[] line = chain.line(object);
        boolean isOpen = kept > 0 && bytes[kept - 1] != '\n';
        byte[] addition = new byte[line.length + (isOpen ? 2 : 1)];
        addition[0] = '\n';
        addition[addition.length - 1] = '\n';
        System.arraycopy(line, 0, addition, isOpen ? 1 : 0, line.length);
        return addition;
    }
}
