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
import monochord.harmony.after.ChordMove;
import monochord.harmony.key.ChordTable;
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
 * chords, with the root or the third in the bass. First stands what songs do most: how likely the chord is after the one
 * before, and the goal after it, as the table has it; then what makes the better bass: by step, by a fourth or a fifth.
 * What the bass, an inversion and a seventh weigh is ours, common practice, no source.
 *
 * @param bass the chord with the tone in the bass that makes the better line
 * @param why in sentences, each true of that place
 * @param worth logarithms of likelihoods and what the bass is worth
 */
public record CarryingChord(Chord bass, Numeral numeral, List<Phrase> why, double worth) {
    private static final List<Numeral> BORROWED_IN_MAJOR =
            numerals("bVI", "bVII", "iv", "bIII", "iio", "bII", "i", "v", "viio7", "iiø7");
    private static final List<Numeral> BORROWED_IN_MINOR = numerals("IV", "v", "bII", "I", "ii", "viio7", "vi");
    private static final double SEVENTH_CHORD = 0.5;
    private static final double INVERTED = 1.5;
    private static final double BY_STEP = 1;
    private static final double BY_FOURTH = 0.75;
    private static final double BY_THIRD = 0.25;

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
    public static List<CarryingChord> of(NoteName note, Chord before, Chord goal, Key key, ChordTable table) {
        Neighbours place = new Neighbours(before, goal, key, table);
        return candidates(key).stream()
                .filter(chord -> chord.holds(note))
                .map(chord -> place.best(chord, note))
                .sorted(Comparator.comparingDouble(CarryingChord::worth).reversed())
                .toList();
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
                .filter(chord -> chord.kind().holds(Interval.PERFECT_FIFTH)
                        && !chord.root().equals(key.tonic()))
                .map(goal ->
                        Numeral.parse("V7").appliedTo(Numeral.of(goal, key)).in(key))
                .forEach(chord -> chords.putIfAbsent(chord, chord));
        return List.copyOf(chords.values());
    }

    /** Between two chords, or beside one, or alone. */
    private record Neighbours(Chord before, Chord goal, Key key, ChordTable table) {
        CarryingChord best(Chord chord, NoteName note) {
            Chord inverted =
                    chord.over(chord.root().plus(chord.kind().interval(3).orElse(Interval.UNISON)));
            double upright = line(chord);
            double turned = line(inverted) - INVERTED;
            Chord bass = turned > upright ? inverted : chord;
            double worth = Math.max(turned, upright)
                    + likelihood(chord)
                    - (chord.kind().intervals().size() > 3 ? SEVENTH_CHORD : 0);
            return new CarryingChord(bass, Numeral.of(bass, key), why(chord, bass, note), worth);
        }

        private double likelihood(Chord chord) {
            double after = before == null ? time(chord) : next(before, chord);
            return after + (goal == null ? 0 : next(chord, goal));
        }

        private double time(Chord chord) {
            return table.time(key.isMinor(), ChordTable.chord(chord, key.tonic()));
        }

        /** A chord that stays is as likely as its share of all. */
        private double next(Chord from, Chord to) {
            int first = ChordTable.chord(from, key.tonic());
            int second = ChordTable.chord(to, key.tonic());
            return first == second ? time(to) : table.next(key.isMinor(), first, second);
        }

        private double line(Chord chord) {
            return move(before, chord) + move(chord, goal);
        }

        private List<Phrase> why(Chord chord, Chord bass, NoteName note) {
            List<Phrase> said = new ArrayList<>();
            said.add(Phrase.sentence("{0} is its {1}.", note, part(chord.root().to(note))));
            if (chord.equals(before)) {
                said.add(Phrase.sentence("The chord before stays."));
            }
            if (chord.equals(goal)) {
                said.add(Phrase.sentence("The chord behind comes early."));
            } else if (goal != null) {
                said.add(onward(chord));
            }
            stepping(bass).ifPresent(said::add);
            origin(chord).ifPresent(said::add);
            return said;
        }

        private Phrase onward(Chord chord) {
            return SlotReasons.leading(chord, goal, key)
                    .orElseGet(() -> Phrase.sentence("On to {0}: {1}.", goal, new ChordMove(chord, goal).inWords()));
        }

        private Optional<Phrase> origin(Chord chord) {
            Numeral numeral = Numeral.of(chord, key);
            if (numeral.target() == null) {
                return key.isOwn(chord)
                        ? Optional.empty()
                        : Optional.of(Phrase.sentence("{0}.", ChordOrigin.of(chord, numeral, key)));
            }
            return goal != null && leadsTo(numeral, goal)
                    ? Optional.empty()
                    : Optional.of(Phrase.sentence(
                            "It is the dominant of {0}.", numeral.target().in(key)));
        }

        private boolean leadsTo(Numeral applied, Chord chord) {
            return applied.target().in(key).root().equals(chord.root());
        }

        private Optional<Phrase> stepping(Chord bass) {
            if (before == null || goal == null) {
                return Optional.empty();
            }
            List<NoteName> line = List.of(before.bass(), bass.bass(), goal.bass());
            boolean byStep = isStep(line.get(0), line.get(1)) && isStep(line.get(1), line.get(2));
            return byStep ? Optional.of(Phrase.sentence("The bass steps {0}.", Phrase.row(line))) : Optional.empty();
        }
    }

    /** What a move of the bass is worth. */
    private static double move(Chord from, Chord to) {
        if (from == null || to == null) {
            return 0;
        }
        return switch (from.bass().to(to.bass()).number()) {
            case 2, 7 -> BY_STEP;
            case 4, 5 -> BY_FOURTH;
            case 3, 6 -> BY_THIRD;
            default -> 0;
        };
    }

    private static Phrase part(Interval above) {
        return above.number() == 1 ? Phrase.of("root") : MusicWords.number(above.number());
    }

    private static boolean isStep(NoteName from, NoteName to) {
        int number = from.to(to).number();
        return number == 2 || number == 7;
    }
}
