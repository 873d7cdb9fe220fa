package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Progression;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/** Judges each stretch of a tune by the rules of {@link Fit}. */
final class Fitting {
    private static final Beats BREATH = Beats.of(1, 2);
    private static final int WHOLE_STEP = 2;
    private static final int LETTERS = 7;

    private final Melody melody;
    private final Progression progression;
    private final List<NoteOverChord> stretches;

    Fitting(Melody melody, Progression progression) {
        this.melody = melody;
        this.progression = progression;
        this.stretches = NotesOverChords.of(melody, progression);
    }

    Fit fit() {
        List<FitNote> notes = new ArrayList<>(stretches.size());
        for (int i = 0; i < stretches.size(); i++) {
            notes.add(note(i));
        }
        return new Fit(melody, progression, notes);
    }

    private FitNote note(int i) {
        return stretches.get(i).judged(role(i), progression.key());
    }

    private NoteRole role(int i) {
        NoteOverChord here = stretches.get(i);
        if (here.span() == null) {
            return NoteRole.FREE;
        }
        return role(here, before(stretches, i), after(stretches, i));
    }

    /** What sounds ahead without a rest to speak of, or null. */
    static NoteOverChord before(List<NoteOverChord> stretches, int i) {
        return i > 0 && joins(stretches.get(i - 1), stretches.get(i)) ? stretches.get(i - 1) : null;
    }

    /** What sounds behind without a rest to speak of, or null. */
    static NoteOverChord after(List<NoteOverChord> stretches, int i) {
        boolean last = i + 1 == stretches.size();
        return !last && joins(stretches.get(i), stretches.get(i + 1)) ? stretches.get(i + 1) : null;
    }

    private static boolean joins(NoteOverChord one, NoteOverChord next) {
        return next.start().minus(one.end()).compareTo(BREATH) <= 0;
    }

    static NoteRole role(NoteOverChord here, NoteOverChord before, NoteOverChord after) {
        Standing standing = here.standing();
        if (standing == Standing.CHORD_TONE) {
            return NoteRole.CHORD_TONE;
        }
        if (isSuspended(here, before, after)) {
            return NoteRole.SUSPENSION;
        }
        if (isEarly(here, after)) {
            return NoteRole.ANTICIPATION;
        }
        NoteRole figure = here.isExposed() ? leaning(here, standing, after) : figure(here, before, after);
        return figure != null ? figure : isColour(standing) ? NoteRole.TENSION : NoteRole.CLASH;
    }

    private static boolean isColour(Standing standing) {
        return standing == Standing.COLOUR || standing == Standing.TENSE;
    }

    private static boolean isSuspended(NoteOverChord here, NoteOverChord before, NoteOverChord after) {
        boolean prepared = before != null
                && before.span() != null
                && before.pitch().soundsLike(here.pitch())
                && !before.span().equals(here.span())
                && before.standing().isRestful();
        return prepared && after != null && isStep(here, after) && standsWell(after) && !contradictsTone(here);
    }

    /** Whether the chord has the note's letter with another sign: A over F minor is a false relation, and no suspension. */
    private static boolean contradictsTone(NoteOverChord here) {
        int note = here.pitch().name().fifths();
        return here.span().chord().tones().stream()
                .mapToInt(tone -> tone.fifths() - note)
                .anyMatch(apart -> apart != 0 && apart % LETTERS == 0);
    }

    private static boolean standsWell(NoteOverChord stretch) {
        return stretch.span() != null && stretch.standing().isRestful();
    }

    private static boolean isEarly(NoteOverChord here, NoteOverChord after) {
        return after != null
                && here.beats().compareTo(Beats.ONE) <= 0
                && after.span() != null
                && after.pitch().soundsLike(here.pitch())
                && !after.span().equals(here.span())
                && after.standing() == Standing.CHORD_TONE;
    }

    private static NoteRole leaning(NoteOverChord here, Standing standing, NoteOverChord after) {
        boolean falls = after != null && isStep(here, after) && rise(here, after) < 0;
        boolean home = falls && after.span() != null && after.standing() == Standing.CHORD_TONE;
        return standing == Standing.SUSPENSION_ONLY && home ? NoteRole.APPOGGIATURA : null;
    }

    private static NoteRole figure(NoteOverChord here, NoteOverChord before, NoteOverChord after) {
        if (before == null || after == null) {
            return null;
        }
        boolean stepIn = isStep(before, here);
        boolean stepOut = isStep(here, after);
        boolean onward = rise(before, here) > 0 == rise(here, after) > 0;
        if (stepIn && stepOut) {
            return onward ? NoteRole.PASSING : returns(before, after) ? NoteRole.NEIGHBOUR : null;
        }
        boolean leapIn = isLeap(before, here);
        boolean leapOut = isLeap(here, after);
        return stepIn && leapOut && !onward ? NoteRole.ESCAPE : leapIn && stepOut ? NoteRole.APPOGGIATURA : null;
    }

    private static boolean returns(NoteOverChord before, NoteOverChord after) {
        return before.pitch().staffPosition() == after.pitch().staffPosition();
    }

    private static int rise(NoteOverChord one, NoteOverChord next) {
        return next.pitch().midiNumber() - one.pitch().midiNumber();
    }

    /** To the next letter, or a half step on the same one. */
    private static boolean isStep(NoteOverChord one, NoteOverChord next) {
        Pitch from = one.pitch();
        Pitch to = next.pitch();
        int letters = Math.abs(to.staffPosition() - from.staffPosition());
        int halfSteps = Math.abs(rise(one, next));
        return halfSteps > 0 && (letters == 1 || halfSteps <= WHOLE_STEP);
    }

    private static boolean isLeap(NoteOverChord one, NoteOverChord next) {
        return rise(one, next) != 0 && !isStep(one, next);
    }
}
