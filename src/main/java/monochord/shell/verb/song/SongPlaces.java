package monochord.shell.verb.song;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.singing.VocalRange;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sitting.OpenSong;
import monochord.shell.sitting.Sitting;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongMetre;
import monochord.song.SongPlace;
import monochord.sound.Performance;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * Puts music in the place of a place's name: behind a verb that takes music, {@code chorus} stands for the chords of the
 * chorus in the song's key, with the tune where the verb asks for one.
 */
public final class SongPlaces {
    private static final Set<Value> MUSIC = Set.of(
            Value.PROGRESSION,
            Value.MUSIC,
            Value.CHORDS,
            Value.CHORD,
            Value.MELODY,
            Value.NUMERAL,
            Value.VOICES,
            Value.TUNE);
    private static final Pattern WHOLE_SONG = Pattern.compile("(?:to|for|capo)(?:\\s.*)?");
    private static final Pattern OF = Pattern.compile("(?:(?:chromatic|pedal|walking)\\s+)?(?:of\\s+)?");
    /** Before a place that is played: a part of it. */
    private static final Pattern PART_OF = Pattern.compile("(?i)(?:[a-z]+(?:\\s+hands?)?\\s+of\\s+)?(?:the\\s+)?");

    private static final Pattern SONG = Pattern.compile("(?i)(?:the\\s+)?(?:whole\\s+)?song(?!\\S)");
    /** No chord, but what a section may be called. */
    private static final Pattern NAME = Pattern.compile(
            "(?i)(?:the\\s+)?(?:verse|chorus|bridge|refrain|intro|outro|interlude|part [a-z]|song)(?![\\w(]).*");

    private static final String PLAY = "play";

    private final Usage usage;
    private final Sitting sitting;
    private final Song song;

    private SongPlaces(Usage usage, Sitting sitting, Song song) {
        this.usage = usage;
        this.sitting = sitting;
        this.song = song;
    }

    private static boolean takesMusic(Usage usage) {
        return usage.values().stream().anyMatch(MUSIC::contains)
                || usage.clauses().values().stream().anyMatch(MUSIC::contains);
    }

    /**
     * What stands behind a verb, with music for the name of a place in the open song.
     *
     * @throws Unreadable if there is no such bar, or not what the verb needs
     */
    public static String filled(String text, Usage usage, Sitting sitting) {
        OpenSong desk = sitting.song();
        desk.name(null);
        if (!takesMusic(usage) || usage.values().contains(Value.PLACE)) {
            return text;
        } else if (desk.song().isEmpty()) {
            if (isName(text)) {
                throw Unreadable.because(text, 0, "a place in a song", "no song is open", "song my-song.md");
            }
            return text;
        }
        return new SongPlaces(usage, sitting, desk.song().get()).filled(text);
    }

    /** Whether a text would name a section, and no music. */
    static boolean isName(String text) {
        return NAME.matcher(text).matches();
    }

    private String filled(String text) {
        if (usage.word().equals("transpose") && WHOLE_SONG.matcher(text).matches()) {
            return whole(text);
        }
        var of = (usage.word().equals(PLAY) ? PART_OF : OF).matcher(text);
        String before = of.lookingAt() ? of.group() : "";
        String rest = text.substring(before.length());
        Optional<SongPlace.Found> found = SongPlace.find(rest, song).or(() -> onlySection(rest));
        if (found.isEmpty()) {
            var whole = SONG.matcher(rest);
            boolean isWhole =
                    whole.lookingAt() && mayEnd(rest.substring(whole.end()).strip());
            if (!isWhole && isName(rest)) {
                throw refused(rest, sections());
            }
            return isWhole ? before + wholeSong(rest, whole.end()) : text;
        } else if (!mayEnd(rest.substring(found.get().end()).strip())) {
            return text;
        }
        SongPlace place = found.get().place();
        sitting.song().name(place);
        return isPlayed(rest)
                ? text
                : before + sentence(place, rest.substring(found.get().end()).strip());
    }

    /** The song itself, where it has but one section. */
    private Optional<SongPlace.Found> onlySection(String text) {
        List<Section> written =
                song.sections().stream().filter(section -> !section.isAgain()).toList();
        var whole = SONG.matcher(text);
        return whole.lookingAt() && written.size() == 1 && !usage.word().equals(PLAY)
                ? Optional.of(new SongPlace.Found(SongPlace.whole(written.get(0)), whole.end()))
                : Optional.empty();
    }

    private Clause sections() {
        return sections(song);
    }

    /** What else could be named. */
    static Clause sections(Song song) {
        return Clause.of(
                "its sections are {0}",
                song.sections().stream()
                        .filter(section -> !section.isAgain())
                        .map(Section::name)
                        .collect(Collectors.joining("; ")));
    }

    /** All sections that are written out, for verbs that need not know where one begins. */
    private String wholeSong(String text, int end) {
        String rest = text.substring(end).strip();
        switch (usage.word()) {
            case PLAY:
                sitting.song().asksWhole();
                return text;
            case "transpose":
                return whole(rest);
            case "recolour", "compare", "after", "bass":
                throw refused(text.substring(0, end), sections());
            default:
        }
        String music = switch (usage.word()) {
            case "fit" -> tune(text) + " over " + chords(text);
            case "harmonise" -> tune(text);
            default -> chords(text);
        };
        return (music + keyClause(rest) + metre(rest) + tempo(rest) + " " + rest).strip();
    }

    /** What is played as it stands is no text: repeats, bars and pick-ups of a song are more than a row of chords. */
    private boolean isPlayed(String rest) {
        return usage.word().equals(PLAY) && !rest.matches("(?s).*\\sover\\s.*");
    }

    /** A name of a place ends before nothing, before a small word and before an option; else it is no place. */
    private boolean mayEnd(String rest) {
        String word = rest.split("\\s", 2)[0];
        return rest.isEmpty() || word.startsWith("--") || usage.smallWords().contains(word);
    }

    /** The chords of all sections that are written out. */
    private String whole(String text) {
        sitting.song().asksWhole();
        if (isSung(text)) {
            return tune(text) + " from " + song.head().key() + " " + text;
        }
        return chords(text) + " from " + song.head().key() + " " + text;
    }

    /** Whether keys for a singer are asked for. */
    private static boolean isSung(String rest) {
        return rest.matches("to\\s+sing\\s.*")
                || rest.startsWith("for ")
                        && VocalRange.named(rest.substring(4).split("\\s", 2)[0])
                                .isPresent();
    }

    private String chords(String text) {
        return song.chords()
                .map(Progression::toString)
                .orElseThrow(() -> refused(text, Clause.of("no chords stand in the song")));
    }

    /** The tune of all sections that are written out, without its bars. */
    private String tune(String text) {
        return song.tune()
                .map(Melody::toString)
                .orElseThrow(() -> refused(text, Clause.of("no tune stands in the song")));
    }

    private String sentence(SongPlace place, String rest) {
        String key = keyClause(rest);
        String music = switch (usage.word()) {
            case "fit" -> tune(place) + " over " + chords(place);
            case "harmonise" -> tune(place);
            case "transpose" -> isSung(rest) ? tune(place) : chords(place);
            case "after" -> last(place);
            case PLAY -> tune(place);
            case "recolour" ->
                chords(place)
                        + (rest.contains("under ")
                                ? ""
                                : place.melody(song)
                                        .map(tune -> " under " + tune)
                                        .orElse(""));
            case "compare" -> compared(place);
            default -> chords(place);
        };
        return (music + key + metre(rest) + tempo(rest) + " " + rest).strip();
    }

    private String compared(SongPlace place) {
        String before = before(place);
        String now = chords(place);
        if (before.equals(now)) {
            throw Unreadable.because(
                    place.section().name(),
                    0,
                    "a comparison",
                    Clause.of("its chords are as they were when the song was opened; change some first"),
                    "change verse bar 3 to Bb");
        }
        return before + " vs " + now;
    }

    private String keyClause(String rest) {
        String word = usage.word().equals("transpose") ? "from" : "in";
        boolean said = rest.matches("(?:.*\\s)?" + word + "\\s.*");
        return said || !usage.smallWords().contains(word) || usage.word().equals("key")
                ? ""
                : " " + word + " " + song.head().key();
    }

    private String metre(String rest) {
        SongMetre metre = song.head().metre();
        boolean isNamed = usage.smallWords().contains("metre") && !rest.contains("metre ");
        return isNamed && !metre.isFree() && !metre.equals(SongMetre.COMMON) ? " metre " + metre : "";
    }

    private String tempo(String rest) {
        boolean isTaken = usage.clauses().get("at") == Value.BPM && !rest.matches("(?:.*\\s)?at\\s.*");
        int quarters = Math.max(
                Performance.SLOWEST, Math.min(Performance.FASTEST, song.head().quarters()));
        return isTaken && song.head().tempo() > 0 ? " at " + quarters : "";
    }

    private String chords(SongPlace place) {
        return place.progression(song)
                .map(Progression::toString)
                .orElseThrow(() -> refused(
                        place.section().name(),
                        Clause.of(
                                "no chords are written for {0}", place.section().name())));
    }

    /** As it was when the song was opened. */
    private String before(SongPlace place) {
        Key key = song.head().key();
        Song opened = sitting.song()
                .opened()
                .map(old -> old.moved(key, old.head().key().tonic().to(key.tonic()), ""))
                .orElse(song);
        return opened.section(place.section().name())
                .map(section -> new SongPlace(section, place.first(), place.last(), place.isWhole()))
                .flatMap(old -> old.progression(opened))
                .map(Progression::toString)
                .orElseGet(() -> chords(place));
    }

    private String tune(SongPlace place) {
        return place.melody(song)
                .map(Melody::toString)
                .orElseThrow(() -> refused(
                        place.section().name(),
                        Clause.of("no tune is written for {0}", place.section().name())));
    }

    private String last(SongPlace place) {
        return place.progression(song)
                .map(Progression::slots)
                .map(slots -> slots.get(slots.size() - 1).chord().toString())
                .orElseGet(() -> chords(place));
    }

    private static Unreadable refused(String text, Clause why) {
        return Unreadable.because(text, 0, "a place in the song", why, "recolour verse");
    }
}
