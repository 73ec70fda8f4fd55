package rungwright.step;

import rungwright.finding.Shown;
import rungwright.program.Program;

/**
 * Which program a state is of.
 *
 * @param fingerprint a code of what decides: equal ones decide alike
 */
public record ProgramId(String name, String version, String fingerprint) {
    /** That of a program. */
    public static ProgramId of(Program program) {
        return new ProgramId(program.outline().name(), program.outline().version(), program.fingerprint());
    }

    /** As people read it: {@code `First bar dip` version `3` (0f3a…)}. */
    public String show() {
        String code = " (" + Shown.text(fingerprint) + ")";
        return Shown.quoted(name) + " version " + Shown.quoted(version) + code;
    }
}
