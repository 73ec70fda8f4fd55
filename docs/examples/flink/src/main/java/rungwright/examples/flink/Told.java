package rungwright.examples.flink;

/**
 * What a trainee is told.
 *
 * @param decision a short one: {@code advance by Less help at assisted dip / 25 kg}
 * @param json the whole decision as the engine's JSON of form 1; empty where the event could not be read
 */
public record Told(String trainee, String decision, String json) {
    /** As a line: the trainee, a tab, the whole decision or what is wrong with the event. */
    public String line() {
        return trainee + "\t" + (json.isEmpty() ? decision : json);
    }

    /** For a person to read. */
    @Override
    public String toString() {
        return trainee + ": " + decision;
    }
}
