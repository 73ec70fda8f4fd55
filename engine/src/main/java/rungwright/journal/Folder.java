package rungwright.journal;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The journals of a class: the files of a folder that end in {@code .jsonl}, each of the trainee whose name
 * it has. {@code crew/Alva.jsonl} is the journal of {@code Alva}.
 *
 * @param journals in the order of the names
 * @param others the names of all else in the folder, in order; also of hidden files
 */
public record Folder(List<NamedStore> journals, List<String> others) {
    private static final String ENDING = ".jsonl";

    /** Copies both. */
    public Folder {
        journals = List.copyOf(journals);
        others = List.copyOf(others);
    }

    /** What is in a folder now; no journal is opened yet. */
    public static Folder read(Path folder, EntryForm form) throws IOException {
        List<NamedStore> journals = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (Path file : files(folder)) {
            String name = name(file);
            if (isJournal(name)) {
                String trainee = name.substring(0, name.length() - ENDING.length());
                journals.add(new NamedStore(trainee, FileStore.at(file, form)));
            } else {
                others.add(name);
            }
        }
        return new Folder(journals, others);
    }

    private static List<Path> files(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            stream.forEach(files::add);
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        files.sort(Comparator.comparing((Path file) -> name(file).toLowerCase(Locale.ROOT))
                .thenComparing(Folder::name));
        return files;
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    /** Some systems keep a hidden file of their own beside each file, {@code ._Alva.jsonl}. */
    private static boolean isJournal(String name) {
        return name.endsWith(ENDING) && !name.startsWith(".");
    }
}
