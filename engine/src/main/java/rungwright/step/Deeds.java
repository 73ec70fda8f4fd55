package rungwright.step;

/** What is done about each kind of event of a trainee who is enrolled. */
record Deeds(Plan plan, State state) implements Event.Cases<Deed> {
    @Override
    public Deed enrol(Event.Enrol event) {
        return () -> {
            throw Refusals.alreadyEnrolled();
        };
    }

    @Override
    public Deed session(Event.Session event) {
        return () -> new SessionStep(plan, fitted(), event).decide();
    }

    @Override
    public Deed clearance(Event.Clearance event) {
        return () -> new MoveStep(plan, fitted()).decide(event);
    }

    @Override
    public Deed factsChanged(Event.FactsChanged event) {
        return () -> new ChangeStep(plan, fitted()).decide(event);
    }

    @Override
    public Deed move(Event.Move event) {
        return () -> new MoveStep(plan, fitted()).decide(event);
    }

    @Override
    public Deed newVersion(Event.NewVersion event) {
        return () -> new ChangeStep(plan, isOther() ? state : fitted()).decide(event);
    }

    private boolean isOther() {
        return !state.program().fingerprint().equals(plan.id().fingerprint());
    }

    /** The state, known to be one of the plan's, with its trainee read. */
    State fitted() throws Refused {
        if (isOther()) {
            throw Refusals.otherVersion(state.program(), plan.id());
        }
        return Fitting.check(plan, state);
    }
}
