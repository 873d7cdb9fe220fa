package monochord.harmony.melody;

import java.util.List;
import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Interval;
import monochord.theory.NoteName;
import monochord.theory.Pitch;
import monochord.theory.Signs;

/** What a teacher would say about a note over its chord, with the signs of printed music. */
public final class FitWords {
    /** How much of {@link FitWords} is custom rather than rule, to be said once beside it. */
    public static final String ADVICE =
            "Which colours a tune may rest on is custom, not law: take it as advice, and trust your ear.";

    private static final List<String> ABOVE_ROOT = List.of(
            "root",
            "lowered ninth",
            "ninth",
            "minor third",
            "major third",
            "fourth",
            "raised eleventh",
            "fifth",
            "lowered sixth",
            "sixth",
            "minor seventh",
            "major seventh");
    private static final int HALF_STEP = 1;

    private FitWords() {}

    /** One or two sentences. */
    public static String say(FitNote note, Fit fit) {
        String name = name(note.pitch());
        if (note.role() == Role.FREE) {
            return name + " comes before any chord, so it is free.";
        }
        String chord = note.span().chord().write(Signs.MUSIC);
        return switch (note.role()) {
            case CHORD_TONE -> name + " is the " + place(note) + " of " + chord + ".";
            case TENSION -> name + " colours " + chord + " as its " + place(note) + edge(note);
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

    /** What the note is above the root: {@code third}, {@code raised eleventh}. */
    private static String place(FitNote note) {
        Chord chord = note.span().chord();
        Optional<Interval> tone = chord.kind().intervals().stream()
                .filter(interval ->
                        chord.root().plus(interval).soundsLike(note.pitch().name()))
                .findFirst();
        if (tone.isPresent()) {
            return tone.get().number() == 1 ? "root" : plain(tone.get());
        }
        boolean bass = note.pitch().name().soundsLike(chord.bass());
        return bass ? "bass note" : ABOVE_ROOT.get(above(note.pitch().name(), chord.root()));
    }

    private static String plain(Interval interval) {
        String words = interval.inWords();
        return words.substring(words.indexOf(' ') + 1);
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

    private static String foreign(Change change, Fit fit) {
        boolean own = fit.progression().key().holds(change.to().name());
        return own ? "" : ", the chord's own colour";
    }

    private static String name(Pitch pitch) {
        return pitch.write(Signs.MUSIC);
    }
}
