package monochord.score;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;

/**
 * What a line of music sounds like when nothing more is said: a progression and a chord in two hands, a scale one octave
 * up from the lowest tonic not below middle C, notes first one after another and then together.
 */
public final class Arrangement {
    private static final Pitch MIDDLE_C = Pitch.parse("C4");
    private static final Beats A_BAR = Beats.of(Progression.BEATS_PER_BAR);
    private static final Beats HALF_A_BAR = A_BAR.dividedInto(2);
    private static final Beats A_SCALE_NOTE = Beats.of(1, 2);

    private Arrangement() {}

    public static Score of(Music music) {
        return piece(music).as(Pattern.BLOCK, 1);
    }

    /** The same before it is decided how the hands strike it. */
    public static Piece piece(Music music) {
        return piece(music, BarGrid.COMMON);
    }

    /**
     * In bars of another length: a written bar of the progression is one of those, and where none is written and they
     * are not of four beats, each chord has a bar.
     */
    public static Piece piece(Music music, BarGrid metre) {
        if (music instanceof Music.OneChord one) {
            return Piece.of(Comping.voicings(List.of(change(one.chord(), metre.bar()))), metre);
        } else if (music instanceof Music.OneScale one) {
            return Piece.of(scale(one.scale())).in(metre);
        } else if (music instanceof Music.OneProgression one) {
            Beats share = one.progression().barred() || !metre.bar().equals(A_BAR) ? metre.bar() : HALF_A_BAR;
            return Piece.of(Comping.voicings(changes(one.progression(), share)), metre);
        }
        return Piece.of(notes((Music.Notes) music)).in(metre);
    }

    /** One change for each chord that is struck; a chord that is held into the next bar is one longer change. */
    public static List<HeldChord> changes(Progression progression) {
        return changes(progression, Beats.of(progression.beatsPerBar()));
    }

    /** The same, each bar so many beats long. */
    public static List<HeldChord> changes(Progression progression, Beats barLength) {
        List<HeldChord> changes = new ArrayList<>();
        for (Bar bar : progression.bars()) {
            Beats share = barLength.dividedInto(bar.shares());
            for (ChordEvent slot : bar.slots()) {
                add(changes, slot, share.times(slot.shares()));
            }
        }
        return changes;
    }

    private static void add(List<HeldChord> changes, ChordEvent slot, Beats beats) {
        if (slot.held()) {
            HeldChord last = changes.remove(changes.size() - 1);
            changes.add(new HeldChord(last.bass(), last.tones(), last.beats().plus(beats), last.label()));
        } else {
            changes.add(change(slot.chord(), beats));
        }
    }

    private static HeldChord change(Chord chord, Beats beats) {
        return new HeldChord(chord.bass(), chord.tones(), beats, chord.write(Signs.ASCII));
    }

    private static Score scale(Scale scale) {
        List<Pitch> pitches = scale.pitches(MIDDLE_C);
        Pitch top = pitches.get(pitches.size() - 1);
        return Score.inTurn(pitches.subList(0, pitches.size() - 1), A_SCALE_NOTE)
                .then(Score.note(top, Beats.of(2)))
                .by(Hand.RIGHT);
    }

    private static Score notes(Music.Notes notes) {
        List<Pitch> pitches = notes.pitches().isEmpty() ? upwards(notes.names()) : notes.pitches();
        return Score.inTurn(pitches, Beats.ONE)
                .then(Score.together(pitches, A_BAR))
                .by(Hand.RIGHT);
    }

    /** Each name above the one before, the first at or above middle C. */
    public static List<Pitch> upwards(List<NoteName> names) {
        List<Pitch> pitches = new ArrayList<>();
        Pitch floor = MIDDLE_C;
        for (NoteName name : names) {
            Pitch next = Pitch.atOrAbove(name, floor);
            pitches.add(next);
            floor = next;
        }
        return pitches;
    }
}
