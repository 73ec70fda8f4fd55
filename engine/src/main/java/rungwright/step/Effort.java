package rungwright.step;

/** How much a search may still look at. */
final class Effort {
    private long left;

    Effort(long looks) {
        this.left = looks;
    }

    /** Pays for some looks; false once they are not to be had. */
    boolean pay(long looks) {
        left = Math.max(-1, left - looks);
        return left >= 0;
    }

    /** Whether some looks were not to be had. */
    boolean isSpent() {
        return left < 0;
    }

    /** A part of what is left, spent with it and on its own. */
    Effort part(long looks) {
        long share = Math.min(looks, Math.max(0, left));
        left -= share;
        return new Effort(share);
    }

    /** Takes back what a part has left. */
    void takeBack(Effort part) {
        left += Math.max(0, part.left);
    }
}
