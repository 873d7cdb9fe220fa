package monochord.song;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.text.Phrase;

/**
 * A section of a song, such as a verse, as it is written.
 *
 * @param line of its heading, from 1
 * @param parts in the order of the file
 */
public record Section(String name, int line, List<Part> parts) {
    /** A song with more is none; whoever asks each section about each other one would be kept waiting. */
    static final int MOST = 500;

    static final Phrase TOO_MANY = Phrase.of("more sections than {0} are not read", MOST);

    public Section {
        parts = List.copyOf(parts);
    }

    /** What stands below a heading. */
    public sealed interface Part {}

    /** Words about the music, as they stand. */
    public record Prose(List<String> lines) implements Part {
        public Prose {
            lines = List.copyOf(lines);
        }
    }

    public record ChordBlock(List<WrittenBar> bars) implements Part {
        public ChordBlock {
            bars = List.copyOf(bars);
        }
    }

    public record TuneBlock(List<WrittenBar> bars) implements Part {
        public TuneBlock {
            bars = List.copyOf(bars);
        }
    }

    /** What is sung: a line of words to a line of the tune, verses with an empty line between. */
    public record WordsBlock(List<String> lines) implements Part {
        public WordsBlock {
            lines = List.copyOf(lines);
        }
    }

    /** So many of them, and where there are more a remark that the others are left out. */
    public static List<Section> atMost(List<Section> sections, Consumer<Phrase> remark) {
        if (sections.size() <= MOST) {
            return sections;
        }
        remark.accept(Phrase.sentence("Of {0} sections the first {1} are read.", sections.size(), MOST));
        return sections.subList(0, MOST);
    }

    private <T> Optional<T> part(Class<T> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    public List<WrittenBar> chords() {
        return part(ChordBlock.class).map(ChordBlock::bars).orElse(List.of());
    }

    public List<WrittenBar> tune() {
        return part(TuneBlock.class).map(TuneBlock::bars).orElse(List.of());
    }

    public List<String> words() {
        return part(WordsBlock.class).map(WordsBlock::lines).orElse(List.of());
    }

    /** Whether only its heading stands there: it is played as it was before. */
    public boolean isAgain() {
        return chords().isEmpty() && tune().isEmpty() && words().isEmpty();
    }

    /** With other chords in the same bars. */
    Section withChords(List<WrittenBar> bars) {
        return new Section(
                name,
                line,
                parts.stream()
                        .map(part -> part instanceof ChordBlock ? (Part) new ChordBlock(bars) : part)
                        .toList());
    }
}
