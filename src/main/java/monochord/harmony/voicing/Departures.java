package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Where the voicings of a row depart from their chord symbols: roots left to a bass player, ninths added, tones left out. */
record Departures(VoicedProgression way) {
    List<Phrase> said() {
        List<Phrase> said = new ArrayList<>();
        List<Chord> rootless = chordsWhere((chord, voicing) -> hasBassPlayer() && !sounds(voicing, chord.root()));
        if (!rootless.isEmpty()) {
            said.add(Phrase.counted(
                    rootless.size(),
                    "The bass player has the root of {0}.",
                    "The bass player has the roots of {0}.",
                    Phrase.list(rootless)));
        }
        List<Chord> ninths = chordsWhere(this::hasNinthAdded);
        if (!ninths.isEmpty()) {
            said.add(Phrase.sentence("A ninth of the key is added to {0}.", Phrase.list(ninths)));
        }
        for (int i = 0; i < way.voicings().size(); i++) {
            Chord chord = way.task().chords().get(i);
            List<NoteName> missing = leftOut(chord, way.voicings().get(i));
            if (!missing.isEmpty()) {
                said.add(Phrase.sentence("{0} sounds without {1}.", chord, Phrase.list(missing)));
            }
        }
        return said.stream().distinct().toList();
    }

    private List<Chord> chordsWhere(BiPredicate<Chord, Voicing> test) {
        return IntStream.range(0, way.voicings().size())
                .filter(i ->
                        test.test(way.task().chords().get(i), way.voicings().get(i)))
                .mapToObj(way.task().chords()::get)
                .distinct()
                .toList();
    }

    private boolean hasBassPlayer() {
        return !way.task().style().choice().hasBass();
    }

    private boolean hasNinthAdded(Chord chord, Voicing voicing) {
        return hasBassPlayer()
                && !way.task().hasTune()
                && voicing.pitches().stream().anyMatch(pitch -> !chord.holds(pitch.name()));
    }

    private static boolean sounds(Voicing voicing, NoteName name) {
        return voicing.pitches().stream().anyMatch(pitch -> pitch.name().soundsLike(name));
    }

    /** Tones of the chord, but for root and perfect fifth, that no voice has. */
    private static List<NoteName> leftOut(Chord chord, Voicing voicing) {
        return chord.kind().intervals().stream()
                .filter(interval -> interval.number() != 1 && !interval.equals(Interval.PERFECT_FIFTH))
                .map(chord.root()::plus)
                .filter(name -> !sounds(voicing, name))
                .toList();
    }
}
