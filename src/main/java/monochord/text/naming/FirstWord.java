package monochord.text.naming;

import java.util.regex.Pattern;

/** Tells the article A that begins a sentence from the note, by what follows it. Elsewhere an article is small. */
final class FirstWord {
    private static final Pattern BEGINS_SENTENCE =
            Pattern.compile("(?:^|[.!?][\"')]*\\s+|^\\s*(?:[-*]|[0-9]+\\.)\\s+|[0-9]\\.[0-9]+\\s+|^Next: |^End of )$");
    private static final String ENDS = "(?![A-Za-z-])";
    /** A space and a note, a number, two spaces or the end of the sentence. */
    private static final Pattern NO_WORD =
            Pattern.compile("A(?:[^ a-z].*|\\s*$|  .*| (?:(?:(?:half |whole )?[A-G](?![a-z]))|[^a-zA-Z0-9♭♯]).*)");

    private static final Pattern VERB = Pattern.compile(
            "A (?:is|and|or|to|has|stands?|goes|stays?|steps?|sounds?|rises?|falls?|moves?|holds?|belongs?|becomes?|comes?"
                    + "|lies|leads?|needs?|was|would|will|can|cannot|may|must|with|over|up|down|on|in|for|as|at|by|then|not"
                    + "|keeps?|takes?|gives?|makes?|does|also|still|clashes|fits|wants|above|below|against|remains)"
                    + ENDS
                    + ".*");
    private static final Pattern KEY = Pattern.compile("A (?:(?:natural |harmonic |melodic )?(?:major|minor)"
            + "|ionian|dorian|phrygian|lydian|mixolydian|aeolian|locrian|(?:flat|sharp)(?: major| minor)?)" + ENDS
            + "(?! (?:chord|triad|seventh|third|sixth|second|ninth|scale|key|interval|quality|one|mode|pentatonic|in front"
            + "|before|or a|lowers|raises|sign|degree|number|progression|song|line)).*");

    private FirstWord() {}

    /** @param place of a capital A that stands by itself */
    static boolean isArticle(String text, int place) {
        boolean alone = place + 1 >= text.length() || text.charAt(place + 1) == ' ';
        if (!alone || !BEGINS_SENTENCE.matcher(text.substring(0, place)).find()) {
            return false;
        }
        String rest = text.substring(place).replace('\n', ' ');
        return !(NO_WORD.matcher(rest).matches()
                || VERB.matcher(rest).matches()
                || KEY.matcher(rest).matches());
    }
}
