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
                changed.set(index, written.get(index).with(text(to, i)));
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

    private static List<String> events(Bar bar) {
        return bar.slots().stream().map(SongEdit::event).toList();
    }

    private static String event(ChordEvent event) {
        return (event.held() ? "held " : "") + event.chord() + " " + event.shares();
    }

    private static String text(Progression chords, int first, int last) {
        List<String> bars = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            bars.add(text(chords, i));
        }
        return String.join(" | ", bars);
    }

    private static String text(Progression chords, int index) {
        String bar = new Progression(chords.key(), List.of(chords.bars().get(index)), true).symbols(Signs.ASCII);
        return bar.endsWith("|") ? bar.substring(0, bar.length() - 1).strip() : bar;
    }
}
