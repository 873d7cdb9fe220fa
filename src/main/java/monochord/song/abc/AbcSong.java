package monochord.song.abc;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import monochord.song.BarDraft;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongHead;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.theory.Key;

/** Makes sections of the parts that were read, in the order in which they are played. */
final class AbcSong {
    private static final String ONLY = "Tune";

    private final AbcReader read;

    AbcSong(AbcReader read) {
        this.read = read;
    }

    Song song() {
        return read.song(this);
    }

    Song song(SongMetre metre, Key key, int tempo) {
        String title = read.titles().isEmpty() ? "" : read.titles().get(0);
        SongHead head = new SongHead(title, read.composer(), key, metre, tempo, "");
        List<Section> sections = isInParts() ? inParts(metre) : cut(metre);
        if (sections.isEmpty()) {
            read.state().fault(0, Phrase.of("no note stands in it"), Phrase.of("write notes below the key"));
        }
        List<Section> kept = Section.atMost(sections, read.remarks()::add);
        return new Song(head, read.below(), kept, List.of(), read.state().faults, List.copyOf(read.remarks()));
    }

    private boolean isInParts() {
        return !read.parts().keySet().equals(Set.of(""));
    }

    private List<Section> inParts(SongMetre metre) {
        List<Section> sections = new ArrayList<>();
        Set<String> written = new HashSet<>();
        for (String part : playingOrder()) {
            int line = sections.size() + 1;
            List<BarDraft> bars = read.parts().get(part);
            sections.add(
                    written.add(part)
                            ? new Section(
                                    name(part),
                                    line,
                                    blocks(bars, read.words(part).lines(), metre))
                            : new Section(name(part), line, List.of()));
        }
        return sections;
    }

    /** Where no parts are named: as players hear them, if words and lines of music can be told apart there. */
    private List<Section> cut(SongMetre metre) {
        List<BarDraft> bars = read.parts().get("");
        AbcWords words = read.words("");
        AbcParts parts = new AbcParts(bars, metre, !words.isEmpty());
        List<AbcParts.AbcPart> all = parts.parts();
        boolean isClear = words.isEmpty() || words.musicLines() == parts.lines();
        if (all.size() == 1 || !isClear) {
            return List.of(new Section(ONLY, 1, blocks(bars, words.lines(), metre)));
        }
        List<Section> sections = new ArrayList<>();
        for (AbcParts.AbcPart part : all) {
            String letter = String.valueOf((char) ('A' + sections.size()));
            List<String> lines = words.isEmpty() ? List.of() : words.lines(part.from(), part.to());
            sections.add(new Section(name(letter), sections.size() + 1, blocks(part.bars(), lines, metre)));
        }
        return sections;
    }

    /** As the header says, what it does not name behind; without a word from it, as they stand. */
    private List<String> playingOrder() {
        Map<Character, String> byLetter = new LinkedHashMap<>();
        for (String part : read.parts().keySet()) {
            if (!part.isEmpty()) {
                byLetter.putIfAbsent(part.charAt(0), part);
            }
        }
        List<String> order = new ArrayList<>();
        AbcOrder.of(read.order()).stream()
                .map(byLetter::get)
                .filter(part -> part != null)
                .forEach(order::add);
        if (order.isEmpty()) {
            return List.copyOf(read.parts().keySet());
        }
        if (read.parts().containsKey("")) {
            order.add(0, "");
        }
        return order;
    }

    private String name(String part) {
        return part.isEmpty() ? ONLY : part.length() == 1 ? "Part " + part : part;
    }

    private static List<Section.Part> blocks(List<BarDraft> bars, List<String> words, SongMetre metre) {
        List<Section.Part> blocks = new ArrayList<>();
        boolean hasChords = bars.stream().anyMatch(bar -> !bar.symbols.isEmpty());
        if (hasChords) {
            blocks.add(new Section.ChordBlock(BarDraft.chords(bars, metre)));
        }
        if (bars.stream().anyMatch(BarDraft::hasNotes)) {
            blocks.add(new Section.TuneBlock(bars.stream().map(BarDraft::tune).toList()));
        }
        if (!words.isEmpty()) {
            blocks.add(new Section.WordsBlock(words));
        }
        return blocks;
    }
}
