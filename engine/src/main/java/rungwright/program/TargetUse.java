package rungwright.program;

import java.util.Optional;

/** Where a target stands in a spec, and which targets may stand there. */
enum TargetUse {
    /** The {@code to} of an advance. */
    ADVANCE,
    /** The {@code to} of a fall back, a stop's {@code once cleared}, the {@code to} after a break. */
    DOWN,
    /** {@code at the bottom} and {@code at the top}. */
    END_RUNG,
    /** The {@code to} of a place rule. */
    PLACE;

    /** What to write instead of a move by rungs that may not stand here. */
    Optional<String> refusal(boolean up) {
        return switch (this) {
            case ADVANCE -> up ? Optional.empty()
                    : Optional.of("an advance by rungs goes up: write `1 rung up`");
            case DOWN -> up ? Optional.of("only an advance goes up by rungs: write `1 rung down`")
                    : Optional.empty();
            case END_RUNG -> Optional.of(
                    "there is no rung beyond the end rung: write `same place`, `stage …`, `start` or `goal`");
            case PLACE -> Optional.of(PLACE_FORMS);
        };
    }

    private static final String PLACE_FORMS = "write `stage …` or `goal`";

    /** What to write instead of {@code same place} or {@code start}, where they may not stand here. */
    Optional<String> refusalOfWords() {
        return this == PLACE ? Optional.of(PLACE_FORMS) : Optional.empty();
    }
}
