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

    @Test
    void aCommandThatIsMisspeltIsSuggested() {
        assertEquals(2, shell.run("chek", "a.yaml"));
        assertEquals("rungwright: there is no command `chek`; did you mean `check`?\n"
                + "`rungwright --help` says more\n", shell.err());
    }

    @Test
    void everyCommandHasHelpWithItsPurposeItsUsageAndAnExample() {
        for (String command : Main.commandNames()) {
            assertEquals(0, shell.run(command, "--help"), command);
            assertTrue(shell.out().contains("\nrungwright " + command + " "), shell::out);
            assertTrue(shell.out().contains("For example:\n  rungwright " + command + " "), shell::out);
            assertTrue(shell.out().contains("Exit code 0 "), shell::out);
            assertEquals("", shell.err());
            String purpose = shell.out().lines().findFirst().orElseThrow();
            assertEquals(0, shell.run("--help"));
            assertTrue(shell.out().replaceAll("\\s+", " ").contains(purpose), () -> purpose + "\n"
                    + shell.out());
        }
    }
}
