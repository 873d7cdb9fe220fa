package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * What stands before, what is replaced and what stands behind, and what is put there.
 *
 * <p>Text form: {@code V [vi] * -> bVI|bVImaj7}. Between the brackets stand the chords that are replaced; nothing between
 * them means that chords are put in between. A numeral matches by root and triad, and by its further tones where it
 * names some; {@code *} is any chord, {@code $} the end of a row that is no loop. Of what is put there, each word takes
 * the place of one chord; {@code a,b} share its time, {@code =} is the chord that stood there, and {@code a|b} is {@code
 * b} where its further tones can be held or the row is one of seventh chords. More words than chords share the time of
 * the last.
 *
 * @param before at most two chords
 * @param replaced at most four chords
 * @param after at most two chords
 * @param put for each chord replaced what comes in its time; one list where chords are put in between
 */
record MovePattern(List<Token> before, List<Token> replaced, List<Token> after, List<List<Replacement>> put) {
    private static final List<String> MINOR_GOALS_IN_MAJOR = List.of("vi", "ii", "iii");
    private static final List<String> MAJOR_GOALS_IN_MAJOR = List.of("IV", "V");
    private static final List<String> MINOR_GOALS_IN_MINOR = List.of("iv");
    private static final List<String> MAJOR_GOALS_IN_MINOR = List.of("III", "VI", "VII");

    /** A chord that is looked for. */
    record Token(String written, int root, ChordKind triad, ChordKind kind) {
        static final String ANY = "*";
        static final String END = "$";

        static Token parse(String word, Key home) {
            if (word.equals(ANY) || word.equals(END)) {
                return new Token(word, 0, null, null);
            }
            Chord chord = Numeral.parse(word).in(home);
            int root = chord.root().fifths() - home.tonic().fifths();
            ChordKind triad = chord.kind().triad();
            return new Token(word, root, triad, chord.kind().equals(triad) ? null : chord.kind());
        }

        boolean isEnd() {
            return written.equals(END);
        }

        /** @param beside whether the chord stays, so that it may also be suspended */
        boolean matches(Chord chord, NoteName tonic, boolean beside) {
            if (triad == null) {
                return written.equals(ANY);
            }
            ChordKind there = chord.kind();
            boolean suspended = beside && there.quality() == TriadQuality.SUSPENDED && triad.equals(ChordKind.MAJOR);
            return chord.root().fifths() - tonic.fifths() == root
                    && (suspended || there.triad().equals(triad))
                    && (kind == null || holdsAll(there));
        }

        private boolean holdsAll(ChordKind there) {
            for (Interval tone : kind.intervals()) {
                if (!there.holds(tone)) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * A chord that is put there.
     *
     * @param plain null for the chord that stood there
     * @param fuller the same with further tones, or null
     */
    record Replacement(Numeral plain, Numeral fuller) {
        static Replacement parse(String word) {
            if (word.equals("=")) {
                return new Replacement(null, null);
            }
            String[] both = word.split("\\|");
            return new Replacement(Numeral.parse(both[0]), both.length == 1 ? null : Numeral.parse(both[1]));
        }
    }

    boolean isInsertion() {
        return replaced.isEmpty();
    }

    /** {@code Xm} stands for each minor chord of the key but the tonic in turn, {@code XM} for each major one. */
    static List<MovePattern> parse(List<String> texts, boolean minor) {
        Key home = minor ? Key.minor(NoteName.of('C', 0)) : Key.major(NoteName.of('C', 0));
        return texts.stream()
                .flatMap(text -> goals(text, "Xm", minor ? MINOR_GOALS_IN_MINOR : MINOR_GOALS_IN_MAJOR))
                .flatMap(text -> goals(text, "XM", minor ? MAJOR_GOALS_IN_MINOR : MAJOR_GOALS_IN_MAJOR))
                .map(text -> one(text, home))
                .toList();
    }

    private static Stream<String> goals(String text, String name, List<String> goals) {
        return text.contains(name) ? goals.stream().map(goal -> text.replace(name, goal)) : Stream.of(text);
    }

    private static MovePattern one(String text, Key home) {
        String[] sides = text.split(" -> ");
        int open = sides[0].indexOf('[');
        int close = sides[0].indexOf(']');
        List<Token> replaced = tokens(sides[0].substring(open + 1, close), home);
        return new MovePattern(
                tokens(sides[0].substring(0, open), home),
                replaced,
                tokens(sides[0].substring(close + 1), home),
                put(sides[1], replaced.size()));
    }

    private static List<Token> tokens(String words, Key home) {
        return Arrays.stream(words.split(" "))
                .filter(word -> !word.isEmpty())
                .map(word -> Token.parse(word, home))
                .toList();
    }

    private static List<List<Replacement>> put(String words, int places) {
        List<List<Replacement>> put = new ArrayList<>();
        for (String place : words.split(" ")) {
            List<Replacement> here =
                    Arrays.stream(place.split(",")).map(Replacement::parse).toList();
            if (put.size() < Math.max(1, places)) {
                put.add(new ArrayList<>(here));
            } else {
                put.get(put.size() - 1).addAll(here);
            }
        }
        if (put.size() < places) {
            throw new IllegalArgumentException("something must be put in each of " + places + " places: " + words);
        }
        return put;
    }
}
