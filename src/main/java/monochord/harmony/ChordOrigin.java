package monochord.harmony;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Borrowing.Borrowed;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.note.Degree;

/** Where a chord comes from that stands in a key, in words. */
public final class ChordOrigin {
    private ChordOrigin() {}

    /** The end of a sentence about the chord: {@code borrowed from C minor}. */
    public static Phrase of(Chord chord, Numeral numeral, Key key) {
        if (key.isOwn(chord)) {
            return Phrase.of("one of the key's own chords");
        }
        if (numeral.target() != null) {
            return Phrase.of("its goal is {0}", numeral.target().in(key));
        }
        Optional<Numeral> stoodFor = DominantSubstitute.of(chord, key);
        if (stoodFor.isPresent()) {
            return substitute(chord, stoodFor.get(), key);
        } else if (DominantSubstitute.isBackdoor(chord, key)) {
            return backdoor(sources(chord, key), Numeral.parse("I").in(key));
        }
        Borrowed borrowed = Borrowing.borrowed(chord, key);
        return borrowed.sources().isEmpty()
                ? Phrase.of(
                        "in no parallel mode: it brings the {0}",
                        Phrase.list(borrowed.changed().stream()
                                .map(ChordOrigin::degree)
                                .toList()))
                : Phrase.of("borrowed from {0}", sources(borrowed.sources()));
    }

    /** Fuller chords on the lowered seventh lie in no parallel mode: {@code B♭7♭9} in C. */
    private static Phrase backdoor(List<Scale> sources, Chord tonic) {
        return sources.isEmpty()
                ? Phrase.of("the backdoor dominant, up a whole step to {0}", tonic)
                : Phrase.of(
                        "the backdoor dominant, up a whole step to {0}; borrowed from {1}", tonic, sources(sources));
    }

    private static Phrase substitute(Chord chord, Numeral stoodFor, Key key) {
        Phrase substitute = Phrase.of("the tritone substitute of {0}, {1}", stoodFor, stoodFor.in(key));
        Numeral german = Numeral.parse("Ger65");
        return german.in(key).root().equals(chord.root()) && german.in(key).soundsLike(chord)
                ? Phrase.of(
                        "{0}; going to {1} it sounds as {2}, with {3} for {4}",
                        substitute,
                        Numeral.parse("V").in(key),
                        german,
                        key.note(Degree.of(4, 1)),
                        key.note(Degree.of(5, -1)))
                : substitute;
    }

    /** The parallel scales a chord is borrowed from, nearest first; none for one that stands for a dominant. */
    public static List<Scale> sources(Chord chord, Key key) {
        return DominantSubstitute.of(chord, key).isPresent() ? List.of() : Borrowing.borrowedFrom(chord, key);
    }

    /** In minor the degree of the major scale is a raised one. */
    private static Phrase degree(Degree degree) {
        return degree.alteration() == 0 ? Phrase.of("raised {0}", Phrase.inWords(degree)) : Phrase.inWords(degree);
    }

    /** {@code D minor (also phrygian, locrian)}: the nearest source first, of the others the kind alone. */
    private static Phrase sources(List<Scale> sources) {
        List<Phrase> others = sources.subList(1, sources.size()).stream()
                .map(scale -> Phrase.kind(scale.kind()))
                .toList();
        return others.isEmpty()
                ? Phrase.of("{0}", sources.get(0))
                : Phrase.of("{0} (also {1})", sources.get(0), Phrase.joined(", ", others));
    }

    /** A whole sentence: the source, how bright it is beside the key, and which notes the chord turns into which. */
    public static Phrase sentence(Borrowed borrowed, Key key) {
        List<Scale> sources = borrowed.sources();
        Phrase changes = Phrase.list(borrowed.changed().stream()
                .map(degree -> Phrase.of("{0} into {1}", key.note(degree.number()), key.note(degree)))
                .toList());
        return sources.isEmpty()
                ? Phrase.sentence("No parallel mode holds it; it turns {0}.", changes)
                : Phrase.sentence(
                        "From {0}, {1}; it turns {2}.",
                        sources(sources), Brightness.inWords(sources.get(0), key), changes);
    }
}
