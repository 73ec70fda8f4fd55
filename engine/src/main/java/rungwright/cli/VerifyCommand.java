package rungwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rungwright.json.BadJsonException;
import rungwright.json.CertificateJson;
import rungwright.text.UsageText;
import rungwright.text.VerifyText;
import rungwright.verify.Certificate;
import rungwright.verify.Verifier;
import rungwright.yaml.Reading;
import rungwright.yaml.SpecReader;

/** {@code verify SPEC CERTIFICATE}: confirms a certificate by a second path. */
@Command(
        name = "verify",
        header = "Confirm the proof of a spec by a second, smaller path.",
        description = {
            "Reads the criteria of the spec anew and compares them with the certificate that",
            "`check --certificate` wrote, box by box. What cannot be confirmed is said as",
            "\"not verified: ...\"; what is not looked at stands in the certificate as \"taken over\".",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "First the proof writes the certificate:",
            "  rungwright check --certificate certificate.json program.yaml",
            "",
            "For example:",
            "  rungwright verify program.yaml certificate.json",
            "",
            "Exit code 0 where all of it is confirmed, 1 where something is not, 2 where a file",
            "cannot be read."
        })
final class VerifyCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String file = "";

    @Parameters(index = "1", paramLabel = "CERTIFICATE", description = "The certificate's file.")
    private String certificate = "";

    VerifyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Reading reading = SpecReader.readBytes(new Input(file, console).bytes());
        Certificate read = certificate();
        List<String> doubts = reading.spec()
                .map(spec -> Verifier.doubts(spec, read)).orElse(List.of(VerifyText.unreadableSpec()));
        doubts.stream().map(VerifyText::doubt).forEach(console.out()::println);
        if (doubts.isEmpty()) {
            console.out().println(VerifyText.verified(file, read));
        }
        return doubts.isEmpty() ? Exit.FINE : Exit.TROUBLE;
    }

    private Certificate certificate() {
        try (InputStream stream = new Input(certificate, console).open()) {
            return CertificateJson.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new CannotReadException(UsageText.unreadable(certificate));
        } catch (BadJsonException e) {
            throw new CannotReadException(UsageText.misread(certificate, e.getMessage()));
        }
    }
}
