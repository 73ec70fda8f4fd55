package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MainTest {
    private final Shell shell = new Shell();

    @Test
    void theVersionIsTheOneThatTheBuildFilledIn() {
        assertEquals(0, shell.run("--version"));
        assertTrue(shell.out().matches("rungwright \\d+\\.\\d+\\.\\d+\\S*\\R"), shell::out);
    }

    @Test
    void helpSaysWhatItIsForAndEndsWell() {
        assertEquals(0, shell.run("--help"));
        assertTrue(shell.out().startsWith("Proves progression specs"), shell::out);
        assertTrue(shell.out().contains("Exit codes: 0 fine"), shell::out);
    }

    @Test
    void noCommandAndAnUnknownOptionAreUsageErrors() {
        assertEquals(2, shell.run());
        assertEquals("rungwright: a command is needed\n`rungwright --help` says more\n", shell.err());
        assertEquals(2, shell.run("--versoin"));
        assertEquals("rungwright: there is no option `--versoin`; did you mean `--version`?\n"
                + "`rungwright --help` says more\n", shell.err());
        assertEquals("", shell.out());
    }
}
