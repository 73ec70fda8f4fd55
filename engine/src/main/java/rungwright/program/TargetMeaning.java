package rungwright.program;

/** A target as canonical text, facts and assessments by their names. */
final class TargetMeaning implements Target.Cases<String>, RungChoice.Cases<String>, Limit.Cases<String> {
    private static final TargetMeaning CASES = new TargetMeaning();

    private TargetMeaning() {
    }

    static String of(Target target) {
        return target.match(CASES);
    }

    static String of(Limit limit) {
        return limit.match(CASES);
    }

    @Override
    public String byRungs(Target.ByRungs target) {
        return target.rungs() + (target.up() ? " up" : " down");
    }

    @Override
    public String samePlace() {
        return "same place";
    }

    @Override
    public String start() {
        return "start";
    }

    @Override
    public String goal() {
        return "goal";
    }

    @Override
    public String atStage(Target.AtStage target) {
        return "stage " + target.stage() + " " + target.rung().match(this);
    }

    @Override
    public String bottom() {
        return "bottom";
    }

    @Override
    public String top() {
        return "top";
    }

    @Override
    public String named(String name) {
        return "rung " + name;
    }

    @Override
    public String firstSingle() {
        return "first single";
    }

    @Override
    public String upTo(Limit limit) {
        return "up to " + of(limit);
    }

    @Override
    public String whereTheyLeftIt() {
        return "left";
    }

    @Override
    public String fixed(Limit.Fixed limit) {
        return limit.amount().toString();
    }

    @Override
    public String share(Limit.Share limit) {
        return limit.factor() + " of <fact " + limit.fact().name() + ">";
    }

    @Override
    public String assessed(Limit.Assessed limit) {
        return "<assessment " + limit.assessment().name() + ">";
    }
}
