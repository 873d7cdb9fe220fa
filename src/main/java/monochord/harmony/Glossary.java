package monochord.harmony;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/**
 * Words of the trade, each told in two sentences with an example in a key. What they mean is said as in Open Music Theory
 * (2014 and version 2); where a band says it otherwise, as common practice has it, no source.
 */
public final class Glossary {
    private static final Pattern ASKED = Pattern.compile(
            "(what('?s| is| are| does)?|explain|define|meaning of) +|\\b(an?|the) +| +mean(ing)?$|[?!. ]+$");

    private static final Map<String, Function<Key, Phrase>> WORDS = Map.ofEntries(
            Map.entry("suspension", Glossary::suspension),
            Map.entry("tritone", Glossary::tritone),
            Map.entry("triad", Glossary::triad),
            Map.entry("seventh chord", Glossary::seventh),
            Map.entry("inversion", Glossary::inversion),
            Map.entry("interval", Glossary::interval),
            Map.entry("half step", Glossary::halfStep),
            Map.entry("whole step", Glossary::wholeStep),
            Map.entry("tonic", Glossary::tonic),
            Map.entry("dominant", Glossary::dominant),
            Map.entry("subdominant", Glossary::subdominant),
            Map.entry("leading note", Glossary::leading),
            Map.entry("cadence", Glossary::cadence),
            Map.entry("borrowed chord", Glossary::borrowed),
            Map.entry("applied dominant", Glossary::applied),
            Map.entry("relative", Glossary::relative),
            Map.entry("parallel", Glossary::parallel),
            Map.entry("key signature", Glossary::signature),
            Map.entry("common tone", Glossary::common),
            Map.entry("voice leading", Glossary::leadingOfVoices),
            Map.entry("voicing", Glossary::voicing),
            Map.entry("mode", Glossary::mode),
            Map.entry("scale degree", Glossary::degree),
            Map.entry("slash chord", Glossary::slash),
            Map.entry("octave", Glossary::octave),
            Map.entry("comping", Glossary::comping),
            Map.entry("pedal point", Glossary::pedal),
            Map.entry("walking bass", Glossary::walking));

    private static final Map<String, String> OTHERWISE = Map.ofEntries(
            Map.entry("semitone", "half step"),
            Map.entry("degree", "scale degree"),
            Map.entry("chord voicing", "voicing"),
            Map.entry("church mode", "mode"),
            Map.entry("whole tone", "whole step"),
            Map.entry("tone", "whole step"),
            Map.entry("leading tone", "leading note"),
            Map.entry("modal interchange", "borrowed chord"),
            Map.entry("secondary dominant", "applied dominant"),
            Map.entry("relative minor", "relative"),
            Map.entry("relative major", "relative"),
            Map.entry("relative key", "relative"),
            Map.entry("parallel minor", "parallel"),
            Map.entry("parallel major", "parallel"),
            Map.entry("parallel key", "parallel"),
            Map.entry("sus chord", "suspension"),
            Map.entry("pedal", "pedal point"),
            Map.entry("bass pedal", "pedal point"),
            Map.entry("comp", "comping"),
            Map.entry("sus4", "suspension"));

    private Glossary() {}

    /** The word told, if the whole line is one, or asks for one; nothing else. */
    public static Optional<Phrase> explain(String line, Key key) {
        if (line.length() > 60) {
            return Optional.empty();
        }
        String asked = ASKED.matcher(line.strip().toLowerCase(Locale.ROOT)).replaceAll("");
        return find(asked)
                .or(() -> asked.endsWith("s") ? find(asked.substring(0, asked.length() - 1)) : Optional.empty())
                .map(word -> word.apply(key));
    }

    private static Optional<Function<Key, Phrase>> find(String word) {
        return Optional.ofNullable(WORDS.get(OTHERWISE.getOrDefault(word, word)));
    }

    /** Every word there is, in no order. */
    public static Iterable<String> words() {
        return WORDS.keySet();
    }

    private static Phrase notes(Key key, int... degrees) {
        List<NoteName> names = IntStream.of(degrees).mapToObj(key::note).toList();
        return Phrase.row(names);
    }

    private static Phrase suspension(Key key) {
        return Phrase.sentence(
                        "A suspension holds a note of the chord before in place of the third, most often the fourth.")
                .then(Phrase.sentence(
                        "In {0}: {1} over the root {2}, and then {3} steps down to the third.",
                        key, notes(key, 5, 1, 2), key.note(5), key.note(1)));
    }

    private static Phrase tritone(Key key) {
        Key major = major(key);
        return Phrase.sentence("A tritone is an interval of three whole steps, half of an octave.")
                .then(Phrase.sentence(
                        "In {0} it lies between {1} and {2}, and it wants to close or to open.",
                        major, major.note(4), major.note(7)));
    }

    private static Phrase triad(Key key) {
        return Phrase.sentence("A triad is a chord of three notes, a third and a fifth above a root.")
                .then(Phrase.sentence("In {0} the one on the first degree is {1}.", key, notes(key, 1, 3, 5)));
    }

    private static Phrase seventh(Key key) {
        return Phrase.sentence("A seventh chord is a triad with one more third on top, a seventh above the root.")
                .then(Phrase.sentence("In {0} the one on the second degree is {1}.", key, notes(key, 2, 4, 6, 1)));
    }

    private static Phrase inversion(Key key) {
        return Phrase.sentence("An inversion is the same chord with another of its notes in the bass.")
                .then(Phrase.sentence(
                        "In {0}: {1} is the first chord with its third lowest.", key, notes(key, 3, 5, 1)));
    }

    private static Phrase interval(Key key) {
        return Phrase.sentence(
                        "An interval is how far two notes are apart: count the letters for its number, the half steps for its size.")
                .then(Phrase.sentence("In {0}, from {1} up to {2} is a perfect fifth.", key, key.note(1), key.note(5)));
    }

    private static Phrase halfStep(Key key) {
        Key major = major(key);
        return Phrase.sentence("A half step leads to the very next key of the keyboard, black or white.")
                .then(Phrase.sentence(
                        "In {0} there are two: {1} to {2}, and {3} to {4}.",
                        major, major.note(3), major.note(4), major.note(7), major.note(1)));
    }

    private static Phrase wholeStep(Key key) {
        Key major = major(key);
        return Phrase.sentence("A whole step is two half steps: one key of the keyboard lies between.")
                .then(Phrase.sentence("In {0}: {1} to {2}.", major, major.note(1), major.note(2)));
    }

    private static Phrase tonic(Key key) {
        return Phrase.sentence("The tonic is the note on which a key is at home, and the chord on it.")
                .then(Phrase.sentence("In {0} it is {1}, with the chord {2}.", key, key.note(1), notes(key, 1, 3, 5)));
    }

    private static Phrase dominant(Key key) {
        Key major = major(key);
        return Phrase.sentence("The dominant is the fifth degree and the chord on it, which wants to go home.")
                .then(Phrase.sentence(
                        "In {0} it is {1}, and its third, {2}, leads to {3}.",
                        major, notes(major, 5, 7, 2), major.note(7), major.note(1)));
    }

    private static Phrase subdominant(Key key) {
        return Phrase.sentence("The subdominant is the fourth degree and the chord on it, which leads away from home.")
                .then(Phrase.sentence("In {0} it is {1}.", key, notes(key, 4, 6, 1)));
    }

    private static Phrase leading(Key key) {
        Key major = major(key);
        return Phrase.sentence("The leading note is the seventh degree, a half step below home.")
                .then(Phrase.sentence("In {0} it is {1}, and it leads to {2}.", major, major.note(7), major.note(1)));
    }

    private static Phrase cadence(Key key) {
        Key major = major(key);
        return Phrase.sentence("A cadence is how a phrase comes to its rest; the plainest goes from the dominant home.")
                .then(Phrase.sentence("In {0}: {1}, then {2}.", major, notes(major, 5, 7, 2), notes(major, 1, 3, 5)));
    }

    private static Phrase borrowed(Key key) {
        Key minor = minor(key);
        return Phrase.sentence(
                        "A borrowed chord belongs to another mode on the same tonic, most often to the parallel minor.")
                .then(Phrase.sentence(
                        "In {0}: {1}, the chord on the lowered sixth, from {2}.",
                        minor.parallel(), notes(minor, 6, 1, 3), minor));
    }

    private static Phrase applied(Key key) {
        Key major = major(key);
        Key fifth = Key.major(major.note(5));
        return Phrase.sentence("An applied dominant is the dominant of another chord than home, for a moment.")
                .then(Phrase.sentence(
                        "In {0}: {1} leads to {2}, the fifth degree.", major, notes(fifth, 5, 7, 2), major.note(5)));
    }

    private static Phrase relative(Key key) {
        return Phrase.sentence("Relative keys have the same notes and another home, a minor third apart.")
                .then(Phrase.sentence("That of {0} is {1}.", key, key.relative()));
    }

    private static Phrase parallel(Key key) {
        return Phrase.sentence("Parallel keys have the same home and another third, sixth and seventh.")
                .then(Phrase.sentence("That of {0} is {1}.", key, key.parallel()));
    }

    private static Phrase signature(Key key) {
        return Phrase.sentence("A key signature gathers the sharps or flats of a key at the beginning of each line.")
                .then(Phrase.sentence("The notes of {0} are {1}.", key, notes(key, 1, 2, 3, 4, 5, 6, 7)));
    }

    private static Phrase comping(Key key) {
        return Phrase.sentence(
                        "Comping is how the hands strike chords below a tune or a solo, in a rhythm and with gaps left for it.")
                .then(Phrase.sentence(
                        "In {0}: the bass {1} on the first beat, the chord {2} short behind it.",
                        key, key.note(1), notes(key, 1, 3, 5)));
    }

    private static Phrase pedal(Key key) {
        return Phrase.sentence("A pedal point is one note held in the bass while the chords above it change.")
                .then(Phrase.sentence(
                        "In {0}: {1} in the bass, above it {2}, then {3}.",
                        key, key.note(1), notes(key, 1, 3, 5), notes(key, 4, 6, 1)));
    }

    private static Phrase walking(Key key) {
        Key major = major(key);
        return Phrase.sentence("A walking bass plays a note on every beat and steps into the root of the next chord.")
                .then(Phrase.sentence("In {0}, up to {1}: {2}.", major, major.note(4), notes(major, 1, 2, 3, 4)));
    }

    private static Phrase common(Key key) {
        return Phrase.sentence("A common tone belongs to two chords in a row, so that a finger can stay on it.")
                .then(Phrase.sentence(
                        "In {0}, {1} and {2} share {3}.", key, notes(key, 1, 3, 5), notes(key, 4, 6, 1), key.note(1)));
    }

    /** The key, or for a minor one its relative: where steps and leading note are the plain ones. */
    private static Key major(Key key) {
        return key.isMinor() ? key.relative() : key;
    }

    private static Key minor(Key key) {
        return key.isMinor() ? key : key.parallel();
    }

    private static Phrase leadingOfVoices(Key key) {
        return Phrase.sentence(
                        "Voice leading is how each voice goes from one chord to the next, the nearest way as a rule.")
                .then(Phrase.sentence(
                        "In {0}, from {1} to {2}, {3} stays and the others move by step.",
                        key, notes(key, 1, 3, 5), notes(key, 1, 4, 6), key.note(1)));
    }

    private static Phrase voicing(Key key) {
        return Phrase.sentence("A voicing lays a chord out: which hand plays which of its notes, and how high.")
                .then(Phrase.sentence(
                        "In {0}: {1} alone in the left hand and {2} in the right.",
                        key, key.note(1), notes(key, 5, 1, 3)));
    }

    private static Phrase mode(Key key) {
        return Phrase.sentence("A mode is a scale by where home lies among its steps: the same notes, another tonic.")
                .then(Phrase.sentence("The notes of {0} begun on {1} are another mode.", key, key.note(2)));
    }

    private static Phrase degree(Key key) {
        return Phrase.sentence("A degree is the place of a note in its scale, the tonic being the first.")
                .then(Phrase.sentence("In {0} the fifth degree is {1}.", key, key.note(5)));
    }

    private static Phrase slash(Key key) {
        return Phrase.sentence("A slash chord names the chord before the slash and the bass behind it.")
                .then(Phrase.sentence(
                        "In {0}: {1} over the bass {2} is an inversion.", key, notes(key, 1, 3, 5), key.note(3)));
    }

    private static Phrase octave(Key key) {
        return Phrase.sentence("An octave leads to the next key of the same name, twelve half steps away.")
                .then(Phrase.sentence("In {0} the scale comes home to {1} after seven steps.", key, key.note(1)));
    }
}
