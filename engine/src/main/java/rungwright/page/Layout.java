package rungwright.page;

/**
 * How a picture is laid out, in points.
 *
 * @param name tells its parts from those of another picture on the same page
 * @param box how wide every panel is
 * @param small the size of small letters
 * @param large the size of names
 * @param gap from one panel to the next
 * @param margin around everything
 * @param first from a panel to the nearest lane beside it
 * @param lane from one lane to the next, where there is room
 * @param widest how wide all of it should be; lanes move closer together for it
 * @param told whether the panels tell what is done and every rule; a page tells that elsewhere
 */
record Layout(String name, int box, int small, int large, int gap, int margin, int first, int lane,
        int widest, boolean told) {
    /** A picture that stands alone. */
    static final Layout WHOLE = new Layout("whole", 520, 12, 16, 46, 24, 16, 16, Integer.MAX_VALUE,
            true);
    /** A picture at a glance for a desk and for paper. */
    static final Layout DESK = new Layout("desk", 500, 13, 15, 24, 2, 16, 14, 680, false);
    /** A picture at a glance for a phone, in the same type. */
    static final Layout PHONE = new Layout("phone", 244, 13, 15, 30, 2, 14, 10, 326, false);

    private static final int CLOSEST = 4;

    /** The letters of names, or of all else. */
    Letters letters(boolean name) {
        return new Letters(name ? large : small, name);
    }

    /** How wide a line in a panel can be. */
    int room() {
        return box - 2 * Panel.PADDING;
    }

    /** How far the lanes on both sides lie apart. */
    int apart(int lanes) {
        int room = widest - box - 2 * margin - 2 * first;
        return Math.max(CLOSEST, Math.min(lane, room / Math.max(1, lanes)));
    }

    /** The mark by which ways find their tips. */
    String tip() {
        return "tip-" + name;
    }
}
