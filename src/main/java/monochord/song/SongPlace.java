package monochord.song;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * A place in a song: a section, or some bars of it.
 *
 * <p>Text form: {@code chorus}, {@code chorus bar 4}, {@code verse, last time bars 1 to 4}; small and capital letters are
 * alike, and the first word of a name does where no other section begins with it.
 *
 * @param first bar, from 0, a pick-up not counted
 * @param last bar, included
 * @param isWhole whether the whole section is meant
 */
public record SongPlace(Section section, int first, int last, boolean isWhole) {
    private static final Pattern BARS =
            Pattern.compile("(?i),?\\s*bars?\\s+(\\d{1,4})(?:\\s*(?:to|-|–)\\s*(\\d{1,4}))?(?!\\S)");

    private static final int MOST_BARS = 100_000;

    /** A place and where its text ends. */
    public record Found(SongPlace place, int end) {}

    /** A whole section. */
    public static SongPlace whole(Section section) {
        return new SongPlace(section, 0, MOST_BARS, true);
    }

    /**
     * The place with whose name a text begins, if one does.
     *
     * @throws Unreadable if it has no such bar
     */
    public static Optional<Found> find(String text, Song song) {
        Optional<Section> section = song.sections().stream()
                .filter(one -> !one.isAgain() && begins(text, one.name()))
                .max(Comparator.comparingInt(one -> one.name().length()));
        int end = section.map(one -> one.name().length()).orElse(0);
        if (section.isEmpty()) {
            Matcher word = Pattern.compile("\\p{L}{3,}+").matcher(text);
            String first = word.lookingAt() ? word.group() : "";
            List<Section> some = song.sections().stream()
                    .filter(one -> !one.isAgain() && !first.isEmpty() && begins(one.name(), first))
                    .toList();
            section = some.size() == 1 ? Optional.of(some.get(0)) : Optional.empty();
            end = first.length();
        }
        int behind = end;
        return section.map(one -> bars(text, behind, one, song));
    }

    private static boolean begins(String text, String name) {
        return !name.isEmpty()
                && text.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT))
                && (text.length() == name.length() || !Character.isLetterOrDigit(text.charAt(name.length())));
    }

    private static Found bars(String text, int end, Section section, Song song) {
        int count = SectionMusic.of(section, song.head()).count();
        Matcher bars = BARS.matcher(text).region(end, text.length());
        if (!bars.lookingAt()) {
            return new Found(new SongPlace(section, 0, Math.max(0, count - 1), true), end);
        }
        int first = Integer.parseInt(bars.group(1));
        int last = bars.group(2) == null ? first : Integer.parseInt(bars.group(2));
        if (first < 1 || last < first || last > count) {
            throw Unreadable.because(
                    text,
                    bars.start(1),
                    "a place in the song",
                    Clause.of("{0} has bars 1 to {1}", section.name(), count),
                    "recolour verse bar 1");
        }
        return new Found(new SongPlace(section, first - 1, last - 1, false), bars.end());
    }

    public SectionMusic music(Song song) {
        return SectionMusic.of(section, song.head());
    }

    public Optional<Progression> progression(Song song) {
        return music(song).progression(first, last);
    }

    public Optional<Melody> melody(Song song) {
        return music(song).melody(first, last, song.head().metre());
    }

    /** As it is played: a whole section with its repeats, else the bars as they stand. */
    public SongMusic.Timeline played(Song song) {
        return SongMusic.of(this, song);
    }

    public Phrase phrase() {
        return isWhole
                ? Phrase.quoted(section.name())
                : first == last
                        ? Phrase.of("{0}, bar {1}", Phrase.quoted(section.name()), first + 1)
                        : Phrase.of("{0}, bars {1} to {2}", Phrase.quoted(section.name()), first + 1, last + 1);
    }

    @Override
    public String toString() {
        return phrase().toString();
    }
}
