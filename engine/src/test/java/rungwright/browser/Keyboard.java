package rungwright.browser;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.Map;

/** Somebody at a page who has a keyboard and nothing else. */
final class Keyboard {
    private static final int MOST_STOPS = 120;
    // What the one in focus is called: its label, else what stands on it.
    private static final String IN_FOCUS = "(() => { const e = document.activeElement; "
            + "return (e.labels && e.labels.length ? e.labels[0].textContent : e.textContent) || ''; })()";

    private final Browser browser;

    Keyboard(Browser browser) {
        this.browser = browser;
    }

    /** Presses Tab until a field or button is reached whose name begins so. */
    Keyboard to(String name) {
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            press("Tab", 9, "");
            boolean isButton = browser.holds("['BUTTON', 'INPUT', 'SELECT', 'SUMMARY', 'A']"
                    + ".includes(document.activeElement.tagName)");
            if (isButton && browser.text(IN_FOCUS).startsWith(name)) {
                return this;
            }
        }
        return fail("Tab never comes to: " + name);
    }

    /** Types into what is in focus. */
    Keyboard type(String text) {
        text.chars().forEach(letter -> press(Character.toString(letter), 0, Character.toString(letter)));
        return this;
    }

    /** Types over what stands in a field. */
    Keyboard over(String text) {
        browser.send("Input.dispatchKeyEvent", Map.of("type", "keyDown", "key", "a", "code", "KeyA",
                "windowsVirtualKeyCode", 65, "modifiers", 2, "commands", java.util.List.of("selectAll")));
        return type(text);
    }

    /** A day, in the order of the browser's date fields. */
    Keyboard date(String day) {
        String[] parts = day.split("-");
        boolean monthFirst = browser.text("new Intl.DateTimeFormat().formatToParts()[0].type")
                .equals("month");
        return type((monthFirst ? parts[1] + parts[2] : parts[2] + parts[1]) + parts[0]);
    }

    /** Presses Enter. */
    Keyboard enter() {
        return press("Enter", 13, "\r");
    }

    private Keyboard press(String key, int code, String text) {
        browser.send("Input.dispatchKeyEvent", Map.of("type", text.isEmpty() ? "rawKeyDown" : "keyDown",
                "key",
                key, "windowsVirtualKeyCode", code, "text", text));
        browser.send("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", key, "windowsVirtualKeyCode",
                code));
        return this;
    }
}
