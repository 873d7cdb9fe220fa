package monochord.harmony.colour;

import static monochord.harmony.colour.Colour.APPLIED;
import static monochord.harmony.colour.Colour.BORROWED;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;

/** Dominants of other chords, what comes before them, and what stands in for them. */
final class DominantIdioms {
    private static final TextbookPage APPLIED_CHORDS = TextbookPage.first("appliedChords");
    private static final TextbookPage EMBELLISHING = TextbookPage.second("Embellishing chords");
    private static final TextbookPage SUBSTITUTIONS = TextbookPage.second("Substitutions");

    private DominantIdioms() {}

    static List<Idiom> all() {
        return Stream.of(APPLIED_DOMINANTS, TWO_FIVE, TRITONE, BACKDOOR, FLAT_NINE)
                .flatMap(List::stream)
                .toList();
    }

    private static NoteName third(Change change, int index) {
        return change.now(index).tones().get(1);
    }

    private static final List<Idiom> APPLIED_DOMINANTS = List.of(
            Idiom.named("applied", APPLIED, APPLIED_CHORDS)
                    .worth(7, 0)
                    .where(IdiomCondition.ANY_BASS)
                    .because(change -> Phrase.sentence(
                            "{0} is the dominant of {1}: its third, {2}, rises a half step to {3}.",
                            change.now(0),
                            change.after(),
                            third(change, 0),
                            change.after().root()))
                    .inMajor(
                            "[iii] vi -> V/vi|V7/vi",
                            "[vi] ii -> V/ii|V7/ii",
                            "[ii] V -> V/V|V7/V",
                            "* [] Xm -> V7/Xm",
                            "I [] V -> V7/V",
                            "ii [] V -> V7/V",
                            "vi [] V -> V7/V",
                            "iii [] V -> V7/V")
                    .inMinor("* [] Xm -> V7/Xm", "[i] iv -> V7/iv", "* [] V -> V7/V", "* [] III -> V7/III"),
            Idiom.named("applied", APPLIED, APPLIED_CHORDS)
                    .worth(7, 0)
                    .where(IdiomCondition.ANY_BASS)
                    .because(change -> Phrase.sentence(
                            "{0} leads to {1} as its dominant: its seventh, {2}, falls to {3}.",
                            change.now(0),
                            change.after(),
                            change.now(0).tones().get(3),
                            change.after().tones().get(1)))
                    .inMajor("[I] IV -> V7/IV", "I [] IV -> V7/IV")
                    .inMinor("[VII] III -> V7/III", "[III] VI -> V7/VI", "III [] VI -> V7/VI"));

    private static final List<Idiom> TWO_FIVE = List.of(
            Idiom.named("two-five", APPLIED, EMBELLISHING)
                    .worth(7, 1)
                    .because(change -> Phrase.sentence(
                            "{0} and {1} go to {2} as a two and a five of its own.",
                            change.now(0), change.now(1), change.after()))
                    .inMajor(
                            "[iii] vi -> iiø7/vi,V7/vi",
                            "[vi] ii -> iiø7/ii,V7/ii",
                            "* [] Xm -> iiø7/Xm V7/Xm",
                            "* [] XM -> ii7/XM V7/XM")
                    .inMinor("* [] Xm -> iiø7/Xm V7/Xm", "* [] XM -> ii7/XM V7/XM"),
            Idiom.named("two-five", APPLIED, EMBELLISHING)
                    .worth(9, 1)
                    .because(change -> Phrase.sentence(
                            "{0} comes before {1} as the two before its five.", change.now(0), change.now(1)))
                    .inMajor("[V7/Xm] Xm -> iiø7/Xm,=", "[V7/XM] XM -> ii7/XM,=", "[V7] I -> ii|ii7,=")
                    .inMinor("[V7/Xm] Xm -> iiø7/Xm,=", "[V7/XM] XM -> ii7/XM,=", "[V7] i -> iio|iiø7,="));

    private static Phrase aTritoneAway(Change change) {
        return Phrase.sentence(
                "{0} stands a tritone from {1} and has its third and seventh, the other way round; the bass sinks a half"
                        + " step to {2}.",
                change.now(0), change.old(0), change.after());
    }

    private static final List<Idiom> TRITONE = List.of(
            Idiom.named("tritone", APPLIED, SUBSTITUTIONS)
                    .worth(9, 1)
                    .where(IdiomCondition.AMONG_SEVENTHS)
                    .because(DominantIdioms::aTritoneAway)
                    .inMajor("[V7] I -> bII7")
                    .inMinor("[V7] i -> bII7"),
            Idiom.named("tritone", APPLIED, SUBSTITUTIONS)
                    .worth(7, 3)
                    .because(DominantIdioms::aTritoneAway)
                    .inMajor("[V7] I -> bII7")
                    .inMinor("[V7] i -> bII7"),
            Idiom.named("tritone", APPLIED, SUBSTITUTIONS)
                    .worth(8, 2)
                    .because(DominantIdioms::aTritoneAway)
                    .inMajor("[V7/Xm] Xm -> bII7/Xm", "[V7/XM] XM -> bII7/XM")
                    .inMinor("[V7/Xm] Xm -> bII7/Xm", "[V7/XM] XM -> bII7/XM"),
            Idiom.named("tritone", APPLIED, SUBSTITUTIONS)
                    .worth(5, 3)
                    .because(change -> Phrase.sentence(
                            "{0} is the tritone substitute of the dominant seventh: the bass sinks a half step to {1}.",
                            change.now(0), change.after()))
                    .inMajor("[V] I -> bII7", "V [] I -> bII7")
                    .inMinor("[V] i -> bII7", "V [] i -> bII7"));

    private static final List<Idiom> BACKDOOR = List.of(
            backdoor(8).inMajor("iv [] I -> bVII7", "[IV V] I -> iv|iv7 bVII7", "[ii V] I -> iv|iv7 bVII7"),
            backdoor(7).inMajor("IV [] I -> bVII7", "[IV] I -> iv|iv7,bVII7", "[V] I -> bVII7"));

    private static Idiom backdoor(int lift) {
        return Idiom.named("backdoor", BORROWED, TextbookPage.COMMON_PRACTICE)
                .worth(lift, 1)
                .because(change -> Phrase.sentence(
                        "{0} goes home to {1} by a whole step up, the backdoor dominant: {2} sinks to {3}.",
                        change.chords().get(change.chords().size() - 1).chord(),
                        change.after(),
                        change.key().note(Degree.of(6, -1)),
                        change.degree(5)));
    }

    private static final List<Idiom> FLAT_NINE = List.of(
            flatNine(8).inMajor("[V7] I -> V7b9").inMinor("[V7] i -> V7b9"),
            flatNine(6).inMajor("[V] I -> V7b9").inMinor("[V] i -> V7b9"));

    private static Idiom flatNine(int lift) {
        return Idiom.named("flat nine", BORROWED, SUBSTITUTIONS)
                .worth(lift, 1)
                .because(change -> Phrase.sentence(
                        "Its lowered ninth, {0}, is the lowered sixth of the scale and sinks to {1}.",
                        change.now(0).tones().get(4), change.degree(5)));
    }
}
