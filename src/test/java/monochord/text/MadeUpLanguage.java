package monochord.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.IntervalNumber;

/**
 * A language that nobody speaks: English, in which the words of every template stand between marks and are longer than they
 * were. What is said without a template is told by having no marks.
 */
public final class MadeUpLanguage implements Language {
    private static final Pattern PLACES = Pattern.compile("\\{[0-9]}");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}(.*\\p{L})?");
    private static final Pattern MARKED = Pattern.compile("⟦[^⟦⟧]*⟧");
    private static final String LONGER = "~~";

    @Override
    public String tag() {
        return "x-made-up";
    }

    /** The words between the places, each run of them marked. */
    @Override
    public String template(String english) {
        StringBuilder marked = new StringBuilder();
        Matcher places = PLACES.matcher(english);
        int said = 0;
        while (places.find()) {
            marked.append(marked(english.substring(said, places.start()))).append(places.group());
            said = places.end();
        }
        return marked.append(marked(english.substring(said))).toString();
    }

    /** From the first letter to the last, so that lines break where they would. */
    private static String marked(String words) {
        Matcher letters = LETTERS.matcher(words);
        return letters.find()
                ? words.substring(0, letters.start()) + "⟦" + letters.group() + LONGER + "⟧"
                        + words.substring(letters.end())
                : words;
    }

    @Override
    public ListPatterns list(Conjunction conjunction) {
        ListPatterns english = Language.super.list(conjunction);
        return new ListPatterns(template(english.pair()), template(english.more()), template(english.last()));
    }

    @Override
    public String number(int number) {
        return marked(Language.super.number(number));
    }

    @Override
    public String interval(Interval interval) {
        return marked(interval.inWords());
    }

    @Override
    public String oneInterval(Interval interval) {
        return marked(interval.inWords());
    }

    @Override
    public String intervalNumber(IntervalNumber number) {
        return marked(number.toString());
    }

    @Override
    public String degree(Degree degree) {
        return marked(degree.inWords());
    }

    @Override
    public String scaleKind(ScaleKind kind) {
        return marked(kind.toString());
    }

    /** A text without all that stands between marks. */
    public static String unmarked(String text) {
        String rest = text;
        for (Matcher marked = MARKED.matcher(rest); marked.find(); marked = MARKED.matcher(rest)) {
            rest = marked.replaceAll(" ");
        }
        return rest;
    }
}
