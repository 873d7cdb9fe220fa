package monochord.song.abc;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import monochord.song.Section;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongHead;
import monochord.song.WrittenBar;
import monochord.theory.Mode;

/**
 * Writes a song as a tune in ABC: each section that is written out is a part, the header says in which order they are
 * played. Source: the ABC standard 2.1.
 */
public final class AbcWriter {
    private static final int MOST_PARTS = 26;

    private final Song song;
    private final SongHead head;
    private final StringBuilder text = new StringBuilder();

    private AbcWriter(Song song) {
        this.song = song;
        this.head = song.head();
    }

    public static String write(Song song) {
        return new AbcWriter(song).write();
    }

    private String write() {
        List<Section> written = song.sections().stream()
                .filter(section -> !section.isAgain())
                .limit(MOST_PARTS)
                .toList();
        header(written);
        for (int i = 0; i < written.size(); i++) {
            if (song.sections().size() > 1) {
                line("P:" + (char) ('A' + i));
                line("N:" + written.get(i).name());
            }
            section(written.get(i));
        }
        return text.toString();
    }

    private void header(List<Section> written) {
        line("%abc-2.1");
        line("X:1");
        line("T:" + head.title());
        if (!head.by().isEmpty()) {
            line("C:" + head.by());
        }
        line("M:" + head.metre());
        line("L:1/4");
        if (head.tempo() > 0) {
            line("Q:" + (head.metre().isCompound() ? "3/8" : "1/4") + "=" + head.tempo());
        }
        if (song.sections().size() > 1) {
            StringBuilder order = new StringBuilder();
            for (Section section : song.sections()) {
                int index = written.indexOf(song.written(section));
                order.append(index < 0 ? "" : (char) ('A' + index));
            }
            line("P:" + order);
        }
        line("K:" + key());
    }

    private String key() {
        Mode mode = head.key().mode();
        String tonic = head.key().tonic().toString();
        return switch (mode) {
            case IONIAN -> tonic;
            case AEOLIAN -> tonic + "m";
            default -> tonic + mode.label().substring(0, 3);
        };
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private void section(Section section) {
        SectionMusic music = SectionMusic.of(section, head);
        List<WrittenBar> signs = section.tune().size() == music.bars().size() ? section.tune() : section.chords();
        int before = music.bars().size() - signs.size();
        Set<Integer> opened = openedLater(signs);
        List<List<String>> verses = verses(section.words());
        int line = 0;
        List<Boolean> cuts = new ArrayList<>();
        StringBuilder now = new StringBuilder();
        for (int i = 0; i < music.bars().size(); i++) {
            WrittenBar sign = i >= before && i - before < signs.size() ? shown(signs, i - before) : null;
            boolean opens = sign != null && (sign.opens() || opened.contains(i - before));
            boolean holdsOn =
                    i + 1 < music.bars().size() && music.bars().get(i + 1).beginsHeld();
            now.append(opens ? "|: " : "");
            cuts.addAll(bar(music.bars().get(i), sign, holdsOn, now));
            if (sign == null
                    ? i + 1 == music.bars().size()
                    : sign.endsLine() || i + 1 == music.bars().size()) {
                line(now.toString().stripTrailing());
                now.setLength(0);
                int at = line++;
                verses.stream()
                        .filter(verse -> at < verse.size())
                        .forEach(verse -> line("w: " + AbcWords.held(verse.get(at), cuts)));
                cuts.clear();
            }
        }
    }

    /** A repeat sign behind a second ending, where nothing goes back any more, is a double bar line for other players. */
    private static WrittenBar shown(List<WrittenBar> signs, int index) {
        WrittenBar bar = signs.get(index);
        boolean isLast =
                index + 1 == signs.size() || signs.get(index + 1).ending().isEmpty();
        int ending = index;
        while (ending > 0
                && signs.get(ending).ending().isEmpty()
                && signs.get(ending - 1).times() == 0
                && !signs.get(ending - 1).endsPart()) {
            ending--;
        }
        boolean isSecond = ending > 0
                && signs.get(ending).ending().equals("2")
                && signs.get(ending - 1).times() == 2;
        int first = ending - 1;
        while (first > 0
                && signs.get(first).ending().isEmpty()
                && !signs.get(first).opens()) {
            first--;
        }
        boolean isBehindFirst = isSecond && signs.get(first).ending().equals("1");
        return bar.times() > 1 && isLast && isBehindFirst ? bar.endingPart() : bar;
    }

    /**
     * Bars behind a double bar line to which a repeat goes back that nothing opens: other players go back further (abc2midi
     * does), and so it is opened for them.
     */
    private static Set<Integer> openedLater(List<WrittenBar> signs) {
        Set<Integer> opened = new HashSet<>();
        int from = 0;
        boolean isOpen = true;
        for (int i = 0; i < signs.size(); i++) {
            isOpen |= signs.get(i).opens();
            boolean inEnding =
                    i + 1 < signs.size() && !signs.get(i + 1).ending().isEmpty();
            if (signs.get(i).times() > 1 && !isOpen) {
                opened.add(from);
                isOpen = true;
            }
            if ((signs.get(i).times() > 1 || signs.get(i).endsPart()) && !inEnding) {
                from = i + 1;
                isOpen = false;
            }
        }
        return opened;
    }

    private static List<List<String>> verses(List<String> words) {
        List<List<String>> verses = new ArrayList<>(List.of(new ArrayList<>()));
        for (String line : words) {
            if (line.isBlank()) {
                verses.add(new ArrayList<>());
            } else {
                verses.get(verses.size() - 1).add(line);
            }
        }
        return verses;
    }

    /** @return for each note written whether it only goes on with the one before, which a chord has cut */
    private List<Boolean> bar(SectionMusic.SongBar bar, WrittenBar sign, boolean holdsOn, StringBuilder now) {
        if (sign != null) {
            now.append(sign.ending().isEmpty() ? "" : "[" + sign.ending() + " ");
        }
        AbcBarWriting writing = new AbcBarWriting(bar, holdsOn, AbcKey.of(head.key()));
        now.append(writing.text());
        now.setLength(now.toString().stripTrailing().length());
        now.append(
                sign == null
                        ? " | "
                        : sign.times() > 1
                                ? " " + ":".repeat(sign.times() - 1) + "| "
                                : sign.endsPart() ? " || " : " | ");
        return writing.cuts();
    }
}
