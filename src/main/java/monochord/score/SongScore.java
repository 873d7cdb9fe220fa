package monochord.score;

import java.util.ArrayList;
import java.util.List;
import monochord.song.SongMusic;
import monochord.theory.note.Beats;
import monochord.theory.note.Signs;

/**
 * A whole song as it is played: its tune, its chords in two hands, repeats played out.
 *
 * @param sections where each begins
 */
public record SongScore(Score score, List<Caption> sections) {
    public static SongScore of(SongMusic.Timeline music, Pattern pattern, BarGrid metre) {
        List<Score> parts = new ArrayList<>();
        if (!music.notes().isEmpty()) {
            parts.add(tune(music));
        }
        if (!music.chords().isEmpty()) {
            Beats before = music.chords().get(0).start();
            Score chords = pattern.of(Comping.voicings(changes(music)), metre);
            parts.add(before.isZero() ? chords : Score.rest(before).then(chords));
        }
        List<Caption> sections = music.sections().stream()
                .map(section -> new Caption(section.name(), section.start(), Beats.ZERO))
                .toList();
        return new SongScore(parts.size() == 1 ? parts.get(0) : new Score.Together(parts), sections);
    }

    private static Score tune(SongMusic.Timeline music) {
        List<Score> parts = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (SongMusic.Note note : music.notes()) {
            if (now.compareTo(note.start()) < 0) {
                parts.add(Score.rest(note.start().minus(now)));
            }
            parts.add(Score.note(note.pitch(), note.beats()));
            now = note.start().plus(note.beats());
        }
        return new Score.InTurn(parts).by(Hand.TUNE);
    }

    /** Each chord until the next begins. */
    private static List<HeldChord> changes(SongMusic.Timeline music) {
        List<HeldChord> changes = new ArrayList<>();
        for (int i = 0; i < music.chords().size(); i++) {
            SongMusic.ChordChange change = music.chords().get(i);
            Beats end =
                    i + 1 < music.chords().size() ? music.chords().get(i + 1).start() : music.beats();
            changes.add(new HeldChord(
                    change.chord().bass(),
                    change.chord().tones(),
                    end.minus(change.start()),
                    change.chord().write(Signs.ASCII)));
        }
        return changes;
    }
}
