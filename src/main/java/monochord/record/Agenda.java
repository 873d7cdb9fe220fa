package monochord.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import monochord.file.WholeFile;
import monochord.practice.mastery.Due;
import monochord.practice.mastery.Knowledge;

/**
 * What one sitting leaves for the next to say when it opens: the lesson that follows, and when what comes back. It is
 * written at the end of a sitting because opening the record would hold up the first prompt; the record itself stays the
 * truth, and whoever loses this file loses a greeting.
 *
 * <p>Text form: a head line, {@code lesson SLUG TITLE} where there is one, then {@code due TIME THINGS SECONDS} for each hour
 * in which something comes back, time in milliseconds since 1970 in UTC. {@link #read} reads all that {@link #write} writes.
 *
 * @param slug of the lesson that follows, empty if none does
 * @param title with its number
 */
public record Agenda(String slug, String title, List<Entry> entries) {
    public static final Agenda NONE = new Agenda("", "", List.of());

    private static final String FILE = "agenda";
    private static final String HEAD = "monochord agenda 1";
    private static final String LESSON = "lesson";
    private static final String DUE = "due";
    private static final long HOUR = 60 * 60 * 1000;

    /**
     * Things that come back together.
     *
     * @param due when, in milliseconds since 1970 in UTC
     * @param seconds how long questions on all of them take
     */
    public record Entry(long due, int things, int seconds) {
        private Entry and(Entry other) {
            return new Entry(due, things + other.things, seconds + other.seconds);
        }
    }

    public Agenda {
        entries = List.copyOf(entries);
    }

    /** What comes back within one hour is one entry, for the fewer there are, the sooner they are read. */
    public static Agenda of(String slug, String title, Knowledge knowledge) {
        SortedMap<Long, Entry> byHour = new TreeMap<>();
        knowledge.standings().forEach((item, standing) -> {
            long due = (standing.due() / HOUR + 1) * HOUR;
            int seconds = (int) Math.round(Due.secondsFor(item, knowledge));
            byHour.merge(due, new Entry(due, 1, seconds), Entry::and);
        });
        return new Agenda(slug, title, List.copyOf(byHour.values()));
    }

    public boolean isEmpty() {
        return slug.isEmpty() && entries.isEmpty();
    }

    /** How many things are due. */
    public int due(long time) {
        int things = 0;
        for (Entry entry : entries) {
            things += entry.due <= time ? entry.things : 0;
        }
        return things;
    }

    /** How long what is due takes, in whole minutes, 1 at least. */
    public int minutes(long time) {
        int seconds = 0;
        for (Entry entry : entries) {
            seconds += entry.due <= time ? entry.seconds : 0;
        }
        return Math.max(1, (seconds + 59) / 60);
    }

    /** What the last sitting left; nothing if none did, or if it cannot be read. */
    public static Agenda read(Path home) {
        Path file = home.resolve(FILE);
        try {
            return Files.exists(file) ? parse(Files.readAllLines(file)) : NONE;
        } catch (IOException | RuntimeException unreadable) {
            return NONE;
        }
    }

    private static Agenda parse(List<String> lines) {
        String slug = "";
        String title = "";
        List<Entry> entries = new ArrayList<>();
        for (String line : lines.isEmpty() || !lines.get(0).equals(HEAD) ? List.<String>of() : lines) {
            String[] words = line.split(" ", line.startsWith(DUE) ? 4 : 3);
            if (words[0].equals(LESSON)) {
                slug = words[1];
                title = words[2];
            } else if (words[0].equals(DUE)) {
                entries.add(
                        new Entry(Long.parseLong(words[1]), Integer.parseInt(words[2]), Integer.parseInt(words[3])));
            }
        }
        return new Agenda(slug, title, entries);
    }

    /** Puts it in place whole or not at all; where it cannot be written, the next sitting opens without it. */
    public void write(Path home) {
        try {
            WholeFile.writePrivately(home.resolve(FILE), part -> Files.write(part, lines()));
        } catch (IOException unwritable) {
            // a greeting is all that is lost
        }
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(HEAD));
        if (!slug.isEmpty()) {
            lines.add(LESSON + " " + slug + " " + title);
        }
        entries.forEach(entry -> lines.add(DUE + " " + entry.due + " " + entry.things + " " + entry.seconds));
        return lines;
    }
}
