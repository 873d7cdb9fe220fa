package monochord.classroom;

import java.util.regex.Pattern;

/** Words as they were before an editor made printed quotation marks, dashes and line ends of them. */
final class PlainWords {
    private static final Pattern SPACES = Pattern.compile("[\\s\u00a0\u202f\u2009]+");
    private static final Pattern DASHES = Pattern.compile("--+|[\u2010-\u2015\u2212]");

    private PlainWords() {}

    /** Two texts have the same plain words when a reader would take them for the same. */
    static String of(String text) {
        String marks = text.replace('\u2018', '\'')
                .replace('\u2019', '\'')
                .replace('\u201a', '\'')
                .replace('\u00b4', '\'')
                .replace('\u201c', '"')
                .replace('\u201d', '"')
                .replace('\u201e', '"')
                .replace('\u00ab', '"')
                .replace('\u00bb', '"')
                .replace("\u2026", "...");
        return SPACES.matcher(DASHES.matcher(marks).replaceAll("-"))
                .replaceAll(" ")
                .strip();
    }
}
