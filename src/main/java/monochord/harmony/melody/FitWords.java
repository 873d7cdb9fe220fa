package monochord.harmony.melody;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Degree;
import monochord.theory.Interval;
import monochord.theory.NoteName;
import monochord.theory.Pitch;
import monochord.theory.Signs;

/** What a teacher would say about a note over its chord, with the signs of printed music. */
public final class FitWords {
    /** How much of {@link FitWords} is custom rather than rule, to be said once beside it. */
    public static final String ADVICE =
            "Which colours a tune may rest on is custom, not law: take it as advice, and trust your ear.";

    private static final int HALF_STEP = 1;

    private FitWords() {}

    /** One or two sentences. */
    public static String say(FitNote note, Fit fit) {
        String name = name(note.pitch());
        if (note.role() == NoteRole.FREE) {
            return name + " comes before any chord, so it is free.";
        }
        String chord = note.span().chord().write(Signs.MUSIC);
        return switch (note.role()) {
            case CHORD_TONE -> chordTone(note, chord);
            case TENSION ->
                name + " colours " + chord + " as its "
                        + beyond(note.pitch().name(), note.span().chord().root()) + edge(note);
            case PASSING -> name + " passes by step" + over(chord);
            case NEIGHBOUR -> name + " steps away and comes back" + over(chord);
            case SUSPENSION -> name + " is held over from before and goes on by step: a suspension" + over(chord);
            case ANTICIPATION -> name + " comes early: it belongs to the next chord.";
            case ESCAPE -> name + " is reached by step and left by a leap: it escapes" + over(chord);
            case APPOGGIATURA -> name + " leans on the next note" + over(chord);
            default -> clash(note, fit);
        };
    }

    private static String over(String chord) {
        return " over " + chord + ".";
    }

    private static String edge(FitNote note) {
        return note.standing() == Standing.TENSE ? ", a sharp colour: mean it." : ".";
    }

    private static String chordTone(FitNote note, String chord) {
        String name = name(note.pitch());
        NoteName sung = note.pitch().name();
        Optional<NoteName> tone =
                note.span().chord().tones().stream().filter(sung::soundsLike).findFirst();
        if (tone.isEmpty()) {
            return name + " is the bass note of " + chord + ".";
        }
        String place = place(tone.get(), note.span().chord());
        return tone.get().equals(sung)
                ? name + " is the " + place + " of " + chord + "."
                : name + " sounds as " + tone.get().write(Signs.MUSIC) + ", the " + place + " of " + chord + ".";
    }

    /** Which of the chord's own tones it is: {@code root}, {@code third}, {@code thirteenth}. */
    private static String place(NoteName tone, Chord chord) {
        Interval above = chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).equals(tone))
                .findFirst()
                .orElseThrow();
        return above.number() == 1 ? "root" : above.numberInWords();
    }

    /**
     * What a note from outside the chord is above its root, by its letter: a second and a raised fourth as players call them
     * over a chord, {@code raised eleventh}; a third and a seventh by their quality, {@code major seventh}.
     */
    static String beyond(NoteName note, NoteName root) {
        Degree above = Degree.ofFifths(note.fifths() - root.fifths());
        return switch (above.number()) {
            case 1 -> above.interval().plus(Interval.OCTAVE).inWords();
            case 3, 7 -> above.interval().inWords();
            case 2 -> above.inWords().replace("second", "ninth");
            case 4 -> above.alteration() > 0 ? above.inWords().replace("fourth", "eleventh") : above.inWords();
            default -> above.inWords();
        };
    }

    private static int above(NoteName note, NoteName root) {
        return Math.floorMod(note.pitchClass() - root.pitchClass(), 12);
    }

    private static String clash(FitNote note, Fit fit) {
        String chord = note.span().chord().write(Signs.MUSIC);
        String why = note.standing() == Standing.SUSPENSION_ONLY
                ? " is the fourth over " + chord + ": good as a suspension that falls, not to rest on."
                : rubbed(note)
                        .map(tone -> " rubs against the " + tone + ".")
                        .orElse(" does not settle over " + chord + ".");
        return name(note.pitch()) + why + advice(note, fit);
    }

    /** The tone of the chord a half step away, the lower one first, with what it is. */
    private static Optional<String> rubbed(FitNote note) {
        Chord chord = note.span().chord();
        NoteName sung = note.pitch().name();
        return chord.tones().stream()
                .filter(tone -> isHalfStep(above(sung, tone)))
                .min((one, other) -> Integer.compare(above(sung, one), above(sung, other)))
                .map(tone -> tone.write(Signs.MUSIC) + " of " + chord.write(Signs.MUSIC));
    }

    private static boolean isHalfStep(int above) {
        return above == HALF_STEP || above == 12 - HALF_STEP;
    }

    private static String advice(FitNote note, Fit fit) {
        return note.change()
                .map(change ->
                        " Sing " + name(change.to()) + " there" + foreign(change, fit) + ", or change the chord.")
                .orElse(" Nothing near fits: change the chord.");
    }

    private static String foreign(NoteChange change, Fit fit) {
        boolean own = fit.progression().key().holds(change.to().name());
        return own ? "" : ", the chord's own colour";
    }

    private static String name(Pitch pitch) {
        return pitch.write(Signs.MUSIC);
    }
}
