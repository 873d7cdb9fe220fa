package monochord.practice.reading;

import java.lang.Character.UnicodeScript;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import monochord.theory.note.Unreadable;

/**
 * The text of an answer, made plain: words for accidentals become signs, words of other countries English ones; the talk
 * around the answer goes, and so do brackets and punctuation about it.
 */
public final class AnswerText {
    private static final int LONGEST = 300;

    /** Accidental signs in a row; a double one that is a sign of its own takes two characters. */
    private static final int MOST_ACCIDENTALS = 5;

    private static final Pattern ACCIDENTAL_WORD =
            Pattern.compile("(?i)(?<![a-z])([a-g])[ -]?(double[ -]?)?(flat|sharp|natural)s?(?![a-z])");
    private static final Pattern ALTERED_NUMBER = Pattern.compile(
            "(?i)(?<![a-z])(flat|sharp)(?:ed|ened|ted)?[ -]+(?:([1-9])|(two|three|third|four|fourth|five|fifth|six|sixth|seven|seventh|nine|ninth))(?![a-z0-9])");
    private static final Pattern LONE_SIGN = Pattern.compile("(?<=[A-Ga-g]) +(?=[#♭♯])");

    /** Somebody who asks back gives no answer. */
    private static final Pattern ASKS = Pattern.compile(
            "(?i)\\s*(?:what(?:'s| is| are| does| do| was)|how (?:do|does|many|much|can|is)|why|who|can (?:you|we|i)|explain)(?![a-z]).*");

    /** What is said around an answer and is no part of it. */
    private static final Pattern TALK = Pattern.compile("(?i)(?<![a-z0-9#♭♯])(?:"
            + "i(?:'m| am)? (?:(?:would|will|not) )?(?:think|guess|believe|say|suppose|mean|sure|hear)(?: so| it)?"
            + "|i don'?t know|i'm not (?:so |quite )?sure|not sure|no idea"
            + "|i(?:'d|'ll| would| will) (?:say|play|use|pick|choose|take|go(?: to| for| with)?|resolve(?: it)?(?: to)?|move(?: it)?(?: to)?)|let me (?:see|think)"
            + "|comes? from|consists? of|made (?:up )?of|(?:my |the )?answers?"
            + "|(?:it|that|this|there|they|these|those|what|you)(?:'s|'re|'d)?|its|the|is|are|has|have|had|both|shares?|contains?"
            + "|obviously|definitely|certainly|clearly|of course|for sure|got(?: to|ta)?|just|only|simply"
            + "|back(?: home)? to|home to|in common|in both(?: of them| chords)?"
            + "|must|should|could|would|might|may|be|maybe|perhaps|probably|possibly|surely"
            + "|notes?|pitch(?:es)?|called|named|spelled|written|moves?|goes|we|chords are|interval"
            + "|at (?:the )?end|or so|or something like that|hm+|um+|uh+|er|ah|oh|well|so|okay|ok|yes|please"
            + "|das ist|es ist|ich (?:glaube|denke|meine)|ist|vielleicht|je (?:crois|pense)|c'est|peut-être|credo|penso|forse"
            + ")(?![a-z#♭♯0-9'])");

    /** Where talk went before it, {@code a} before one capital name is no note. */
    private static final Pattern ARTICLE = Pattern.compile("^[\\s,]*an?\\s+(?=[A-H][^\\s,]*\\s*$)");

    /** A remark in brackets behind an answer, in which no word belongs to one. */
    private static final Pattern BRACKETED =
            Pattern.compile("(?<=\\S)\\s*\\((?=[^()]*[a-z]{4})(?![^()]*(?<![\\p{L}0-9])" + AnswerParts.VOCABULARY
                    + "(?![\\p{L}0-9']))[^()]*\\)");

    private static final Pattern BLANKS = Pattern.compile("[ \\t]+");
    private static final Pattern SECOND_THOUGHT = Pattern.compile("(?i)^[\\s,.]*(?:or|to|on to)\\s+");

    private AnswerText() {}

    /**
     * @throws Unreadable if nothing is written, nothing but punctuation, signs of control or letters of another script, or
     *     more than any answer could hold
     */
    public static String plain(String typed, String what, String example) {
        String text = typed == null ? "" : typed;
        if (text.length() > LONGEST) {
            throw Unreadable.because(text, LONGEST, what, "it is longer than any answer here", example);
        }
        if (ASKS.matcher(text).lookingAt()) {
            throw Unreadable.because(text.strip(), 0, what, "it asks something", example);
        }
        String plain = text.isBlank() ? "" : withoutDecoration(latin(text, what, example));
        if (plain.isEmpty()) {
            String why = text.isBlank() ? "nothing is written" : "nothing in it can be read";
            throw Unreadable.because(text.strip(), 0, what, why, example);
        }
        if (hasManyAccidentals(plain)) {
            throw Unreadable.because(text.strip(), 0, what, "no note has so many accidentals", example);
        }
        return plain;
    }

    /** The text in signs that are common to all keyboards, where all of it is in our letters. */
    private static String latin(String text, String what, String example) {
        boolean plain = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' && c != '\t' || c == 0x7f) {
                throw Unreadable.because(text, 0, what, "it holds signs that are no writing", example);
            }
            plain &= c < 0x7f;
        }
        if (plain) {
            return text;
        }
        if (text.codePoints().anyMatch(AnswerText::isOtherScript)) {
            throw Unreadable.because(text, 0, what, "it is written in other letters than these", example);
        }
        return text.replace("♮", "")
                .replace('−', '-')
                .replace('\u00a0', ' ')
                .replace('’', '\'')
                .replace('“', '"')
                .replace('”', '"');
    }

    /** The triangle of a major seventh is Greek, and welcome. */
    private static boolean isOtherScript(int c) {
        return Character.isLetter(c)
                && c != 'Δ'
                && UnicodeScript.of(c) != UnicodeScript.LATIN
                && UnicodeScript.of(c) != UnicodeScript.COMMON;
    }

    private static String withoutDecoration(String text) {
        String said = hasWord(text) || hasAny(text, "srtn") ? withoutTalk(text) : text;
        String signed = hasAny(said, "#♭♯") ? LONE_SIGN.matcher(said).replaceAll("") : said;
        String plain = trimmed(signed);
        return plain.length() > 1 && !holdsSomething(plain)
                ? ""
                : plain.indexOf("  ") < 0 && plain.indexOf('\t') < 0
                        ? plain
                        : BLANKS.matcher(plain).replaceAll(" ");
    }

    private static String withoutTalk(String text) {
        String said = text.indexOf('(') > 0 ? BRACKETED.matcher(text).replaceAll(" ") : text;
        String english = withSigns(WordsElsewhere.english(said));
        String bare = TALK.matcher(english).replaceAll(" ");
        String answer = SECOND_THOUGHT.matcher(bare).replaceFirst("");
        return bare.equals(english) && said.equals(text)
                ? answer
                : ARTICLE.matcher(answer).replaceFirst(" ");
    }

    /** Whether it is more than punctuation. */
    private static boolean holdsSomething(String plain) {
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (Character.isLetterOrDigit(c) || "#♭♯°".indexOf(c) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Without the punctuation, quotation marks and brackets about the whole. */
    private static String trimmed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to) {
            char first = text.charAt(from);
            char last = text.charAt(to - 1);
            if (isAround(last)) {
                to--;
            } else if (isAround(first) && !(first == '.' && Character.isDigit(text.charAt(from + 1)))) {
                from++;
            } else if (isOpening(first) && closes(text, from, to) == to - 1) {
                from++;
                to--;
            } else if (isOpening(first) && closes(text, from, to) < 0) {
                from++;
            } else if (isClosing(last) && !isOpened(text, from, to - 1)) {
                to--;
            } else {
                break;
            }
        }
        return text.substring(from, to);
    }

    private static boolean isAround(char c) {
        return c <= ' ' || ".,;:!?…\"'*_~=".indexOf(c) >= 0;
    }

    private static boolean isOpening(char c) {
        return c == '(' || c == '[' || c == '{' || c == '<';
    }

    private static boolean isClosing(char c) {
        return c == ')' || c == ']' || c == '}' || c == '>';
    }

    /** Where the bracket that opens at {@code from} closes, or −1. */
    private static int closes(String text, int from, int to) {
        int depth = 0;
        for (int i = from; i < to; i++) {
            depth += isOpening(text.charAt(i)) ? 1 : isClosing(text.charAt(i)) ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isOpened(String text, int from, int to) {
        int depth = 0;
        for (int i = from; i < to; i++) {
            depth += isOpening(text.charAt(i)) ? 1 : isClosing(text.charAt(i)) ? -1 : 0;
        }
        return depth > 0;
    }

    private static boolean hasAny(String text, String characters) {
        for (int i = 0; i < text.length(); i++) {
            if (characters.indexOf(text.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether a word stands in it: three letters in a row. */
    static boolean hasWord(String text) {
        int letters = 0;
        for (int i = 0; i < text.length() && letters < 3; i++) {
            letters = Character.isLetter(text.charAt(i)) ? letters + 1 : 0;
        }
        return letters == 3;
    }

    private static boolean hasManyAccidentals(String text) {
        int row = 0;
        for (int i = 0; i < text.length() && row < MOST_ACCIDENTALS; i++) {
            row = "b♭𝄫#♯x𝄪".indexOf(text.charAt(i)) >= 0 ? row + 1 : 0;
        }
        return row == MOST_ACCIDENTALS;
    }

    private static String withSigns(String text) {
        if (!text.contains("lat") && !text.contains("harp") && !text.contains("atural")) {
            return text;
        }
        String named = ACCIDENTAL_WORD
                .matcher(text)
                .replaceAll(found -> found.group(1) + sign(found.group(3), found.group(2) != null));
        return ALTERED_NUMBER.matcher(named).replaceAll(found -> sign(found.group(1), false) + figure(found));
    }

    private static String figure(MatchResult found) {
        if (found.group(2) != null) {
            return found.group(2);
        }
        return switch (found.group(3).substring(0, 3).toLowerCase(Locale.ROOT)) {
            case "two" -> "2";
            case "thr", "thi" -> "3";
            case "fou" -> "4";
            case "fiv", "fif" -> "5";
            case "six" -> "6";
            case "sev" -> "7";
            default -> "9";
        };
    }

    private static String sign(String word, boolean doubled) {
        String one = switch (word.charAt(0)) {
            case 'f', 'F' -> "b";
            case 's', 'S' -> "#";
            default -> "";
        };
        return doubled ? one + one : one;
    }
}
