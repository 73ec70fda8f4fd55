package rungwright.step;

/** Carries a refusal from where it is found to the one place that makes a decision of it. */
final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Refusal refusal;

    Refused(Refusal refusal) {
        super(refusal.message(), null, false, false);
        this.refusal = refusal;
    }

    Refusal refusal() {
        return refusal;
    }
}
