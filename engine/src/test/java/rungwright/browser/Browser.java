package rungwright.browser;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A Chromium without a window, in a folder of its own, with one page open. */
public final class Browser implements AutoCloseable {
    private static final JsonMapper JSON = JsonMapper.shared();
    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(20);

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
        Process process = new ProcessBuilder(program.get().toString(), "--headless", "--no-sandbox",
                "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--lang=en-GB",
                "--remote-debugging-port=0", "--user-data-dir=" + folder, "about:blank")
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
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

    private static Optional<Path> installed() {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome")
                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable).findFirst();
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
        long start = System.nanoTime();
        while (!holds(expression)) {
            if (System.nanoTime() - start > PATIENCE) {
                throw new AssertionError("never came true: " + expression);
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
        wire.send("Browser.close", Map.of());
        process.onExit().completeOnTimeout(process, 5, TimeUnit.SECONDS).join();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly().onExit().join();
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }
}
