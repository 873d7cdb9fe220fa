package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import monochord.score.BarGrid;
import monochord.score.Pattern;
import monochord.score.Piece;
import monochord.shell.sentence.FormPart;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Value;
import monochord.sound.Directions;
import monochord.sound.Patch;
import monochord.sound.Performance;
import monochord.text.Nearest;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** The small words that say how something is to be played. */
public final class PlaybackOptions {
    public static final String AS = "as";
    public static final String AT = "at";
    static final String WITH = "with";
    public static final String SWING = "swing";
    static final String LOOP = "loop";
    static final String COUNT_IN = "count-in";
    public static final String METRE = "metre";

    private PlaybackOptions() {}

    /** How they are written. */
    public static FormPart[] form() {
        return new FormPart[] {
            may(clause(METRE, Value.METRE)),
            may(clause(AS, Value.PATTERN)),
            may(clause(AT, Value.BPM)),
            may(clause(WITH, Value.PATCH)),
            may(alone(SWING)),
            may(clause(LOOP, Value.TIMES)),
            may(alone(COUNT_IN))
        };
    }

    /** @throws Unreadable if one of them cannot be read */
    public static Directions of(Sentence sentence, Directions usual) {
        Directions said = usual;
        if (sentence.clause(AT).isPresent()) {
            said = said.at(read(sentence, AT, PlaybackOptions::tempo));
        }
        if (sentence.clause(WITH).isPresent()) {
            Patch patch = read(sentence, WITH, SoundNames::patch);
            said = said.with(patch, patch);
        }
        if (sentence.clause(AS).isPresent()) {
            said = said.as(read(sentence, AS, SoundNames::pattern));
        }
        if (sentence.clause(LOOP).isPresent()) {
            said = said.times(read(sentence, LOOP, PlaybackOptions::times));
        }
        return said.inSwing(said.swung() || standsAlone(sentence, SWING))
                .countedIn(said.countedIn() || standsAlone(sentence, COUNT_IN));
    }

    /** The metre that is said, else the one in which the pattern is played, mostly bars of four. */
    public static BarGrid metre(Sentence sentence) {
        if (sentence.clause(METRE).isPresent()) {
            return read(sentence, METRE, BarGrid::parse);
        }
        return sentence.clause(AS).isPresent()
                ? read(sentence, AS, SoundNames::pattern).usualMetre()
                : BarGrid.COMMON;
    }

    private static <T> T read(Sentence sentence, String word, Function<String, T> reader) {
        return sentence.clause(word).orElseThrow().read(reader);
    }

    private static boolean standsAlone(Sentence sentence, String word) {
        sentence.clause(word).filter(part -> !part.isEmpty()).ifPresent(part -> {
            throw Unreadable.because(
                            part.text(),
                            0,
                            "a wish",
                            Clause.of("the music comes first, then {0}", word),
                            "play F C G " + word)
                    .within(sentence.whole(), part.place());
        });
        return sentence.clause(word).isPresent();
    }

    /** @throws Unreadable if there is no pattern of this name */
    public static Pattern pattern(String text) {
        return SoundNames.pattern(text);
    }

    public static int tempo(String text) {
        String number = text.replaceAll(" *(bpm|BPM)$", "");
        int tempo = number.matches("[0-9]{1,3}") ? Integer.parseInt(number) : 0;
        if (tempo < Performance.SLOWEST || tempo > Performance.FASTEST) {
            throw Unreadable.because(
                    text,
                    0,
                    "a tempo",
                    Clause.of("expected beats a minute from {0} to {1}", Performance.SLOWEST, Performance.FASTEST),
                    "at 84");
        }
        return tempo;
    }

    private static int times(String text) {
        String number = text.replaceAll(" *times$", "");
        int times = number.matches("[0-9]{1,2}") ? Integer.parseInt(number) : 0;
        if (times < 1) {
            throw Unreadable.because(
                    text,
                    0,
                    "how often to play it",
                    Clause.of("expected a number from 1 to {0}", Directions.MOST_TIMES),
                    "loop 4");
        }
        return times;
    }

    /** Whether at this place {@value #AS} says how to play, for it is A flat in German; then a pattern follows it. */
    public static boolean sayHow(String text, int place) {
        String[] words = text.substring(place).split("\\s+", 3);
        return words[0].equalsIgnoreCase(AS)
                && words.length > 1
                && Stream.concat(patterns().stream(), Stream.of("bass"))
                        .anyMatch(pattern ->
                                Nearest.to(words[1], List.of(pattern)).isPresent());
    }

    /** The names of the patterns, for completion. */
    public static List<String> patterns() {
        return Arrays.stream(Pattern.values()).map(Pattern::toString).toList();
    }

    /** Refuses what nobody would listen to, and what no hand would play in such bars. */
    public static void within(String said, Piece piece, Directions directions) {
        if (!piece.voicings().isEmpty()) {
            fits(said, piece.metre(), directions.pattern());
        }
        long minutes = directions.minutes(piece);
        if (minutes > Directions.MOST_MINUTES) {
            throw Unreadable.because(
                    said,
                    0,
                    "something to play",
                    Clause.of(
                            "it would last {0} minutes, and at most {1} are played",
                            (int) minutes, Directions.MOST_MINUTES),
                    "play F C G loop 4");
        }
    }

    /** Refuses what no hand would play in such bars. */
    public static void fits(String said, BarGrid metre, Pattern pattern) {
        if (pattern.fits(metre)) {
            return;
        }
        throw Unreadable.because(
                said,
                0,
                "a way to play chords",
                switch (pattern) {
                    case WALTZ -> Clause.of("{0} goes in bars of three quarters", pattern.toString());
                    case BOSSA, PUSH -> Clause.of("{0} goes in bars of four quarters", pattern.toString());
                    default -> Clause.of("{0} counts in quarters, and these bars do not", pattern.toString());
                },
                "as ballad");
    }
}
