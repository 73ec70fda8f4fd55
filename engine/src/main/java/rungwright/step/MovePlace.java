package rungwright.step;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Amount;
import rungwright.program.Destination;
import rungwright.program.Destinations;
import rungwright.program.RungChoice;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.program.Target;

/**
 * Reads where a coach moves a trainee: {@code stage assisted dip on rung 40 kg}, {@code assisted dip / 2},
 * {@code goal}. Names are matched whole, the longest stage name first.
 */
final class MovePlace {
    private static final String STAGE = "stage ";
    private static final List<String> AFTER_A_NAME = List.of(" on ", " where ", " / ");

    private final List<Stage> stages;
    private final Destinations destinations;
    private final Standing at;
    private final Map<String, String> left;

    MovePlace(List<Stage> stages, Destinations destinations, State state) {
        this.stages = stages;
        this.destinations = destinations;
        this.at = state.at();
        this.left = state.left();
    }

    Destination read(String text) throws Refused {
        String tidy = text.strip().replaceAll("\\s+", " ");
        Optional<Destination> found = switch (tidy) {
            case "goal" -> Optional.of(Destination.GOAL);
            case "start" -> destinations.start(left);
            default -> place(tidy);
        };
        return found.orElseThrow(() -> Refusals.noSuchPlace(text));
    }

    private Optional<Destination> place(String text) {
        Optional<Destination> named = text.startsWith(STAGE)
                ? inStage(text.substring(STAGE.length()))
                : Optional.empty();
        return named.or(() -> inStage(text));
    }

    private Optional<Destination> inStage(String text) {
        Optional<Stage> best = Optional.empty();
        for (Stage stage : stages) {
            boolean longer = best.filter(other -> other.name().length() >= stage.name().length()).isEmpty();
            if (longer && begins(text, stage.name())) {
                best = Optional.of(stage);
            }
        }
        return best.flatMap(stage -> onRung(stage, text.substring(stage.name().length()).strip()));
    }

    private static boolean begins(String text, String name) {
        return text.equals(name) || AFTER_A_NAME.stream()
                .anyMatch(word -> text.startsWith(name + word));
    }

    private Optional<Destination> onRung(Stage stage, String words) {
        return switch (words) {
            case "" -> choose(stage, new RungChoice.Bottom());
            case "on the top rung" -> choose(stage, new RungChoice.Top());
            case "on the first single rung" -> choose(stage, new RungChoice.FirstSingle());
            case "where they left it" -> choose(stage, new RungChoice.WhereTheyLeftIt());
            default -> named(stage, words);
        };
    }

    private Optional<Destination> choose(Stage stage, RungChoice rung) {
        return destinations.of(new Target.AtStage(stage.number(), rung), at, left);
    }

    private Optional<Destination> named(Stage stage, String words) {
        for (String before : List.of("on rung ", "/ ")) {
            if (words.startsWith(before)) {
                String name = words.substring(before.length());
                boolean byNumber = before.equals("/ ");
                return rung(stage, name, byNumber).map(rung -> new Destination.At(Standing.on(stage, rung)));
            }
        }
        return Optional.empty();
    }

    private Optional<Rung> rung(Stage stage, String name, boolean byNumber) {
        List<Rung> rungs = destinations.rungs(stage.number());
        return rungs.stream().filter(rung -> rung.name().equals(name)).findFirst()
                .or(() -> rungs.stream().filter(rung -> isSameAmount(rung.name(), name)).findFirst())
                .or(() -> rungs.stream().filter(rung -> byNumber)
                        .filter(rung -> Integer.toString(rung.number()).equals(name)).findFirst());
    }

    /** Whether both are the same amount of the same thing: {@code 40.0 kg} and {@code 40 kg}. */
    private static boolean isSameAmount(String rung, String name) {
        Optional<Amount> one = Amount.read(rung);
        Optional<Amount> other = Amount.read(name);
        return one.isPresent() && other.isPresent() && one.get().base().equals(other.get().base())
                && one.get().unit().dimension().equals(other.get().unit().dimension());
    }
}
