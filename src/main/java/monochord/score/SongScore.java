package monochord.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.voicing.Voicing;
import monochord.song.SongMetre;
import monochord.song.SongMusic;
import monochord.theory.note.Beats;
import monochord.theory.note.Signs;

/**
 * A song, or a place in it, as it is played: its tune, its chords in two hands, repeats played out.
 *
 * @param sections where each begins
 */
public record SongScore(Piece piece, List<Caption> sections) {
    private static final Beats DOTTED_QUARTER = Beats.of(3, 2);
    private static final Voicing NO_KEYS = new Voicing(List.of(), List.of());

    /** @throws IllegalArgumentException if neither a note nor a chord stands in it */
    public static SongScore of(SongMusic.Timeline music, SongMetre metre) {
        List<Score> line = new ArrayList<>();
        if (!music.notes().isEmpty()) {
            line.add(tune(music));
        }
        List<TimedVoicing> voicings = fromFirstBar(music, line);
        List<Caption> sections = music.sections().stream()
                .map(section -> new Caption(section.name(), section.start(), Beats.ZERO))
                .toList();
        return new SongScore(new Piece(voicings, together(line), bars(metre).after(music.pickup())), sections);
    }

    /** The bars of a metre; of one that is free, bars of four quarters. */
    public static BarGrid bars(SongMetre metre) {
        return metre.isFree()
                ? BarGrid.COMMON
                : new BarGrid(metre.bar(), Beats.ZERO, metre.isCompound() ? DOTTED_QUARTER : Beats.ONE);
    }

    private static Optional<Score> together(List<Score> parts) {
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(parts.size() == 1 ? parts.get(0) : new Score.Together(parts));
    }

    /** What the hands hold from the first full bar on; a chord in the pick-up is struck there, as it stands. */
    private static List<TimedVoicing> fromFirstBar(SongMusic.Timeline music, List<Score> line) {
        List<TimedVoicing> voicings = new ArrayList<>();
        Beats now = music.chords().isEmpty()
                ? music.pickup()
                : music.chords().get(0).start();
        if (now.compareTo(music.pickup()) > 0) {
            voicings.add(new TimedVoicing(NO_KEYS, now.minus(music.pickup()), ""));
        }
        for (TimedVoicing voicing : Comping.voicings(changes(music))) {
            Beats end = now.plus(voicing.beats());
            if (now.compareTo(music.pickup()) < 0) {
                Beats until = end.compareTo(music.pickup()) < 0 ? end : music.pickup();
                line.add(Score.rest(now).then(lasting(voicing, until.minus(now)).struck()));
                now = until;
            }
            if (now.compareTo(end) < 0) {
                voicings.add(lasting(voicing, end.minus(now)));
            }
            now = end;
        }
        return voicings;
    }

    private static TimedVoicing lasting(TimedVoicing voicing, Beats beats) {
        return new TimedVoicing(voicing.hands(), beats, voicing.label());
    }

    private static Score tune(SongMusic.Timeline music) {
        List<Score> parts = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (SongMusic.SungNote note : music.notes()) {
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
