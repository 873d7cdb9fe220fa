package monochord.harmony.colour;

import monochord.text.Phrase;

/** What an idiom needs of the chords, in a sentence, for whoever asks for it where it does not fit. */
final class IdiomNeeds {
    private IdiomNeeds() {}

    static Phrase of(String name) {
        return switch (name) {
            case "applied" ->
                Phrase.sentence("An applied dominant needs a major or minor chord behind another, to lead to.");
            case "two-five" ->
                Phrase.sentence("A two and a five need a major or minor chord behind another, to lead to.");
            case "tritone" ->
                Phrase.sentence(
                        "A tritone substitute stands for a dominant: it needs a major chord whose root falls a fifth to"
                                + " the next.");
            case "walk up" -> Phrase.sentence("A walk up by whole steps needs two chords that lead home to the tonic.");
            case "double plagal" ->
                Phrase.sentence("A double plagal way needs the chord on 4, and the tonic chord behind it.");
            case "flat nine" -> Phrase.sentence("A lowered ninth needs the dominant, and the tonic chord behind it.");
            default -> ofLines(name);
        };
    }

    private static Phrase ofLines(String name) {
        return switch (name) {
            case "passing diminished" ->
                Phrase.sentence("A passing diminished chord needs two chords whose roots lie a whole step apart.");
            case "common-tone diminished" ->
                Phrase.sentence("A common-tone diminished chord needs a major chord to turn about.");
            case LineIdioms.LINE_CLICHE ->
                Phrase.sentence("A line of half steps needs a major or minor chord that stands.");
            case LineIdioms.RISING_LINE ->
                Phrase.sentence("A rising line needs the tonic chord for a whole bar, and the chord on 4 behind it.");
            case "suspended" -> Phrase.sentence("A suspension needs a chord with a third, for the fourth to fall to.");
            case "added tone" ->
                Phrase.sentence(
                        "An added tone needs a chord of the key that does not have it yet, where it can be held.");
            case "chromatic descent" ->
                Phrase.sentence("A chromatic bass needs chords whose roots come down by step from the tonic.");
            case "stepping bass" ->
                Phrase.sentence("A bass by step needs a chord between two whose roots lie a third apart.");
            case "mediant" ->
                Phrase.sentence("A mediant needs the tonic chord before it, and a chord a third away or none.");
            default -> Phrase.sentence("That chord stands there already.");
        };
    }
}
