package rungwright.page;

import java.util.ArrayList;
import java.util.List;

/** What is drawn, piece by piece, each with the heights between which it lies. */
final class Drawing {
    private final List<Piece> pieces = new ArrayList<>();

    private record Piece(int top, int bottom, String svg) {
    }

    /** Adds a piece that lies between two heights, given in either order. */
    void add(int from, int to, String svg) {
        pieces.add(new Piece(Math.min(from, to), Math.max(from, to), svg));
    }

    /** All of it. */
    String all() {
        return between(Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    /** What can be seen between two heights. */
    String between(int top, int bottom) {
        StringBuilder svg = new StringBuilder();
        pieces.stream().filter(piece -> piece.top() < bottom && piece.bottom() > top)
                .forEach(piece -> svg.append(piece.svg()));
        return svg.toString();
    }
}
