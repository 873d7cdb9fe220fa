package monochord.view.staff;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.voicing.Voicing;
import monochord.score.Arrangement;
import monochord.score.Comping;
import monochord.score.TimedVoicing;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.view.keyboard.MarkedKey;
import monochord.view.keyboard.ToneRoles;

/** Chords, scales, notes and progressions as music for a staff, at the heights at which keyboards show them. */
public final class MusicOnStaff {
    private MusicOnStaff() {}

    /** @param key whose signs are written behind the clef; a scale has its own */
    public static StaffMusic of(Music music, Key key) {
        if (music instanceof Music.OneChord one) {
            return chord(one.chord(), one.numeral(), key);
        } else if (music instanceof Music.OneScale one) {
            return scale(one.scale());
        } else if (music instanceof Music.OneProgression one) {
            return progression(one.progression());
        }
        Music.Notes notes = (Music.Notes) music;
        List<Pitch> pitches = notes.pitches().isEmpty() ? Arrangement.upwards(notes.names()) : notes.pitches();
        return free(
                Phrase.row(notes.names()),
                key.signature(),
                pitches.stream()
                        .map(pitch -> StaffColumn.of(List.of(pitch), NoteValue.FREE))
                        .toList());
    }

    /** One chord as it lies around middle C, its symbol over it and its numeral under it. */
    public static StaffMusic chord(Chord chord, Numeral numeral, Key key) {
        StaffColumn column = StaffColumn.of(pitches(ToneRoles.close(chord)), NoteValue.WHOLE)
                .named(Phrase.of("{0}", chord), Phrase.of("{0}", numeral));
        return free(Phrase.of("{0}", chord), key.signature(), List.of(column));
    }

    private static StaffMusic free(Phrase title, int signature, List<StaffColumn> columns) {
        return StaffMusic.of(
                title,
                signature,
                columns.stream()
                        .map(column -> StaffBar.of(List.of(column), StaffBar.BarLine.NONE))
                        .toList());
    }

    /** Up to its octave, with the signature that is written for it, if one is. */
    public static StaffMusic scale(Scale scale) {
        return scale(scale, List.of(), List.of());
    }

    /**
     * The same with a figure over and one under each note, such as fingers.
     *
     * @param over one for each note, or none at all
     * @param under one for each note, or none at all
     */
    public static StaffMusic scale(Scale scale, List<Integer> over, List<Integer> under) {
        List<Pitch> pitches = pitches(ToneRoles.marked(scale));
        List<StaffColumn> columns = new ArrayList<>();
        for (int i = 0; i < pitches.size(); i++) {
            columns.add(StaffColumn.of(List.of(pitches.get(i)), NoteValue.QUARTER)
                    .named(figure(over, i), figure(under, i)));
        }
        return free(Phrase.of("{0}", scale), scale.signature().orElse(0), columns);
    }

    private static Phrase figure(List<Integer> figures, int index) {
        return figures.isEmpty() ? Phrase.NOTHING : Phrase.of("{0}", figures.get(index));
    }

    private static List<Pitch> pitches(List<MarkedKey> marks) {
        return marks.stream().map(MarkedKey::pitch).toList();
    }

    /** What the right hand plays where a progression is accompanied. */
    public static StaffMusic progression(Progression progression) {
        List<List<Pitch>> right = Comping.voicings(Arrangement.changes(progression)).stream()
                .map(TimedVoicing::hands)
                .map(Voicing::right)
                .toList();
        return StaffMusic.of(
                title(progression),
                progression.key().signature(),
                bars(
                        progression,
                        right.stream().map(hand -> new Voicing(List.of(), hand)).toList()));
    }

    /**
     * Both hands on a grand staff.
     *
     * @param voicings one for each chord that is struck
     */
    public static StaffMusic voiced(Progression progression, List<Voicing> voicings) {
        int signs = progression.key().isInUse() ? progression.key().signature() : 0;
        return StaffMusic.barred(title(progression), signs, true, bars(progression, voicings));
    }

    private static Phrase title(Progression progression) {
        return Phrase.of("{0} in {1}", Phrase.row(progression.symbols()), progression.key());
    }

    private static List<StaffBar> bars(Progression progression, List<Voicing> voicings) {
        boolean told = progression.bars().stream().allMatch(MusicOnStaff::hasValues);
        List<StaffBar> bars = new ArrayList<>();
        int struck = 0;
        for (Bar bar : progression.bars()) {
            List<StaffColumn> columns = new ArrayList<>();
            int shares = 0;
            for (ChordEvent slot : bar.slots()) {
                struck += slot.held() ? 0 : 1;
                Voicing voicing = voicings.get(Math.max(0, struck - 1));
                columns.add(column(slot, voicing, told ? value(progression, bar, slot) : NoteValue.FREE)
                        .at(Beats.of(4L * shares, bar.shares())));
                shares += slot.shares();
            }
            if (progression.barred()) {
                bars.add(StaffBar.of(columns, StaffBar.BarLine.SINGLE));
            } else {
                columns.forEach(column -> bars.add(StaffBar.of(List.of(column), StaffBar.BarLine.NONE)));
            }
        }
        if (progression.barred()) {
            bars.add(bars.remove(bars.size() - 1).with(StaffBar.BarLine.FINAL));
        }
        return bars;
    }

    /** A chord that goes on from the bar before leaves its place empty. */
    private static StaffColumn column(ChordEvent slot, Voicing voicing, NoteValue value) {
        return slot.held()
                ? StaffColumn.of(List.of(), NoteValue.FREE)
                : StaffColumn.hands(voicing.right(), voicing.left(), NoteLength.of(value))
                        .under(slot.chord())
                        .named(Phrase.of("{0}", slot.chord()), Phrase.of("{0}", slot.numeral()));
    }

    /** Whether each of its chords is struck in it and lasts a bar of four beats, half of it or a quarter. */
    private static boolean hasValues(Bar bar) {
        return bar.slots().stream()
                .allMatch(slot ->
                        !slot.held() && bar.shares() % slot.shares() == 0 && 4 % (bar.shares() / slot.shares()) == 0);
    }

    /** Without bar lines nothing is told but that all last as long. */
    private static NoteValue value(Progression progression, Bar bar, ChordEvent slot) {
        if (!progression.barred()) {
            return NoteValue.WHOLE;
        }
        return switch (bar.shares() / slot.shares()) {
            case 1 -> NoteValue.WHOLE;
            case 2 -> NoteValue.HALF;
            default -> NoteValue.QUARTER;
        };
    }
}
