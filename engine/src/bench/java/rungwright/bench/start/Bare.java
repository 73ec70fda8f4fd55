package rungwright.bench.start;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.yaml.snakeyaml.Yaml;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * The least that a command of this make costs: picocli reads the arguments, SnakeYAML the file, and Jackson
 * writes as JSON what stood in it. No rule is read and nothing is proven.
 */
@Command(name = "bare")
public final class Bare implements Callable<Integer> {
    @Parameters(paramLabel = "FILE")
    private File file;

    @Option(names = "--pretty")
    private boolean pretty;

    private Bare() {
    }

    /** Runs it and ends the process. */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Bare()).execute(arguments));
    }

    @Override
    public Integer call() throws IOException {
        Map<String, Object> content = new Yaml().load(Files.readString(Path.of(file.toURI())));
        ObjectMapper mapper = new ObjectMapper();
        System.out.println((pretty ? mapper.writerWithDefaultPrettyPrinter() : mapper.writer())
                .writeValueAsString(content));
        return 0;
    }
}
