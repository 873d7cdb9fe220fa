package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.text.SafeText;

/**
 * Reads songs from Markdown: a head between two lines of three hyphens, {@code ##} sections in playing order, blocks
 * {@code chords}, {@code tune} and {@code words}. Whatever a text holds, a song comes back with the faults that were found.
 */
public final class SongReader {
    static final int MOST_LINES = 20_000;
    static final int LONGEST_LINE = 8000;
    private static final int MOST_FAULTS = 100;
    private static final String HEADING = "## ";
    private static final String FENCE = "```";

    private final List<String> lines;
    private final List<SongFault> faults = new ArrayList<>();
    private final List<String> intro = new ArrayList<>();
    private final List<Section> sections = new ArrayList<>();
    private final List<SongChange> changes = new ArrayList<>();
    private String name;
    private int nameLine;
    private List<Section.Part> parts = new ArrayList<>();
    private List<String> prose = new ArrayList<>();
    private int bars;

    private SongReader(List<String> lines) {
        this.lines = lines;
    }

    public static Song read(String text) {
        List<String> all = SafeText.clean(text.replace("\r\n", "\n")).lines().toList();
        List<String> lines = all.stream()
                .limit(MOST_LINES)
                .map(line -> line.length() > LONGEST_LINE ? line.substring(0, LONGEST_LINE) : line)
                .toList();
        SongReader reader = new SongReader(lines);
        reader.sayWhatIsCut(all);
        return reader.song();
    }

    /** A song that is not read whole has a fault, and so is not written over. */
    private void sayWhatIsCut(List<String> all) {
        if (all.size() > MOST_LINES) {
            fault(
                    MOST_LINES,
                    Phrase.of("more lines than {0} are not read", MOST_LINES),
                    Phrase.of("make several songs of it"));
        }
        for (int i = 0; i < lines.size(); i++) {
            if (all.get(i).length() > LONGEST_LINE) {
                fault(
                        i,
                        Phrase.of("of this line only {0} characters are read", LONGEST_LINE),
                        Phrase.of("write it on several lines"));
            }
        }
    }

    private Song song() {
        SongHeadReader head = new SongHeadReader(lines, faults);
        SongHead said = head.read();
        for (int i = head.end(); i < lines.size(); ) {
            i = take(i);
        }
        close();
        Song song = new Song(said, stripped(intro), sections, changes, List.of(), List.of());
        if (sections.isEmpty()) {
            faults.add(new SongFault(
                    lines.size() + 1,
                    1,
                    Phrase.of("no section stands in it"),
                    Phrase.of("write ## Verse and below it a block of chords")));
        }
        SongCheck.of(song, faults);
        faults.sort(java.util.Comparator.comparingInt(SongFault::line).thenComparingInt(SongFault::column));
        return song.withFaults(faults.subList(0, Math.min(MOST_FAULTS, faults.size())));
    }

    /** @return the index of the line that comes next */
    private int take(int index) {
        String line = lines.get(index);
        if (line.startsWith(HEADING)) {
            close();
            name = line.substring(HEADING.length()).strip();
            nameLine = index + 1;
        } else if (line.startsWith(FENCE)) {
            return block(index);
        } else if (Song.CHANGES.equals(name)) {
            change(line, index);
        } else {
            (name == null ? intro : prose).add(line);
        }
        return index + 1;
    }

    private void change(String line, int index) {
        if (line.isBlank()) {
            return;
        }
        String item = line.strip().replaceFirst("^[-*] ", "");
        Optional<SongChange> change = SongChange.parse(item);
        change.ifPresentOrElse(
                changes::add,
                () -> fault(
                        index,
                        Phrase.of("this line says no change"),
                        Phrase.of("write for example - Verse, bar 3: Bm to Bb. The tune rests on D there.")));
    }

    private int block(int index) {
        String info = lines.get(index).substring(FENCE.length()).strip();
        int end = index + 1;
        while (end < lines.size() && !lines.get(end).startsWith(FENCE)) {
            end++;
        }
        if (end == lines.size()) {
            fault(index, Phrase.of("the block is not closed"), Phrase.of("write ``` on a line below it"));
        }
        List<String> content = lines.subList(index + 1, end);
        switch (info) {
            case "chords" -> music(new Section.ChordBlock(bars(content, index)), index);
            case "tune" -> music(new Section.TuneBlock(bars(content, index)), index);
            case "words" -> music(new Section.WordsBlock(content), index);
            default -> {
                fault(
                        index,
                        Phrase.of("a song has no block \"{0}\"", Phrase.quoted(info)),
                        Phrase.of("write chords, tune or words behind ```"));
                prose.addAll(lines.subList(index, Math.min(lines.size(), end + 1)));
            }
        }
        return end + 1;
    }

    /** As many as a song has room for. */
    private List<WrittenBar> bars(List<String> content, int index) {
        List<WrittenBar> all = BarLines.read(content, index + 2);
        List<WrittenBar> some = all.subList(0, Math.min(all.size(), 2 * BarLines.MOST - bars));
        bars += some.size();
        if (all.size() >= BarLines.MOST || some.size() < all.size()) {
            fault(
                    index,
                    Phrase.of("more bars than {0} are not read", BarLines.MOST),
                    Phrase.of("make several songs of it"));
        }
        return List.copyOf(some);
    }

    private void music(Section.Part block, int index) {
        if (name == null) {
            fault(index, Phrase.of("this block stands in no section"), Phrase.of("write ## Verse above it"));
            name = "Song";
            nameLine = index + 1;
        }
        if (parts.stream().anyMatch(part -> part.getClass() == block.getClass())) {
            fault(
                    index,
                    Phrase.of("a second block of this kind in one section"),
                    Phrase.of("put both into one, or begin another section"));
        }
        closeProse();
        parts.add(block);
    }

    private void closeProse() {
        List<String> text = stripped(prose);
        if (!text.isEmpty()) {
            parts.add(new Section.Prose(text));
        }
        prose = new ArrayList<>();
    }

    private void close() {
        closeProse();
        boolean isSection = name != null && !name.equals(Song.CHANGES);
        if (isSection && sections.size() < Section.MOST) {
            sections.add(new Section(name, nameLine, parts));
        } else if (isSection && faults.stream().noneMatch(fault -> fault.what().equals(Section.TOO_MANY))) {
            faults.add(new SongFault(nameLine, 1, Section.TOO_MANY, Phrase.of("make several songs of it")));
        }
        parts = new ArrayList<>();
    }

    private static List<String> stripped(List<String> text) {
        int from = 0;
        int to = text.size();
        while (from < to && text.get(from).isBlank()) {
            from++;
        }
        while (to > from && text.get(to - 1).isBlank()) {
            to--;
        }
        return List.copyOf(text.subList(from, to));
    }

    private void fault(int index, Phrase what, Phrase instead) {
        faults.add(new SongFault(index + 1, 1, what, instead));
    }
}
