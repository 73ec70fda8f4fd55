package rungwright.journal;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import rungwright.json.JournalJson;
import rungwright.program.Standing;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.ProgramId;
import rungwright.step.Status;

/**
 * A process that writes a journal as fast as it can, and prints the number of each entry that is recorded.
 */
final class Scribe {
    /** More than any disk takes. */
    static final Duration PATIENCE = Duration.ofMinutes(30);

    private static final Told TOLD = new Told(new ProgramId("First bar dip", "3", "0f3a"), Kind.HOLD,
            new Standing(0, "assisted dip", 1, "40 kg"), Status.TRAINING);

    private Scribe() {
    }

    /** The entry that has a number, and always the same. */
    static Entry entry(int number) {
        Event session = Event.Session.of(LocalDate.parse("2026-01-01").plusDays(number),
                Map.of("pace", "4", "pain", "" + number % 7), List.of(Map.of("reps", "" + number % 13)));
        return new Entry.Recorded(number, Optional.of("Ida"), 1, session, TOLD);
    }

    /** Runs one in a process of its own. */
    static Process start(String... arguments) throws IOException {
        Stream<String> java = Stream.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData", "-cp", classPath(),
                Scribe.class.getName());
        return new ProcessBuilder(Stream.concat(java, Stream.of(arguments)).toList())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static String classPath() {
        return Stream.of(Scribe.class, Entry.class, com.fasterxml.jackson.core.JsonFactory.class)
                .map(Scribe::home).reduce((one, other) -> one + java.io.File.pathSeparator + other)
                .orElseThrow();
    }

    private static String home(Class<?> of) {
        try {
            return Path.of(of.getProtectionDomain().getCodeSource().getLocation().toURI()).toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Writes {@code FILE MOST BYTES}: so many entries at most, handing the disk so many bytes at a time; or
     * {@code FILE hold}: keeps the lock until its input ends.
     */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        if (arguments[1].equals("hold")) {
            hold(file);
        } else {
            int bytes = Integer.parseInt(arguments[2]);
            write(new FileStore(file, JournalJson.FORM, bytes == 0 ? new Disk() : new Slow(bytes), PATIENCE),
                    Integer.parseInt(arguments[1]));
        }
    }

    private static void write(Store store, int most) throws IOException {
        int number = store.read().entries().size() + 1;
        for (int written = 0; written < most;) {
            try {
                store.append(entry(number));
                System.out.println(number);
                number++;
                written++;
            } catch (OvertakenException e) {
                number = store.read().entries().size() + 1;
            }
        }
    }

    private static void hold(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            System.out.println(lock.isValid());
            System.in.transferTo(OutputStream.nullOutputStream());
        }
    }

    /**
     * A disk that takes a few bytes at a time and rests after each, so that a kill comes in the middle of a
     * line however long a flush takes.
     */
    static final class Slow extends Disk {
        private static final int REST_MILLIS = 1;

        private final int bytes;

        Slow(int bytes) {
            this.bytes = bytes;
        }

        @Override
        int write(FileChannel channel, ByteBuffer from, long at) throws IOException {
            ByteBuffer piece = from.slice(from.position(), Math.min(bytes, from.remaining()));
            int written = super.write(channel, piece, at);
            from.position(from.position() + written);
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(REST_MILLIS));
            return written;
        }
    }
}
