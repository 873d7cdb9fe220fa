package monochord.practice.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What may be the answer in a sentence that is none as a whole: what somebody puts right while speaking, what stands before a
 * contrast ({@code Eb, not D#}), behind a repeated subject ({@code the third is Bb}), or before an explanation.
 */
final class AnswerParts {
    private static final int MOST_TAILS = 6;

    private static final Pattern CORRECTION = Pattern.compile(
            "(?i)[\\s,;.(–—-]*(?:(?<![a-z])(?:no,? wait|wait,?(?: no)?|oh no|sorry|i mean|i meant|scratch that|correction|or rather)(?![a-z])[\\s,;:.–—-]*(?:it'?s )?"
                    + "|(?<=[,;.?–—-] ?)(?:no|nope),? +(?-i:(?=[A-H][b#♭♯ ,.]*$))"
                    + "|(?<=[,;.?–—-] ?)(?:no|nope), +)");

    /** {@code you raise the F to F#}: one note of the row before is another. */
    private static final Pattern RAISED = Pattern.compile(
            "(?i)[\\s,;.(–—-]*(?:but |and |then |you |i |we |with )*(?:raised?|lower(?:ed)?|sharpen|flatten|change[ds]?|mak(?:e|ing)|rais|lower)(?:ing)? (?:the )?[A-G][b#♭♯]? (?:up |down )?(?:to |into |)(?:an? )?(?-i:(?=[A-G][b#♭♯]*\\W*$))");

    private static final Pattern ONE_NOTE = Pattern.compile("[A-G][b#♭♯]*\\W*");
    private static final Pattern ROW = Pattern.compile("(?:[A-G][b#♭♯]?[\\s,-]+){2,}");

    private static final Pattern CONTRAST = Pattern.compile(
            "(?i)(?<=\\S)[\\s,;(–—-]+(?:and |but |so )?(?:not|instead of|rather than|never|unlike)(?![a-z])");

    /** {@code G, then C not B, D}: one note that is denied in a row of others. */
    private static final Pattern DENIED = Pattern.compile(
            "[\\s,(]+(?:and |but )?(?:not|instead of|rather than) (?:an? )?[A-H][b#♭♯]*\\)?(?=[,\\s]+(?:and |then )*[A-H])");

    private static final Pattern NOT_BUT = Pattern.compile("(?i).*(?<![a-z])not [^,]*?,? but (.+)");

    private static final Pattern SUBJECT = Pattern.compile(
            "(?i)[:=]|(?:,\\s*|\\s)so(?![a-z])(?: that's| it's)?|,\\s*(?:also|donc)(?![a-z])|(?<![a-z])(?:is|are|has|have|'s|makes|means)(?![a-z])");

    /** What a subject is made of; brackets of code and the like are none. */
    private static final Pattern IN_WORDS = Pattern.compile("[\\p{L}\\p{N} #♭♯°'/,().:=+-]*");

    /** Words that belong to an answer, so that none begins a remark on it; small notes and numerals too. */
    static final String VOCABULARY =
            "(?:[a-h](?:b|is|es|isis|eses)?|as|es|[iv]+|do|re|ré|mi|fa|sol|la|si|and|or|then|to"
                    + "|one|two|three|four|five|six|seven|eight|none"
                    + "|root|over|in|bass|position|inversion|inverted|slash|major|minor|maj|min|dim|diminished|aug|augmented|perfect"
                    + "|first|second|third|fourth|fifth|sixth|seventh|ninth|octave|sus|suspended|add|added|omit|dominant|dom"
                    + "|flat|flats|sharp|sharps|natural|double|half|whole|tone|tones|step|steps|semitone|semitones|lowered|raised|left|right|rh|lh)";

    /** What explains an answer, and where it begins. */
    private static final Pattern TAIL = Pattern.compile(
            "(?:\\s*[,;.!?…–—]+\\s*|\\s+-+\\s+)"
                    + "(?:(?!" + VOCABULARY + "(?![\\p{L}0-9']))(?=[\\p{Ll}'’]{2,})|(?=a [a-z]{2})|(?=I(?:'m|'d|'ve)? )"
                    + "|(?=(?:[1-7]|one|two|three|four|five|six|seven) (?:sharps?|flats?)(?![a-z]))|(?=in the key )|(?=[A-G][b#♭♯]? (?:is|are|being) (?:the |in |on )?[a-z]{3}))"
                    + "|\\s+(?=(?:because|since|cause|cuz|coz|like|which|where|when|whose|but|if|in (?:natural|harmonic|melodic|this key|the key)|as in|as it|due|same as|for the|aka|weil|denn|wie|parce|car|comme)(?![a-z]))");

    /** What is said behind it is no answer, whatever stands in it. */
    private static final Pattern REASON =
            Pattern.compile("(?i)[,;]?\\s+(?:because|since|cause|cuz|weil|denn|parce)(?![a-z])");

    /** Words, and then the notes themselves: {@code c# minor triad C# E G# plus B}. */
    private static final Pattern ROW_BEHIND =
            Pattern.compile(".*[a-z]{3,}\\s+((?:[A-G][b#♭♯]?[\\s,]+(?:plus |and |then )?){2,}[A-G][b#♭♯]?)\\W*");

    /** What is said of an answer before it: {@code the relative minor, Bm}. */
    private static final Pattern LEAD = Pattern.compile(
            "(?:it's |its |it is |that's |that is )?(?:from )?the [a-z ]+, *(.+)", Pattern.CASE_INSENSITIVE);

    private static final Pattern REMARK = Pattern.compile("\\s*\\([^()]*\\)");

    /** A row of notes, and the words that name it. */
    private static final Pattern NAMED_ROW =
            Pattern.compile("((?:[A-G](?:[b#♭♯]| flat| sharp)?[\\s,-]+){3,})(?:[a-z-]{3,}\\W*)+");

    /** Words with the notes that show them. */
    private static final Pattern SHOWN =
            Pattern.compile("(.*[a-z]{3,}.*?)\\s*[,:;–—-]\\s*(?:[A-G][b#♭♯]?(?:[\\s,-]+|$))+");

    private AnswerParts() {}

    /** The likeliest first. */
    static List<String> of(String typed) {
        Set<String> parts = new LinkedHashSet<>();
        addCorrected(parts, typed);
        addGroup(parts, NOT_BUT.matcher(typed));
        Matcher denied = DENIED.matcher(typed);
        if (denied.find()) {
            parts.add(denied.replaceAll(" "));
        }
        addBeforeContrast(parts, typed);
        addBefore(parts, REASON.matcher(typed), typed);
        addBehindSubject(parts, typed);
        addBeforeTail(parts, typed);
        addGroup(parts, ROW_BEHIND.matcher(typed.strip()));
        addGroup(parts, LEAD.matcher(typed.strip()));
        addGroup(parts, SHOWN.matcher(typed));
        addGroup(parts, NAMED_ROW.matcher(typed.strip()));
        Matcher remark = REMARK.matcher(typed);
        if (remark.find() && remark.start() > 0) {
            parts.add(remark.replaceAll(" "));
        }
        return new ArrayList<>(parts);
    }

    private static void addBefore(Set<String> parts, Matcher cut, String typed) {
        if (cut.find() && cut.start() > 0) {
            parts.add(typed.substring(0, cut.start()));
        }
    }

    private static void addBeforeContrast(Set<String> parts, String typed) {
        Matcher contrast = CONTRAST.matcher(typed);
        if (contrast.find() && contrast.start() > 0) {
            String before = typed.substring(0, contrast.start());
            parts.add(before);
            parts.addAll(of(before));
        }
    }

    private static void addGroup(Set<String> parts, Matcher whole) {
        if (whole.matches()) {
            parts.add(whole.group(1));
        }
    }

    /** What is said last holds. */
    private static void addCorrected(Set<String> parts, String typed) {
        Matcher correction = RAISED.matcher(typed).find() ? RAISED.matcher(typed) : CORRECTION.matcher(typed);
        MatchResult said = last(correction);
        if (said == null || said.start() == 0 || said.end() == typed.length()) {
            return;
        }
        String corrected = corrected(
                typed.substring(0, said.start()), typed.substring(said.end()).strip());
        parts.add(corrected);
        addBehindSubject(parts, corrected);
    }

    /** One note put right takes the place of the last on its letter in a row; anything else stands for the whole. */
    private static String corrected(String before, String last) {
        if (!ONE_NOTE.matcher(last).matches() || !ROW.matcher(before).find()) {
            return last;
        }
        MatchResult wrong = last(Pattern.compile("(?<![A-Za-z])" + last.charAt(0) + "[b#♭♯]*(?![a-z])")
                .matcher(before));
        return wrong == null ? last : before.substring(0, wrong.start()) + last + before.substring(wrong.end());
    }

    private static MatchResult last(Matcher matcher) {
        MatchResult last = null;
        while (matcher.find()) {
            last = matcher.toMatchResult();
        }
        return last;
    }

    private static void addBehindSubject(Set<String> parts, String typed) {
        List<String> behind = new ArrayList<>();
        Matcher subject = SUBJECT.matcher(typed);
        while (subject.find()) {
            if (IN_WORDS.matcher(typed.substring(0, subject.start())).matches()) {
                behind.add(0, typed.substring(subject.end()));
            }
        }
        parts.addAll(behind);
    }

    /** As much as possible before what explains it. */
    private static void addBeforeTail(Set<String> parts, String typed) {
        List<String> before = new ArrayList<>();
        Matcher tail = TAIL.matcher(typed);
        while (tail.find() && before.size() < MOST_TAILS) {
            if (tail.start() > 0) {
                before.add(0, typed.substring(0, tail.start()));
            }
        }
        parts.addAll(before);
        before.forEach(part -> addBehindSubject(parts, part));
    }
}
