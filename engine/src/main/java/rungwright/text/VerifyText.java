package rungwright.text;

import rungwright.finding.Shown;
import rungwright.verify.Certificate;

/** What came of confirming a certificate, in words. */
public final class VerifyText {
    private VerifyText() {
    }

    /** All of it confirmed: how many boxes in how many stages and sections. */
    public static String verified(String file, Certificate certificate) {
        int boxes = certificate.parts().stream().mapToInt(part -> part.boxes().size()).sum();
        long empty = certificate.parts().stream().flatMap(part -> part.boxes().stream())
                .filter(box -> box.rule().isEmpty()).count();
        return Shown.whole(file) + ": verified: " + Count.of(certificate.parts().size(), "stage or section",
                "stages and sections") + ", " + Count.of(boxes, "box", "boxes") + ", of which " + empty
                + " can hold nobody";
    }

    /** Something that was not confirmed. */
    public static String doubt(String what) {
        return "not verified: " + Shown.whole(what);
    }

    /** A spec that is not whole, so that nothing of it can be confirmed. */
    public static String unreadableSpec() {
        return "the spec cannot be read; `check` says why";
    }

    /** A spec that is not proven, of which there is no certificate. */
    public static String notProven() {
        return "no certificate was written: the spec is not proven";
    }

    /** A certificate that would have too many boxes. */
    public static String tooLarge(int most) {
        return "no certificate was written: some stage takes more than " + most + " boxes";
    }
}
