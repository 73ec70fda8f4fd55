package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rungwright.journal.Crew;
import rungwright.journal.NamedStore;
import rungwright.journal.Sheet;

class SheetPageTest {
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9]+)([^>]*)>");
    private static final Set<String> EMPTY = Set.of("meta");

    private final String page = SheetPage.of(Crew.sheet());

    private static List<MatchResult> tags(String page) {
        Matcher matcher = TAG.matcher(page.replaceFirst("(?s)<style>.*?</style>", ""));
        return matcher.results().toList();
    }

    /** The names of all tags, each closed in its turn. */
    private static Set<String> elements(String page) {
        Deque<String> open = new ArrayDeque<>();
        Set<String> names = new TreeSet<>();
        for (MatchResult tag : tags(page)) {
            names.add(tag.group(2));
            if (!tag.group(1).isEmpty()) {
                assertEquals(open.pop(), tag.group(2), () -> "in " + tag.group() + " at " + tag.start());
            } else if (!EMPTY.contains(tag.group(2))) {
                open.push(tag.group(2));
            }
        }
        assertTrue(open.isEmpty(), open::toString);
        return names;
    }

    @Test
    void everyTraineeIsThereUnderTheirGroupWithWhatTheCoachNeeds() {
        assertTrue(page.contains("<h2 id=\"stopped\">Stopped, waiting for clearance: 1</h2>"));
        for (String name : Crew.stores().keySet()) {
            assertTrue(page.contains("<th scope=\"row\" role=\"rowheader\" class=\"name\"><bdi>" + name
                    + "</bdi></th>"), name);
        }
        for (String words : List.of("<b>Stopped since Fri 2026-02-27:</b> stop, and seek medical help",
                "<b>After 19 days away:</b> from assisted dip, rung 10 kg to assisted dip, rung 25 kg",
                "<b>Stalled:</b> 7 sessions without an advance", "<b>Next due:</b> Thu 2026-03-05",
                "<b>Moved by the coach:</b> on Sun 2026-03-01 by Ida, not by the program: Was fresh",
                "<b>Damaged:</b> line 2: its check does not fit",
                "<b>Another program:</b> its entries are of `First rope climb`")) {
            assertTrue(page.contains(words), words);
        }
        Crew.program().outline().cautions().forEach(each -> assertTrue(page.contains(each), each));
    }

    @Test
    void thePageIsWellFormedAndItsHeadingsSkipNoLevel() {
        elements(page);
        int level = 0;
        for (MatchResult tag : tags(page)) {
            if (tag.group(1).isEmpty() && tag.group(2).matches("h[1-6]")) {
                int next = tag.group(2).charAt(1) - '0';
                assertTrue(next <= level + 1, page.substring(tag.start()));
                level = next;
            }
        }
        assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
        assertEquals(count("<table "), count("<caption>"));
        assertEquals(count("<section "), count("aria-labelledby=\""));
    }

    private int count(String part) {
        return page.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void everyRowHasACellForEveryColumnOfItsTable() {
        for (String table : page.split("<table ")) {
            String[] rows = table.split("<tr ");
            long columns = cells(rows[rows.length > 1 ? 1 : 0]);
            for (int row = 2; row < rows.length; row++) {
                assertEquals(columns, cells(rows[row].split("</tr>")[0]), rows[row]);
            }
        }
    }

    private static long cells(String row) {
        return Pattern.compile("<t[hd] ").matcher(row).results().count();
    }

    @Test
    void nothingIsFetchedAndNothingRuns() throws NoSuchAlgorithmException {
        assertEquals(Set.of("a", "b", "bdi", "body", "caption", "div", "h1", "h2", "h3", "head", "header",
                "html", "li", "main", "meta", "nav", "p", "section", "table", "tbody", "td", "th", "thead",
                "time", "title", "tr", "ul"), elements(page));
        assertFalse(page.matches("(?s).*(https?:|//|url\\(|@import|src=|style=|\\son[a-z]+=).*"));
        String style = page.replaceFirst("(?s).*<style>(.*?)</style>.*", "$1");
        String digest = Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256")
                .digest(style.getBytes(StandardCharsets.UTF_8)));
        assertTrue(page.contains("content=\"default-src 'none'; style-src 'sha256-" + digest
                + "'; base-uri 'none'; form-action 'none'\""));
    }

    @Test
    void hostileNamesReasonsAndSpecsAreOnlyText() {
        String evil = "</title></style><script>alert('1')</script><img src=x onerror=\"a\">&amp;";
        String spec = Crew.text().replace("name: Pain or dizziness", "name: '<b onclick=x>pain'")
                .replace("Step up to the bars", "<script>up</script> to the bars");
        List<NamedStore> journals = new ArrayList<>();
        journals.add(new NamedStore(evil, Crew.member().session("2026-02-27", "5", "7").store()));
        journals.add(new NamedStore("\u202eGoran", Crew.member().move("2026-03-01", "stage free dip", evil)
                .store()));
        String hostile = SheetPage.of(Sheet.of(Crew.program(spec), Crew.DAY, 6, journals));
        assertTrue(elements(page).containsAll(elements(hostile)), hostile);
        assertTrue(hostile.contains("&lt;/title&gt;&lt;/style&gt;&lt;script&gt;alert(&#39;1&#39;)"), hostile);
        assertTrue(hostile.contains("program: " + Html.escaped(evil)), hostile);
        assertTrue(hostile.contains("<b>&lt;b onclick=x&gt;pain:</b>"), hostile);
        assertTrue(hostile.contains("&lt;script&gt;up&lt;/script&gt; to the bars"), hostile);
        assertTrue(hostile.contains("\\u202eGoran"), hostile);
    }

    @Test
    void anEmptyClassIsAPageWithItsCautions() {
        String empty = SheetPage.of(Sheet.of(Crew.program(), Crew.DAY, 6, List.of()));
        elements(empty);
        assertTrue(empty.contains("<p class=\"summary\">no trainees</p>"));
        assertTrue(empty.contains("<h2 id=\"cautions\">Cautions</h2>"));
    }
}
