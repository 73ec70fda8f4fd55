package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.text.HandoutWords;
import rungwright.text.Language;

/** A handout as text: what it allows the browser, and where its cautions stand. */
class HandoutPolicyTest {
    private static final Pattern POLICY =
            Pattern.compile("<meta http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\">");

    private static Program program() throws IOException {
        return Checked.read(Files.readString(Path.of("../spec-examples/first-bar-dip/program.yaml")))
                .program()
                .orElseThrow();
    }

    @Test
    void theBrowserMayRunAndFetchNothingButWhatStandsInThePage() throws IOException,
            NoSuchAlgorithmException {
        String page = HandoutPage.of(program(), HandoutWords.of(Language.ENGLISH));
        List<MatchResult> policies = POLICY.matcher(page).results().toList();
        assertEquals(1, policies.size(), "policies in the page");
        assertTrue(policies.get(0).end() < page.indexOf("<style>"),
                "the policy stands before what it is about");
        String policy = policies.get(0).group(1);
        assertTrue(policy.startsWith("default-src 'none'; "), policy);
        assertTrue(policy.endsWith("; base-uri 'none'; form-action 'none'"), policy);
        for (MatchResult block : Pattern.compile("(?s)<(script|style)>(.*?)</\\1>").matcher(page).results()
                .toList()) {
            String hash = "'sha256-" + Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256")
                    .digest(block.group(2).getBytes(StandardCharsets.UTF_8))) + "'";
            assertTrue(policy.contains(hash), () -> block.group(1) + " is not in " + policy);
        }
        assertTrue(!policy.contains("unsafe") && !policy.contains("http"), policy);
    }

    @Test
    void cautionsComeBeforeThePictureAndTheStages() throws IOException {
        Program program = program();
        for (Language language : Language.values()) {
            String page = HandoutPage.of(program, HandoutWords.of(language));
            for (String caution : program.outline().cautions()) {
                int at = page.indexOf("<li>" + Html.escaped(caution) + "</li>");
                assertTrue(at > 0 && at < page.indexOf("id=\"picture\""), caution);
            }
        }
    }
}
