package monochord.song.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongFault;
import monochord.song.SongHead;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Reads a plain text in which chords stand over words, or alone. Where no bar lines stand, each chord is a bar, which is
 * said; a section that has words alone takes the chords of the section of its name that came before.
 */
public final class TextChart {
    private static final int MOST_LINES = 5000;
    private static final int LONGEST_LINE = 1000;

    private final List<TextLine> lines;
    private final List<SongFault> faults = new ArrayList<>();
    private final Set<Phrase> remarks = new LinkedHashSet<>();
    private final List<Section> sections = new ArrayList<>();
    private final Set<String> written = new HashSet<>();
    private final Map<String, Section> latestChords = new HashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private SongHead head;
    private TextSection current = new TextSection("Verse", 1);
    private boolean hasKey;

    private TextChart(String text) {
        lines = SafeText.clean(text.replace("\r\n", "\n").replace('\r', '\n'))
                .lines()
                .limit(MOST_LINES)
                .map(line -> TextLine.of(line.length() > LONGEST_LINE ? line.substring(0, LONGEST_LINE) : line))
                .toList();
        head = new SongHead("", "", Key.major(NoteName.C), SongMetre.COMMON, 0, "");
    }

    /** Whether chords stand in it at all. */
    public static boolean isChart(String text) {
        return text.lines()
                .limit(MOST_LINES)
                .filter(line -> line.length() <= LONGEST_LINE)
                .anyMatch(line -> TextLine.of(line).kind() == TextLine.LineKind.CHORDS);
    }

    /** @param isKeySaid whether the text names its key; if not, it is taken as C major */
    public record Read(Song song, boolean isKeySaid) {}

    /** @param name what it is called if the text does not say */
    public static Read read(String text, String name) {
        return new TextChart(text).song(name);
    }

    private Read song(String name) {
        int from = title();
        for (int i = from; i < lines.size(); i++) {
            take(lines.get(i), i);
        }
        close();
        head = head.title().isEmpty() ? head.called(name) : head;
        List<Section> read = Section.atMost(sections, remarks::add);
        return new Read(new Song(head, List.of(), read, List.of(), faults, List.copyOf(remarks)), hasKey);
    }

    /** A first line that is neither chords nor heading, with nothing or a heading or a field below it, is the title. */
    private int title() {
        int first = 0;
        while (first < lines.size() && lines.get(first).kind() == TextLine.LineKind.BLANK) {
            first++;
        }
        boolean isTitle = first + 1 < lines.size()
                && lines.get(first).kind() == TextLine.LineKind.WORDS
                && lines.get(first + 1).kind() != TextLine.LineKind.WORDS
                && lines.get(first + 1).kind() != TextLine.LineKind.CHORDS;
        if (isTitle) {
            head = head.called(SafeText.oneLine(lines.get(first).text().strip()));
        }
        return isTitle ? first + 1 : first;
    }

    private void take(TextLine line, int index) {
        switch (line.kind()) {
            case HEADING -> {
                close();
                current = new TextSection(line.heading(), index + 1);
                current.times = line.times();
            }
            case FIELD -> field(line.field(), index);
            case CHORDS -> {
                if (current.chords(line, index + 1)) {
                    remarks.add(Phrase.sentence("No bar lines are written: each chord is taken as one bar."));
                }
            }
            case WORDS -> current.words(line);
            default -> current.gap();
        }
    }

    private void field(String[] field, int index) {
        try {
            switch (field[0]) {
                case "title" -> head = head.called(field[1]);
                case "by" -> head = new SongHead(head.title(), field[1], head.key(), head.metre(), head.tempo(), "");
                case "key" -> {
                    head = head.in(Key.parse(field[1]));
                    hasKey = true;
                }
                case "tempo" -> tempo(field[1]);
                case "swing" -> {}
                default ->
                    head = new SongHead(
                            head.title(), head.by(), head.key(), SongMetre.parse(field[1]), head.tempo(), "");
            }
        } catch (Unreadable unreadable) {
            faults.add(new SongFault(
                    index + 1,
                    1,
                    Phrase.clause(unreadable.trouble()),
                    Phrase.of("write for example {0}", Phrase.typed(unreadable.example()))));
        }
    }

    private void tempo(String text) {
        String digits = text.replaceAll("\\D.*", "");
        int tempo = digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : 0;
        head = new SongHead(head.title(), head.by(), head.key(), head.metre(), tempo > 400 ? 0 : tempo, "");
    }

    private void close() {
        if (current.isEmpty() && sections.isEmpty() && current.line == 1) {
            return;
        }
        Optional<Section> before = Optional.ofNullable(latestChords.get(bare(current.name)));
        String name = current.name;
        boolean isWritten = written.contains(lower(name));
        if (!current.isEmpty() && (isWritten || name.equalsIgnoreCase(Song.CHANGES))) {
            name += " " + counts.merge(bare(name) + " again", 2, (known, one) -> known + 1);
        }
        if (!current.isEmpty() && !current.hasChords() && before.isPresent()) {
            remarks.add(Phrase.sentence(
                    "{0} has words alone and takes the chords of {1}.",
                    Phrase.quoted(name), Phrase.quoted(before.get().name())));
        }
        List<Section.Part> blocks = current.isEmpty() ? List.of() : current.blocks(before);
        for (int i = 0; i < current.times; i++) {
            add(new Section(name, current.line + i, i == 0 ? blocks : List.of()));
        }
    }

    private void add(Section section) {
        sections.add(section);
        written.add(lower(section.name()));
        if (!section.chords().isEmpty()) {
            latestChords.put(bare(section.name()), section);
        }
    }

    /** What a section is called, numbers aside. */
    private static String bare(String name) {
        return lower(name).replaceAll("\\s*\\d+$", "");
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
