package rungwright.browser;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The line to one page of a browser: calls and their answers, and what the page reports by itself. */
final class Wire implements WebSocket.Listener {
    private static final JsonMapper JSON = JsonMapper.shared();

    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final List<String> events = new CopyOnWriteArrayList<>();
    private final StringBuilder message = new StringBuilder();
    private final AtomicInteger calls = new AtomicInteger();
    private WebSocket socket;

    private Wire() {
    }

    /** To the first page of the browser at that port of this machine. */
    static Wire to(String port) throws IOException, InterruptedException {
        HttpClient http = HttpClient.newHttpClient();
        JsonNode pages = JSON.readTree(http.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port
                + "/json")).build(), HttpResponse.BodyHandlers.ofString()).body());
        for (JsonNode page : pages) {
            if (page.path("type").asString().equals("page")) {
                Wire wire = new Wire();
                wire.socket = http.newWebSocketBuilder().buildAsync(
                        URI.create(page.path("webSocketDebuggerUrl").asString()), wire).join();
                return wire;
            }
        }
        throw new IOException("the browser has no page");
    }

    /** The answer to a call. */
    JsonNode send(String method, Map<String, ?> parameters) {
        int number = calls.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(number, answer);
        say(number, method, parameters);
        try {
            JsonNode given = answer.get(Browser.PATIENCE, TimeUnit.NANOSECONDS);
            if (given.has("error")) {
                throw new AssertionError(method + ": " + given.get("error"));
            }
            return given.path("result");
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new AssertionError(method + " was not answered", e);
        }
    }

    private synchronized void say(int number, String method, Map<String, ?> parameters) {
        socket.sendText(JSON.writeValueAsString(Map.of("id", number, "method", method, "params",
                parameters)), true).join();
    }

    /** What the page reported: the name of each event and its data. */
    List<String> events() {
        return List.copyOf(events);
    }

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
        message.append(part);
        if (last) {
            JsonNode whole = JSON.readTree(message.toString());
            message.setLength(0);
            if (whole.has("id")) {
                waiting.getOrDefault(whole.get("id").asInt(), new CompletableFuture<>()).complete(whole);
            } else {
                report(whole);
            }
        }
        from.request(1);
        return null;
    }

    /** Keeps what is reported; whatever a page asks in a dialog is answered with yes. */
    private void report(JsonNode event) {
        events.add(event.path("method").asString() + " " + event.path("params"));
        if (event.path("method").asString().equals("Page.javascriptDialogOpening")) {
            CompletableFuture.runAsync(() -> say(calls.incrementAndGet(), "Page.handleJavaScriptDialog",
                    Map.of("accept", true)));
        }
    }
}
