package rungwright.verify;

import java.util.List;
import java.util.Optional;

/**
 * What is claimed of a spec: for each stage and section which rule decides where, box by box.
 *
 * @param parts one for each stage, named {@code stage X}, then {@code after a break} and {@code place}
 */
public record Certificate(String program, String version, List<Part> parts) {
    /** Copies the parts. */
    public Certificate {
        parts = List.copyOf(parts);
    }

    /** One stage or section: the axes that its rules read, and boxes over them that leave nothing out. */
    public record Part(String name, List<Side> axes, List<Block> boxes) {
        /** Copies the lists. */
        public Part {
            axes = List.copyOf(axes);
            boxes = List.copyOf(boxes);
        }
    }

    /**
     * An axis: {@code count} positions from 0, the first of which is {@code least} on an axis that counts.
     *
     * @param of the name that is asked about; with {@code take} and {@code against} it tells axes apart
     * @param take which set speaks; empty where none does
     * @param against the share that it is compared with, {@code 75 % of body mass}, or empty
     * @param cuts on an axis without a grid its edges in base units, rising: {@code below 30}
     */
    public record Side(String of, String take, String against, long least, long count, List<String> cuts) {
        /** Copies the cuts. */
        public Side {
            cuts = List.copyOf(cuts);
        }
    }

    /** A box, first and last position on each axis, and who decides there; nobody where no session can be. */
    public record Block(Optional<Decider> rule, List<Run> box) {
        /** Copies the runs. */
        public Block {
            box = List.copyOf(box);
        }
    }

    /** A rule by its name and by where it begins in the text, from 1. */
    public record Decider(String name, int line, int column) {
    }

    /** Positions from {@code first} to {@code last}, both included. */
    public record Run(long first, long last) {
    }
}
