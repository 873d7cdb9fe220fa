package monochord.song;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.theory.note.Signs;

/** Puts other chords into written bars and leaves all else as it stands. */
final class SongEdit {
    private SongEdit() {}

    static Song change(Song song, SongPlace place, Progression to, String why) {
        Progression from = place.progression(song).orElseThrow();
        if (from.bars().size() != to.bars().size()) {
            throw new IllegalArgumentException(
                    to.bars().size() + " bars for " + from.bars().size());
        }
        List<WrittenBar> written = place.section().chords();
        int before = written.size() - place.music(song).count();
        List<WrittenBar> changed = new ArrayList<>(written);
        int first = -1;
        int last = -1;
        for (int i = 0; i < to.bars().size(); i++) {
            if (!events(from.bars().get(i)).equals(events(to.bars().get(i)))) {
                int index = place.first() + i + Math.max(0, before);
                changed.set(
                        index,
                        written.get(index).with(rewritten(written.get(index).text(), to, i)));
                first = first < 0 ? i : first;
                last = i;
            }
        }
        if (first < 0) {
            return song;
        }
        SongPlace where = new SongPlace(place.section(), place.first() + first, place.first() + last, false);
        SongChange change = new SongChange(where.toString(), text(from, first, last), text(to, first, last), why);
        return song.with(place.section().withChords(changed)).with(change);
    }

    /** In numerals where the bar was written so; its cues stay. */
    private static String rewritten(String old, Progression to, int index) {
        boolean isByName = ChordBars.TOKEN
                .matcher(old)
                .results()
                .anyMatch(
                        token -> token.group().charAt(0) >= 'A' && token.group().charAt(0) <= 'G');
        Progression bar = new Progression(to.key(), List.of(to.bars().get(index)), true);
        String chords = isByName ? text(to, index) : unbarred(bar.numerals(Signs.ASCII));
        String cues = ChordBars.TOKEN
                .matcher(old)
                .results()
                .map(token -> token.group())
                .filter(token -> token.startsWith("\""))
                .reduce("", (one, next) -> one + next + " ");
        return cues + chords;
    }

    private static String unbarred(String bar) {
        return bar.endsWith("|") ? bar.substring(0, bar.length() - 1).strip() : bar;
    }

    private static List<String> events(Bar bar) {
        return bar.slots().stream().map(SongEdit::event).toList();
    }

    private static String event(ChordEvent event) {
        return (event.held() ? "held " : "") + event.chord() + " " + event.shares();
    }

    private static String text(Progression chords, int first, int last) {
        List<String> bars = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            bars.add(text(chords, i).replaceAll("(?: \\.)+$", ""));
        }
        return String.join(" | ", bars);
    }

    private static String text(Progression chords, int index) {
        return unbarred(new Progression(chords.key(), List.of(chords.bars().get(index)), true).symbols(Signs.ASCII));
    }
}
