package monochord.harmony.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.ChordOrigin;
import monochord.harmony.Progression;
import monochord.harmony.after.Continuation;
import monochord.harmony.after.Continuations;
import monochord.harmony.after.SongCounts;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * A chord that carries a note of a tune, between the chord before and the one it goes to.
 *
 * <p>Looked at are the key's own triads and sevenths, the common borrowed chords, and the dominants of the key's own
 * chords, with the root or the third in the bass. What is better stands first: how strong the reason is by which the chord
 * goes to its goal and comes from the one before, as {@link Continuations} knows it; one of the key's own before a
 * foreign one; and a bass that goes by step, a fourth or a fifth. The weights are ours, no source.
 *
 * @param bass the chord with the tone in the bass that makes the better line
 * @param why in sentences, each true of that place
 */
public record CarryingChord(Chord bass, Numeral numeral, List<Phrase> why, double worth) {
    private static final List<Numeral> BORROWED_IN_MAJOR =
            numerals("bVI", "bVII", "iv", "bIII", "iio", "bII", "i", "v", "viio7", "iiø7");
    private static final List<Numeral> BORROWED_IN_MINOR = numerals("IV", "v", "bII", "I", "ii", "viio7", "vi");
    private static final double OWN = 3;
    private static final double SEVENTH_CHORD = 1;
    private static final double INVERTED = 1.5;
    private static final double BEFORE = 0.5;

    public CarryingChord {
        why = List.copyOf(why);
    }

    private static List<Numeral> numerals(String... names) {
        return Stream.of(names).map(Numeral::parse).toList();
    }

    /**
     * Every chord that carries the note, the best first.
     *
     * @param before the chord before, or null
     * @param goal the chord behind, or null
     */
    public static List<CarryingChord> of(NoteName note, Chord before, Chord goal, Key key) {
        return candidates(key).stream()
                .filter(chord -> chord.holds(note))
                .filter(chord -> !isSame(chord, before) && !isSame(chord, goal))
                .map(chord -> best(chord, note, before, goal, key))
                .sorted(Comparator.comparingDouble(CarryingChord::worth).reversed())
                .toList();
    }

    private static boolean isSame(Chord chord, Chord other) {
        return other != null
                && chord.root().equals(other.root())
                && chord.kind().quality() == other.kind().quality();
    }

    private static List<Chord> candidates(Key key) {
        Map<Chord, Chord> chords = new LinkedHashMap<>();
        List<Chord> own = IntStream.rangeClosed(1, 7)
                .mapToObj(degree -> Progression.parse(Integer.toString(degree), key)
                        .chords()
                        .get(0))
                .toList();
        own.forEach(chord -> chords.put(chord, chord));
        own.stream()
                .flatMap(chord -> PlainChords.withSeventh(chord, key).stream())
                .forEach(chord -> chords.put(chord, chord));
        Stream.concat(numerals("V7").stream(), (key.isMinor() ? BORROWED_IN_MINOR : BORROWED_IN_MAJOR).stream())
                .map(numeral -> numeral.in(key))
                .forEach(chord -> chords.putIfAbsent(chord, chord));
        own.stream()
                .filter(chord -> chord.kind().holds(Interval.PERFECT_FIFTH) && !chord.root().equals(key.tonic()))
                .map(goal -> Numeral.parse("V7").appliedTo(Numeral.of(goal, key)).in(key))
                .forEach(chord -> chords.putIfAbsent(chord, chord));
        return List.copyOf(chords.values());
    }

    private static CarryingChord best(Chord chord, NoteName note, Chord before, Chord goal, Key key) {
        Chord inverted = chord.over(chord.root().plus(chord.kind().interval(3).orElse(Interval.UNISON)));
        double upright = line(before, chord, goal);
        double turned = line(before, inverted, goal) - INVERTED;
        Chord bass = turned > upright ? inverted : chord;
        double worth = Math.max(turned, upright)
                + way(chord, goal, key).map(Continuation::weight).orElse(0)
                + BEFORE * way(before, chord, key).map(Continuation::weight).orElse(0)
                + (key.isOwn(chord) ? OWN : 0)
                - (chord.kind().intervals().size() > 3 ? SEVENTH_CHORD : 0);
        return new CarryingChord(bass, Numeral.of(bass, key), why(chord, bass, note, before, goal, key), worth);
    }

    private static Optional<Continuation> way(Chord from, Chord to, Key key) {
        return from == null || to == null
                ? Optional.empty()
                : Continuations.way(Numeral.of(from, key), Numeral.of(to, key), key, SongCounts.NONE);
    }

    private static double line(Chord before, Chord chord, Chord goal) {
        return move(before, chord) + move(chord, goal);
    }

    /** What a move of the bass is worth. */
    private static double move(Chord from, Chord to) {
        if (from == null || to == null) {
            return 0;
        }
        return switch (from.bass().to(to.bass()).number()) {
            case 2, 7 -> 2;
            case 4, 5 -> 1.5;
            case 3, 6 -> 0.5;
            default -> 0;
        };
    }

    private static List<Phrase> why(
            Chord chord, Chord bass, NoteName note, Chord before, Chord goal, Key key) {
        List<Phrase> said = new ArrayList<>();
        said.add(Phrase.sentence(
                "{0} is its {1}.", note, part(chord.root().to(note))));
        way(chord, goal, key)
                .ifPresent(way -> said.add(Phrase.sentence("On to {0}: {1}.", goal, way.reason())));
        stepping(before, bass, goal).ifPresent(said::add);
        if (!key.isOwn(chord)) {
            said.add(Phrase.sentence(
                    "{0}.", ChordOrigin.of(chord, Numeral.of(chord, key), key)));
        }
        return said;
    }

    private static Phrase part(Interval above) {
        return above.number() == 1 ? Phrase.of("root") : MusicWords.number(above.number());
    }

    private static Optional<Phrase> stepping(Chord before, Chord bass, Chord goal) {
        if (before == null || goal == null) {
            return Optional.empty();
        }
        List<NoteName> line = List.of(before.bass(), bass.bass(), goal.bass());
        boolean byStep = isStep(line.get(0), line.get(1)) && isStep(line.get(1), line.get(2));
        return byStep ? Optional.of(Phrase.sentence("The bass steps {0}.", Phrase.row(line))) : Optional.empty();
    }

    private static boolean isStep(NoteName from, NoteName to) {
        int number = from.to(to).number();
        return number == 2 || number == 7;
    }
}
