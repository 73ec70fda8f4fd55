package rungwright.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import rungwright.json.CertificateJson;
import rungwright.program.Certifier;
import rungwright.program.Program;
import rungwright.text.UsageText;
import rungwright.text.VerifyText;
import rungwright.verify.Certificate;

/** A file that a certificate is written to. */
record CertificateFile(String name, Console console) {
    private static final int MOST_BOXES = 50_000;

    /**
     * Writes the certificate of a program; false where there is none or it would be too large, as is said.
     */
    boolean write(Optional<Program> program) {
        if (program.isEmpty()) {
            console.err().println(VerifyText.notProven());
            return false;
        }
        Optional<Certificate> certificate = Certifier.of(program.get(), MOST_BOXES);
        if (certificate.isEmpty()) {
            console.err().println(VerifyText.tooLarge(MOST_BOXES));
            return false;
        }
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(name)))) {
            CertificateJson.write(out, certificate.get());
        } catch (IOException | InvalidPathException e) {
            throw new CannotReadException(UsageText.unwritable(name));
        }
        return true;
    }
}
