package rungwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.page.DotPicture;
import rungwright.page.MermaidPicture;
import rungwright.page.SvgPicture;
import rungwright.page.Trail;
import rungwright.page.Trails;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.Naming;
import rungwright.text.UsageText;

/** {@code draw SPEC}: the stages as a picture. */
@Command(
        name = "draw",
        header = "Draw a program: its stages, rungs, and the ways between them.",
        description = {
            "Writes a picture of the program as SVG, which every browser shows and prints, or as text for",
            "programs that lay pictures out themselves. A spec that is not proven yet is drawn too, with its",
            "findings as notes.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright draw program.yaml -o picture.svg",
            "  rungwright draw program.yaml --path crew/alva.jsonl -o alva.svg   her way so far",
            "  rungwright draw program.yaml --path gap -o hole.svg   the first gap, on whom",
            "  rungwright draw program.yaml --format mermaid",
            "",
            "Exit code 0 where the picture is drawn, 1 where there is no stage to draw or nobody to show, 2",
            "where a file cannot be used."
        })
final class DrawCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String file = "";

    @Option(names = "--format", paramLabel = "svg|mermaid|dot", converter = Drawn.Reader.class,
            defaultValue = "svg", description = "The form of the picture: svg (the usual), mermaid or dot.")
    private Drawn form = Drawn.SVG;

    @Option(names = "--path", paramLabel = "JOURNAL|FINDING", description =
            "Show a trainee's way so far, from their journal, or the witness of the first finding of a code, "
                    + "such as gap. Only for svg.")
    private Optional<String> path = Optional.empty();

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final OutFile output = new OutFile();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    DrawCommand(Console console) {
        this.console = console;
    }

    /** The forms of a picture. */
    private enum Drawn {
        SVG, MERMAID, DOT;

        /** Reads {@code --format}. */
        static final class Reader implements ITypeConverter<Drawn> {
            @Override
            public Drawn convert(String word) {
                return Arrays.stream(values()).filter(each -> each.name().toLowerCase(Locale.ROOT)
                        .equals(word)).findFirst().orElseThrow(() -> new TypeConversionException(
                        Shown.quoted(word) + " is none of svg, mermaid, dot"));
            }
        }
    }

    @Override
    public Integer call() throws IOException {
        if (path.isPresent() && form != Drawn.SVG) {
            throw new CannotReadException(UsageText.pathOnlyInSvg());
        }
        Examined examined = Examined.of(file, new Input(file, console).bytes(), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
        }
        Optional<Outline> outline = examined.checked().outline()
                .filter(each -> !each.stages().isEmpty());
        if (outline.isEmpty()) {
            console.err().println(UsageText.nothingToDraw(file));
            return Exit.TROUBLE;
        }
        Optional<Trail> trail = path.flatMap(name -> trail(examined, outline.get(), name));
        if (path.isPresent() && trail.isEmpty()) {
            console.err().println(UsageText.noPath(path.get()));
            return Exit.TROUBLE;
        }
        return write(picture(outline.get(), trail));
    }

    private Optional<String> picture(Outline outline, Optional<Trail> trail) {
        return switch (form) {
            case SVG -> Optional.of(SvgPicture.of(outline, trail, spoken.language()));
            case MERMAID -> MermaidPicture.of(outline, spoken.language());
            case DOT -> Optional.of(DotPicture.of(outline, spoken.language()));
        };
    }

    private int write(Optional<String> picture) throws IOException {
        if (picture.isEmpty()) {
            console.err().println(UsageText.tooLargeForMermaid());
            return Exit.TROUBLE;
        }
        OutFile.Writing writing = out -> out.write(picture.get().getBytes(StandardCharsets.UTF_8));
        if (path.isPresent()) {
            output.write(console, writing);
        } else {
            output.publish(console, writing);
        }
        return Exit.FINE;
    }

    private Optional<Trail> trail(Examined examined, Outline outline, String name) {
        boolean isCode = Arrays.stream(Code.values()).anyMatch(code -> code.word().equals(name));
        if (isCode && !exists(name)) {
            return examined.checked().findings().stream()
                    .filter(finding -> finding.code().word().equals(name))
                    .flatMap(finding -> Trails.of(outline, finding, spoken.language())
                            .stream()).findFirst();
        }
        return examined.checked().program().map(program -> journal(program, name));
    }

    private Trail journal(Program program, String name) {
        if (!exists(name)) {
            throw new CannotReadException(UsageText.noPath(name));
        }
        OneTrainee one = OneTrainee.of(new Naming(file, name), program);
        one.warn(console.err()::println, spoken.language(), shade.colours(console));
        return Trails.of(one.naming().trainee(), one.fold(), spoken.language());
    }

    private static boolean exists(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
