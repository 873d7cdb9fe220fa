package monochord.harmony.colour;

import monochord.text.Phrase;

/** The names of idioms to be read, by those that are typed. */
final class IdiomNames {
    private IdiomNames() {}

    /** Of a borrowed chord the kind alone. */
    static Phrase inWords(Idiom idiom) {
        return switch (idiom.name()) {
            case "walk up" -> Phrase.of("walk up");
            case "double plagal" -> Phrase.of("double plagal");
            case "neapolitan" -> Phrase.of("Neapolitan");
            case "applied" -> Phrase.of("applied");
            case "two-five" -> Phrase.of("two and five");
            case "tritone" -> Phrase.of("tritone substitute");
            case "backdoor" -> Phrase.of("backdoor dominant");
            case "flat nine" -> Phrase.of("lowered ninth");
            case "passing diminished" -> Phrase.of("passing diminished");
            case "common-tone diminished" -> Phrase.of("common-tone diminished");
            case LineIdioms.LINE_CLICHE -> Phrase.of("line of half steps");
            case LineIdioms.RISING_LINE -> Phrase.of("rising line");
            case "pedal on 1", "pedal on 5" -> Phrase.of("pedal bass");
            case "chromatic descent" -> Phrase.of("chromatic bass");
            case "stepping bass" -> Phrase.of("bass by step");
            case "mediant" -> Phrase.of("mediant");
            case "suspended" -> Phrase.of("suspended");
            case "added tone" -> Phrase.of("added tone");
            default -> idiom.colour().inWords();
        };
    }
}
