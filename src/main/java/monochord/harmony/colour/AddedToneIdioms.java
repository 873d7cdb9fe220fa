package monochord.harmony.colour;

import static monochord.harmony.colour.Colour.ENRICHED;
import static monochord.harmony.colour.Colour.SUSPENDED;

import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** Suspensions that resolve, and tones added that can be held over the chord they are added to. */
final class AddedToneIdioms {
    private AddedToneIdioms() {}

    static List<Idiom> all() {
        return List.of(suspended(), added());
    }

    private static Idiom suspended() {
        return Idiom.named("suspended", SUSPENDED, TextbookPage.first("embellishingTones"))
                .worth(7, 0)
                .where(IdiomCondition.PREPARED, IdiomCondition.ANY_BASS)
                .because(change -> Phrase.sentence(
                        "{0} is held over from {1} as a fourth, then falls to {2}, the third of {3}.",
                        change.now(0).root().plus(Interval.PERFECT_FOURTH),
                        change.before(),
                        change.now(1).tones().get(1),
                        change.now(1)))
                .inMajor(
                        "[V] I -> Vsus4|V7sus4,=",
                        "[V] vi -> Vsus4|V7sus4,=",
                        "[V] $ -> Vsus4|V7sus4,=",
                        "V [I] * -> Isus4,=",
                        "V [I] $ -> Isus4,=",
                        "IV [I] * -> Isus4,=",
                        "[V] * -> Vsus4|V7sus4,=")
                .inMinor("[V] i -> Vsus4|V7sus4,=", "[V] * -> Vsus4|V7sus4,=", "[V] $ -> Vsus4|V7sus4,=");
    }

    private static NoteName addition(Change change) {
        return change.now(0).tones().stream()
                .filter(tone -> !change.old(0).holds(tone))
                .findFirst()
                .orElseThrow();
    }

    private static Idiom added() {
        return Idiom.named("added tone", ENRICHED, TextbookPage.COMMON_PRACTICE)
                .worth(4, 0)
                .where(IdiomCondition.ANY_BASS)
                .because(change ->
                        Phrase.sentence("{0} colours {1} and can be held over it.", addition(change), change.old(0)))
                .inMajor(
                        "[IV] * -> IVmaj7",
                        "[IV] * -> IVadd9",
                        "[vi] * -> vi7",
                        "[ii] V -> ii7",
                        "[iii] * -> iii7",
                        "* [I] * -> Iadd9",
                        "* [I] * -> Imaj7",
                        "[V] I -> V7")
                .inMinor(
                        "* [i] * -> iadd9",
                        "* [i] * -> i7",
                        "[iv] * -> iv7",
                        "[VI] * -> VImaj7",
                        "[III] * -> IIImaj7",
                        "[V] i -> V7");
    }
}
