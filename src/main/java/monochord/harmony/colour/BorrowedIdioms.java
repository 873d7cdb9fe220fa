package monochord.harmony.colour;

import static monochord.harmony.colour.Colour.BORROWED;

import java.util.List;
import java.util.stream.Stream;
import monochord.text.Phrase;

/** Chords of the parallel minor in major, of the parallel major in minor, and the lowered second in both. */
final class BorrowedIdioms {
    static final String PICARDY = "borrowed I";
    static final String NEAPOLITAN = "neapolitan";

    private static final TextbookPage MIXTURE = TextbookPage.first("modalMixture");
    private static final TextbookPage SUBDOMINANTS = TextbookPage.first("alteredSubdominants");
    private static final TextbookPage ROCK = TextbookPage.first("popRockHarmony");
    private static final TextbookPage PLAGAL = TextbookPage.first("plagal");
    private static final TextbookPage LESSON = TextbookPage.lesson("16a");

    private BorrowedIdioms() {}

    static List<Idiom> all() {
        return Stream.of(MINOR_SUBDOMINANT, LOWERED_SIXTH, LOWERED_SEVENTH, LOWERED_THIRD, DARK_SECOND, IN_MINOR)
                .flatMap(List::stream)
                .toList();
    }

    private static final List<Idiom> MINOR_SUBDOMINANT = List.of(
            Idiom.named("borrowed iv", BORROWED, SUBDOMINANTS)
                    .worth(10, 0)
                    .where(IdiomCondition.ANY_BASS)
                    .because(change -> Phrase.sentence(
                            "{0} goes home to {1} the minor plagal way: the lowered sixth, {2}, sinks to {3}.",
                            change.now(0), change.after(), change.now(0).tones().get(1), change.degree(5)))
                    .inMajor("[IV] I -> iv", "IV [] I -> iv"),
            Idiom.named("borrowed iv", BORROWED, SUBDOMINANTS)
                    .worth(7, 0)
                    .because(change -> Phrase.sentence(
                            "{0} stands where {1} did, a subdominant too, and {2} sinks to {3} on the way home.",
                            change.now(0), change.old(0), change.now(0).tones().get(1), change.degree(5)))
                    .inMajor("[ii] I -> iv"),
            Idiom.named("borrowed iv", BORROWED, SUBDOMINANTS)
                    .worth(5, 1)
                    .because(change -> Phrase.sentence(
                            "{0} prepares {1} as before, now with the lowered sixth, {2}, that leans on {3}.",
                            change.now(0), change.after(), change.now(0).tones().get(1), change.degree(5)))
                    .inMajor("[IV] V -> iv", "IV [] V -> iv", "[ii] V -> iv"));

    private static final List<Idiom> LOWERED_SIXTH = List.of(
            Idiom.named("borrowed bVI", BORROWED, LESSON)
                    .worth(11, 0)
                    .where(IdiomCondition.PREPARED)
                    .because(change -> Phrase.sentence(
                            "{0} comes where {1} was expected after the dominant, and the suspended {2} of {3} stays"
                                    + " as its third.",
                            change.now(1), change.old(1), change.degree(1), change.now(0)))
                    .inMajor(
                            "[V vi] IV -> Vsus4|V7sus4 bVI|bVImaj7",
                            "[V vi] ii -> Vsus4|V7sus4 bVI|bVImaj7",
                            "[V vi] V -> Vsus4|V7sus4 bVI|bVImaj7",
                            "[V vi] I -> Vsus4|V7sus4 bVI|bVImaj7"),
            Idiom.named("borrowed bVI", BORROWED, LESSON)
                    .worth(9, 0)
                    .where(IdiomCondition.NOT_LAST)
                    .because(change -> Phrase.sentence(
                            "{0} comes where {1} was expected after {2}: the deceptive step, onto the lowered sixth.",
                            change.now(0), change.old(0), change.before()))
                    .inMajor(
                            "V [vi] IV -> bVI|bVImaj7",
                            "V [vi] ii -> bVI|bVImaj7",
                            "V [vi] V -> bVI|bVImaj7",
                            "V [vi] I -> bVI|bVImaj7",
                            "V [vi] $ -> bVI|bVImaj7"),
            Idiom.named("borrowed bVI", BORROWED, LESSON)
                    .worth(7, 0)
                    .where(IdiomCondition.NOT_LAST)
                    .because(change -> Phrase.sentence(
                            "{0} comes where {1} was expected after {2}: the deceptive step, onto the lowered sixth.",
                            change.now(0), change.old(0), change.before()))
                    .inMajor("V [I] IV -> bVI|bVImaj7", "V [I] ii -> bVI|bVImaj7", "V [I] V -> bVI|bVImaj7"),
            Idiom.named("borrowed bVI", BORROWED, LESSON)
                    .worth(8, 0)
                    .because(change -> Phrase.sentence(
                            "{0} prepares the dominant from a half step above it, and the suspended {1} of {2} is held"
                                    + " over from it.",
                            change.now(0), change.degree(1), change.now(1)))
                    .inMajor("[vi V] -> bVI|bVImaj7 Vsus4|V7sus4,=", "[IV V] -> bVI|bVImaj7 Vsus4|V7sus4,="),
            Idiom.named("borrowed bVI", BORROWED, LESSON)
                    .worth(7, 0)
                    .because(change ->
                            Phrase.sentence("{0} prepares {1} from a half step above.", change.now(0), change.after()))
                    .inMajor(
                            "I [] V -> bVI|bVImaj7",
                            "[vi] V -> bVI|bVImaj7",
                            "I [IV] V -> bVI|bVImaj7",
                            "I [ii] V -> bVI|bVImaj7"),
            Idiom.named("borrowed bVI", BORROWED, ROCK)
                    .worth(5, 2)
                    .because(change -> Phrase.sentence(
                            "{0} goes home by a third; {1} is its third and the root of {2}.",
                            change.now(0), change.degree(1), change.after()))
                    .inMajor("[vi] I -> bVI|bVImaj7", "I [] I -> bVI|bVImaj7", "I [IV] I -> bVI|bVImaj7"),
            Idiom.named("walk up", BORROWED, ROCK)
                    .worth(8, 0)
                    .because(change -> Phrase.sentence(
                            "{0} and {1} walk up to {2} by whole steps.", change.now(0), change.now(1), change.after()))
                    .inMajor(
                            "[IV V] I -> bVI bVII",
                            "[vi V] I -> bVI bVII",
                            "[vi IV] I -> bVI bVII",
                            "[ii V] I -> bVI bVII"),
            Idiom.named("walk up", BORROWED, ROCK)
                    .worth(6, 1)
                    .because(change -> Phrase.sentence(
                            "{0} and {1} walk up to {2} by whole steps.", change.now(0), change.now(1), change.after()))
                    .inMajor("[IV] I -> bVI,bVII"));

    private static final List<Idiom> LOWERED_SEVENTH = List.of(
            Idiom.named("double plagal", BORROWED, PLAGAL)
                    .worth(11, 0)
                    .because(change -> Phrase.sentence(
                            "{0} stands a fourth above {1}, as {1} does above {2}: a plagal step before the plagal one.",
                            change.now(0), change.now(1), change.degree(1)))
                    .inMajor("[V IV] I -> bVII IV"),
            Idiom.named("double plagal", BORROWED, PLAGAL)
                    .worth(8, 0)
                    .because(change -> Phrase.sentence(
                            "{0} stands a fourth above {1}, as {1} does above {2}: a plagal step before the plagal one.",
                            change.now(0), change.now(1), change.degree(1)))
                    .inMajor("I [IV] I -> bVII,="),
            Idiom.named("double plagal", BORROWED, PLAGAL)
                    .worth(7, 0)
                    .because(change -> Phrase.sentence(
                            "{0} stands a fourth above {1}, as {1} does above {2}: a plagal step before the plagal one.",
                            change.now(0), change.after(), change.degree(1)))
                    .inMajor("I [] IV I -> bVII", "I [V] IV I -> bVII", "I [vi] IV I -> bVII"),
            Idiom.named("borrowed bVII", BORROWED, ROCK)
                    .worth(6, 1)
                    .because(change -> Phrase.sentence(
                            "{0} falls a fifth to {1} as {1} falls to {2}: the way out through the lowered seventh.",
                            change.now(0), change.after(), change.degree(1)))
                    .inMajor("I [] IV -> bVII", "I [V] IV -> bVII"),
            Idiom.named("borrowed bVII", BORROWED, ROCK)
                    .worth(5, 2)
                    .because(change -> Phrase.sentence(
                            "{0} goes up to {1} by a whole step, without the leading note, {2}, of {3}.",
                            change.now(0), change.after(), change.old(0).tones().get(1), change.old(0)))
                    .inMajor("[V] I -> bVII"));

    private static final List<Idiom> LOWERED_THIRD = List.of(
            loweredThird(10).inMajor("I [iii] IV -> bIII"),
            loweredThird(6).inMajor("I [] IV -> bIII", "I [vi] IV -> bIII"));

    private static Idiom loweredThird(int lift) {
        return Idiom.named("borrowed bIII", BORROWED, ROCK)
                .worth(lift, 1)
                .because(change -> Phrase.sentence(
                        "{0} keeps the {1} of {2} and climbs to {3} by a whole step.",
                        change.now(0), change.degree(5), change.before(), change.after()));
    }

    private static final List<Idiom> DARK_SECOND = List.of(
            Idiom.named("borrowed viio7", BORROWED, LESSON)
                    .worth(7, 1)
                    .because(change -> Phrase.sentence(
                            "{0} leads home to {1}: {2} rises to {3}, and the lowered sixth, {4}, sinks to {5}.",
                            change.now(0),
                            change.after(),
                            change.now(0).root(),
                            change.degree(1),
                            change.now(0).tones().get(3),
                            change.degree(5)))
                    .inMajor("[viio] I -> viio7"),
            Idiom.named("borrowed viio7", BORROWED, LESSON)
                    .worth(6, 2)
                    .because(change -> Phrase.sentence(
                            "{0} leads home as {1} does; its lowered sixth, {2}, sinks to {3}.",
                            change.now(0),
                            change.isInsertion() ? change.before() : change.old(0),
                            change.now(0).tones().get(3),
                            change.degree(5)))
                    .inMajor("[V] I -> viio7", "V [] I -> viio7"),
            Idiom.named("borrowed iiø7", BORROWED, SUBDOMINANTS)
                    .worth(9, 0)
                    .where(IdiomCondition.ANY_BASS)
                    .because(change -> Phrase.sentence(
                            "{0} prepares {1} as {2} did, with the lowered sixth, {3}, that sinks to {4}.",
                            change.now(0),
                            change.after(),
                            change.old(0),
                            change.now(0).tones().get(2),
                            change.degree(5)))
                    .inMajor("[ii] V -> iio|iiø7", "[IV] V -> iio|iiø7", "[vi] V -> iio|iiø7"),
            Idiom.named("borrowed iiø7", BORROWED, SUBDOMINANTS)
                    .worth(6, 1)
                    .because(change -> Phrase.sentence(
                            "{0} holds the lowered sixth, {1}, which sinks to {2} on the way home.",
                            change.now(0), change.now(0).tones().get(2), change.degree(5)))
                    .inMajor("[ii] I -> iiø7", "IV [] I -> iiø7"),
            neapolitan(8, 2).inMajor("[ii] V -> N6", "[IV] V -> N6"),
            neapolitan(9, 1).inMinor("[iv] V -> N6", "[iio] V -> N6", "iv [] V -> N6", "[VI] V -> N6"));

    private static Idiom neapolitan(int lift, int restraint) {
        return Idiom.named(NEAPOLITAN, BORROWED, LESSON)
                .worth(lift, restraint)
                .because(change -> Phrase.sentence(
                        "{0}, the major chord on the lowered second, has {1} in the bass and prepares {2}; its {3} falls"
                                + " to {4}.",
                        change.now(0),
                        change.now(0).bass(),
                        change.after(),
                        change.now(0).root(),
                        change.after().tones().get(1)));
    }

    private static final List<Idiom> IN_MINOR = List.of(
            Idiom.named("borrowed IV", BORROWED, MIXTURE)
                    .worth(9, 1)
                    .because(change -> Phrase.sentence(
                            "{0} brings the raised sixth, {1}: the light of the dorian mode.",
                            change.now(0), change.now(0).tones().get(1)))
                    .inMinor(
                            "i [iv] i -> IV",
                            "i [iv] VII -> IV",
                            "III [iv] i -> IV",
                            "VII [iv] i -> IV",
                            "i [] VI -> IV6"),
            Idiom.named(PICARDY, BORROWED, MIXTURE)
                    .worth(7, 1)
                    .because(change -> Phrase.sentence(
                            "{0} ends the minor row in major, with {1} for {2}: the Picardy third.",
                            change.now(0),
                            change.now(0).tones().get(1),
                            change.old(0).tones().get(1)))
                    .inMinor("V [i] $ -> I", "iv [i] $ -> I"));
}
