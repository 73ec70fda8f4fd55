package rungwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar, for {@code --version}. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"rungwright " + number()};
    }

    /** The number alone. */
    static String number() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version");
    }
}
