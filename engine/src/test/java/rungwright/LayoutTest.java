package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The packages form a list, each using only those above it, and the top level holds what it should. */
class LayoutTest {
    private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
    private static final Set<String> TOP_LEVEL = new TreeSet<>(Set.of(
            "README.md", "DEVELOPERS.md", "pom.xml", "engine", "spec-examples", "docs", "LICENSE"));

    @Test
    void everyPackageNamesOnlyThoseAboveItAndItsOwnLibrary() {
        List<Source> shipped = shipped();
        assertFalse(shipped.isEmpty());
        assertNone(shipped.stream().flatMap(s -> LayoutRules.faults(s).stream()).toList());
    }

    @Test
    void theModuleExportsEveryPackageButTheCommandLine() {
        assertNone(LayoutRules.missingExports(shipped()));
    }

    @Test
    void theTopLevelHoldsExactlyWhatItShould() throws IOException, InterruptedException {
        Optional<Set<String>> known = knownToGit();
        Set<String> found = known.isPresent() ? known.get() : inTheFolder();
        assertEquals(TOP_LEVEL, found);
    }

    /** What git tracks or would track; empty where this is no checkout or there is no git. */
    private static Optional<Set<String>> knownToGit() throws IOException, InterruptedException {
        if (!Files.exists(ROOT.resolve(".git"))) {
            return Optional.empty();
        }
        ProcessBuilder builder = new ProcessBuilder("git", "ls-files", "-z", "--cached", "--others",
                "--exclude-standard").directory(ROOT.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD);
        // A hook of git's may be running us, for another checkout.
        builder.environment().keySet().removeIf(name -> name.startsWith("GIT_"));
        Process git;
        try {
            git = builder.start();
        } catch (IOException noGit) {
            return Optional.empty();
        }
        String files = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return git.waitFor() == 0 ? Optional.of(visible(Stream.of(files.split("\0")))) : Optional.empty();
    }

    private static Set<String> inTheFolder() throws IOException {
        try (Stream<Path> entries = Files.list(ROOT)) {
            Set<String> names = visible(entries.map(e -> e.getFileName().toString()));
            names.remove("target");
            return names;
        }
    }

    private static Set<String> visible(Stream<String> files) {
        Set<String> names = new TreeSet<>();
        files.map(f -> f.split("/")[0]).filter(f -> !f.isEmpty() && !f.startsWith(".")).forEach(names::add);
        return names;
    }

    private static List<Source> shipped() {
        return Source.under(ROOT, "engine/src/main/java");
    }

    private static void assertNone(List<String> faults) {
        if (!faults.isEmpty()) {
            fail("\n" + String.join("\n", faults));
        }
    }
}
