package monochord.harmony.after;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.TableText;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;

/**
 * Counts of which chord came next in songs.
 *
 * <p>Text form: lines of seven columns with tabs between them, {@code corpus mode from to count songs sample}; lines that
 * begin with {@code #} are remarks. Chords are numerals counted from the major scale, by root and triad.
 */
public record SongCounts(List<SongCount> rows) {
    /** No counts at all. */
    public static final SongCounts NONE = new SongCounts(List.of());

    private static final int COLUMNS = 7;

    /** Where songs were counted. */
    public enum Collection {
        RS200(
                "RS200",
                Phrase.of("rock songs"),
                Phrase.of(
                        "{0}, {1}",
                        Phrase.list(List.of(Phrase.typed("T. de Clercq"), Phrase.typed("D. Temperley"))),
                        Phrase.list(List.of(2011, 2013))),
                "CC BY 4.0"),
        BILLBOARD(
                "McGill Billboard",
                Phrase.of("chart songs"),
                Phrase.of(
                        "{0}, {1}",
                        Phrase.list(List.of(
                                Phrase.typed("J. A. Burgoyne"), Phrase.typed("J. Wild"), Phrase.typed("I. Fujinaga"))),
                        2011),
                "CC0");

        private final String title;
        private final Phrase idiom;
        private final Phrase authors;
        private final String licence;

        Collection(String title, Phrase idiom, Phrase authors, String licence) {
            this.title = title;
            this.idiom = idiom;
            this.authors = authors;
            this.licence = licence;
        }

        public String title() {
            return title;
        }

        /** {@code rock songs}. */
        public Phrase idiom() {
            return idiom;
        }

        /** With the years of their papers. */
        public Phrase authors() {
            return authors;
        }

        public String licence() {
            return licence;
        }

        private static Collection called(String name) {
            return Stream.of(values())
                    .filter(one -> one.name().equalsIgnoreCase(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no collection is called " + name));
        }
    }

    /**
     * How often one chord came after another.
     *
     * @param minor whether the songs have a minor tonic
     * @param times how often, immediate repeats of a chord merged
     * @param songs in how many songs of the sample
     * @param sample songs that were looked at
     */
    public record SongCount(
            Collection collection, boolean minor, String from, String to, int times, int songs, int sample) {}

    /**
     * What backs one way on.
     *
     * @param times how often the second chord came after the first
     * @param of how often anything came after the first
     * @param songs in how many songs it came so
     */
    public record Backing(Collection collection, int times, int of, int songs) {
        /** Below this many songs a share says little. */
        public static final int FEW_SONGS = 10;

        private static final int NEARLY_ALL = 85;
        private static final int MOSTLY = 58;
        private static final int HALF = 45;
        private static final int TWO_IN_FIVE = 37;
        private static final int SELDOM = 5;

        public boolean isFromFewSongs() {
            return songs < FEW_SONGS;
        }

        /** Of a hundred, rounded. */
        public int percent() {
            return Math.round(100f * times / of);
        }

        /** {@code about one in four, 23 songs}; without a share where there are few songs. */
        public Phrase inWords() {
            return isFromFewSongs()
                    ? Phrase.counted(songs, "in only {0} song", "in only {0} songs", Phrase.number(songs))
                    : Phrase.of("{0}, {1} songs", share(), songs);
        }

        private Phrase share() {
            int percent = percent();
            if (percent >= NEARLY_ALL) {
                return Phrase.of("nearly always");
            } else if (percent >= MOSTLY) {
                return Phrase.of("about two in three");
            } else if (percent >= HALF) {
                return Phrase.of("about one in two");
            } else if (percent >= TWO_IN_FIVE) {
                return Phrase.of("about two in five");
            }
            return percent < SELDOM
                    ? Phrase.of("now and then")
                    : Phrase.of("about one in {0}", Phrase.number(Math.round((float) of / times)));
        }
    }

    public SongCounts {
        rows = List.copyOf(rows);
    }

    /** @throws IllegalArgumentException if a line has other columns */
    public static SongCounts parse(String text) {
        return new SongCounts(TableText.rows(text, COLUMNS, SongCounts::row));
    }

    private static SongCount row(String[] cells) {
        return new SongCount(
                Collection.called(cells[0]),
                cells[1].equals("minor"),
                cells[2],
                cells[3],
                Integer.parseInt(cells[4]),
                Integer.parseInt(cells[5]),
                Integer.parseInt(cells[6]));
    }

    /** The counts for one chord after another in a key, from the collection with the most songs. */
    Optional<Backing> backing(Numeral from, Numeral to, Key key) {
        List<String> first = names(from, key);
        List<String> second = names(to, key);
        return rows.stream()
                .filter(row -> row.minor == key.isMinor() && first.contains(row.from) && second.contains(row.to))
                .max(Comparator.comparingInt(SongCount::songs).thenComparingInt(SongCount::times))
                .map(row -> new Backing(row.collection, row.times, leaving(row), row.songs));
    }

    private int leaving(SongCount like) {
        return rows.stream()
                .filter(row -> row.collection == like.collection && row.minor == like.minor)
                .filter(row -> row.from.equals(like.from))
                .mapToInt(SongCount::times)
                .sum();
    }

    /** The chords that came after this one in enough songs, the commonest first. */
    List<Numeral> followers(Numeral from, Key key) {
        List<String> names = names(from, key);
        return rows.stream()
                .filter(row -> row.minor == key.isMinor() && names.contains(row.from))
                .filter(row -> row.songs >= Backing.FEW_SONGS && !row.to.startsWith("?"))
                .sorted(Comparator.comparingInt(SongCount::songs).reversed())
                .map(row -> Numeral.parse(row.to))
                .distinct()
                .toList();
    }

    /**
     * The chord's names in the counts: by its triad on the degree of the major scale, and as applied where it is. A six-four
     * and an augmented sixth have none, nor has a seventh chord on the root of one of the key's own triads that leads on.
     */
    static List<String> names(Numeral numeral, Key key) {
        boolean plain = numeral.form() == Numeral.Form.DEGREE || numeral.form() == Numeral.Form.NEAPOLITAN;
        Chord chord = numeral.in(key);
        Chord triad = new Chord(chord.root(), chord.kind().triad());
        List<String> names = new ArrayList<>();
        if (plain && (numeral.target() == null || !key.isOwn(triad))) {
            names.add(Numeral.onDegree(triad, Key.major(key.tonic())).toString());
        }
        if (numeral.target() != null) {
            names.add(Numeral.of(numeral.degree(), numeral.alteration(), triad.kind())
                    .appliedTo(numeral.target())
                    .toString());
        }
        return names;
    }

    /** The collections that back any of these, each once. */
    public static List<Collection> collections(List<Backing> backings) {
        return Arrays.stream(Collection.values())
                .filter(one -> backings.stream().anyMatch(backing -> backing.collection == one))
                .toList();
    }
}
