package rungwright.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A Chromium without a window, at home in a folder of its own, with one page open. */
public final class Browser implements AutoCloseable {
    /** How long the slowest machine may take for one thing; only a browser that hangs takes longer. */
    static final long PATIENCE = TimeUnit.MINUTES.toNanos(15);

    private static final JsonMapper JSON = JsonMapper.shared();

    private final Process process;
    private final Path folder;
    private final Wire wire;

    private Browser(Process process, Path folder, Wire wire) {
        this.process = process;
        this.folder = folder;
        this.wire = wire;
    }

    /** Starts one; the test is skipped where no Chromium is installed. */
    public static Browser open() throws IOException, InterruptedException {
        Optional<Path> program = installed();
        Assumptions.assumeTrue(program.isPresent(),
                "no Chromium is installed, so no page is tried in one (Debian: apt-get install chromium)");
        Path folder = Files.createTempDirectory("browser");
        Process process = start(folder, program.get().toString(), "--headless", "--no-sandbox",
                "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--lang=en-GB",
                "--remote-debugging-port=0", "--user-data-dir=" + folder, "about:blank");
        Path port = folder.resolve("DevToolsActivePort");
        long start = System.nanoTime();
        while (Files.notExists(port) || Files.readAllLines(port).size() < 2) {
            if (System.nanoTime() - start > PATIENCE || !process.isAlive()) {
                process.destroy();
                throw new IOException("the browser did not start");
            }
            Thread.sleep(20);
        }
        Browser browser = new Browser(process, folder, Wire.to(Files.readAllLines(port).get(0)));
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
            browser.send(domain + ".enable", Map.of());
        }
        return browser;
    }

    /** One that runs; where Ubuntu's snap is missing, there is a script of its name that only says so. */
    private static Optional<Path> installed() throws IOException, InterruptedException {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            for (String name : List.of("chromium", "chromium-browser", "google-chrome")) {
                Path program = Path.of(folder, name);
                if (Files.isRegularFile(program) && Files.isExecutable(program) && runs(program)) {
                    return Optional.of(program);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean runs(Path program) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("browser");
        try {
            return start(folder, program.toString(), "--version").waitFor() == 0;
        } finally {
            delete(folder);
        }
    }

    /** Starts a program that keeps in a folder what it else would keep in its user's home. */
    private static Process start(Path folder, String... command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().keySet().removeIf(name -> name.startsWith("XDG_"));
        builder.environment().put("HOME", folder.toString());
        return builder.start();
    }

    /** What a method of the protocol gives back. */
    public JsonNode send(String method, Map<String, ?> parameters) {
        return wire.send(method, parameters);
    }

    /** The value of an expression in the page; a promise is waited for. */
    public JsonNode evaluate(String expression) {
        JsonNode answer = send("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true,
                "awaitPromise", true));
        if (answer.has("exceptionDetails")) {
            throw new AssertionError(expression + "\n" + answer.get("exceptionDetails"));
        }
        return answer.path("result").path("value");
    }

    /** The value of an expression as text. */
    public String text(String expression) {
        return evaluate(expression).asString();
    }

    /** Whether an expression holds. */
    public boolean holds(String expression) {
        return evaluate("!!(" + expression + ")").asBoolean();
    }

    /** A value as an expression that a script reads back as it is, whatever its names. */
    public static String value(String json) {
        return "JSON.parse(" + quoted(json) + ")";
    }

    /** A text as a script writes it. */
    public static String quoted(String text) {
        return JSON.writeValueAsString(text);
    }

    /** Opens a file and waits until it is there. */
    public void visit(Path page) throws InterruptedException {
        String address = page.toUri().toString();
        send("Page.navigate", Map.of("url", address));
        await("location.href === " + quoted(address) + " && document.readyState === 'complete'");
    }

    /** Waits until an expression holds. */
    public void await(String expression) throws InterruptedException {
        await(() -> holds(expression), "never came true: " + expression);
    }

    /** Waits until something has come; else the test fails with a message. */
    static void await(BooleanSupplier come, String message) throws InterruptedException {
        long start = System.nanoTime();
        while (!come.getAsBoolean()) {
            if (System.nanoTime() - start > PATIENCE) {
                throw new AssertionError(message);
            }
            Thread.sleep(10);
        }
    }

    /** What the page threw or its browser complained of, so far. */
    public List<String> complaints() {
        return wire.events().stream().filter(each -> each.startsWith("Runtime.exceptionThrown")
                || each.startsWith("Log.entryAdded")).toList();
    }

    /** Everything that was asked of the network or the disk so far. */
    public List<String> requests() {
        List<String> addresses = new ArrayList<>();
        wire.events().stream().filter(each -> each.startsWith("Network.requestWillBeSent ")).forEach(each ->
                addresses.add(JSON.readTree(each.substring(each.indexOf(' '))).at("/request/url")
                        .asString()));
        return addresses;
    }

    /** Dialogs that opened so far; each was answered with yes. */
    public long dialogs() {
        return wire.events().stream().filter(each -> each.startsWith("Page.javascriptDialogOpening")).count();
    }

    @Override
    public void close() throws IOException {
        List<ProcessHandle> helpers = process.descendants().toList();
        process.destroyForcibly().onExit().join();
        helpers.forEach(ProcessHandle::destroyForcibly);
        delete(folder);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        } catch (UncheckedIOException gone) {
            // A helper that was about to end had begun to tidy up; what is left is in the temp folder.
            return;
        }
    }
}
