package monochord.song;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A chord that was changed in a song, to be agreed with the band; it is where a sentence of its reason begins with {@code
 * Agreed}.
 *
 * <p>Text form: {@code place: from to to. why}, such as {@code Verse, bar 3: Bm to Bb. The tune rests on D there.}
 * {@link #parse} reads all that {@link #toString} writes.
 *
 * @param place section and bar
 * @param why a reason, or nothing
 */
public record SongChange(String place, String from, String to, String why) {
    private static final int LONGEST = 2000;
    private static final Pattern TEXT = Pattern.compile("(.+?): (.+?) to (.+?)(?<! )\\.(?: (.*))?");

    /** A sentence that says so, such as {@code Agreed on Tuesday.} */
    private static final Pattern AGREED =
            Pattern.compile("(?i)(?:^|(?<=[.!?])\\s+)agreed\\b(?:[,:;]\\s*|[^.!?]*(?:[.!?]|$)\\s*)");

    public boolean isAgreed() {
        return AGREED.matcher(why).find();
    }

    /** Why, without the sentence that says that it is agreed. */
    public String reason() {
        return AGREED.matcher(why).replaceFirst(" ").strip();
    }

    /** None for a text that is no such line. */
    public static Optional<SongChange> parse(String text) {
        Matcher matcher = TEXT.matcher(text.length() > LONGEST ? "" : text.strip());
        return matcher.matches()
                ? Optional.of(new SongChange(
                        matcher.group(1),
                        matcher.group(2),
                        matcher.group(3),
                        matcher.group(4) == null ? "" : matcher.group(4).strip()))
                : Optional.empty();
    }

    @Override
    public String toString() {
        return (place + ": " + from + " to " + to + (to.endsWith(".") ? " ." : ".") + " " + why).strip();
    }
}
