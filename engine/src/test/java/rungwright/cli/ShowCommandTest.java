package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ShowCommandTest {
    private static final String SPEC = """
            program: Plank
            version: 1
            goal: One minute
            measures: { hold: { values: 0 to 120 s } }
            stages:
              plank:
                advance: { when: { hold: at least 60 s } }
                hold: otherwise
            """;

    private final Shell shell = new Shell();

    @Test
    void aProvenSpecIsShown() {
        assertEquals(0, shell.feed(SPEC, "show", "-"), shell::err);
        assertTrue(shell.out().startsWith("Plank, version 1\nGoal: One minute\n"), shell::out);
        assertTrue(shell.out().contains("otherwise, that is hold under 60 s"), shell::out);
        assertEquals("", shell.err());
    }

    @Test
    void aSpecWithAHoleShowsItsFindingsAndNothingElse() {
        assertEquals(1, shell.feed(SPEC.replace("otherwise", "{ when: { hold: under 50 s } }"), "show", "-"));
        assertEquals("", shell.out());
        assertTrue(shell.err().contains("[gap]") && shell.err().contains("not proven"), shell::err);
    }

    @Test
    void jsonHasTheFormThatIsDocumented() {
        assertEquals(0, shell.feed(SPEC, "show", "--format", "json", "-"), shell::err);
        assertEquals("""
                {'form':1,'program':'Plank','version':'1','goal':'One minute','cautions':[],'sources':[],
                'trainee':[],'measures':[{'name':'hold','values':{'from':'0 s','to':'120 s','by':'1 s'},
                'each':'session'}],'worked out':[],'stop':{'left':[],'rows':[]},'after a break':null,
                'every stage':{'left':[],'rows':[]},'assess':[],'place':null,
                'stages':[{'name':'plank','rules':{'left':[],'rows':[
                {'rule':'plank: advance','line':7,'kind':'advance','otherwise':false,
                'when':[[{'name':'hold','is':'at least 60 s'}]],'whole':true,'to':'1 rung up'},
                {'rule':'plank: hold','line':8,'kind':'hold','otherwise':true,
                'when':[[{'name':'hold','is':'under 60 s'}]],'whole':true,'to':'same place'}]}}]}
                """.replace('\'', '"').replace("\n", ""),
                shell.out().replaceAll("\"fingerprint\":\"[0-9a-f]{16}\",", "").replace("\n", ""));
    }

    @Test
    void noFileAndTwoFilesAreNotUnderstood() {
        assertEquals(2, shell.run("show"));
        assertTrue(shell.err().startsWith("rungwright show: missing required parameter: 'SPEC'"), shell::err);
        assertEquals(2, shell.run("show", "a", "b"));
        assertTrue(shell.err().startsWith("rungwright show: `b` is one word too many"), shell::err);
    }
}
