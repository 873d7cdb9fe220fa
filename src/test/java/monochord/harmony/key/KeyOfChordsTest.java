package monochord.harmony.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyOfChordsTest {
    private static KeyFinding find(String chords) {
        return KeyFinding.of(Progression.parse(chords, Key.major(NoteName.C)), Counted.KEYS);
    }

    /**
     * Source: Open Music Theory (2014), pages "popRockHarmony", "cadenceTypes" and "appliedChords", moved to other keys;
     * the chords of songs in the public domain (Foster; "Amazing Grace"; "Greensleeves"; "When Johnny Comes Marching
     * Home"), from memory.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            D G A7 D                                        | D major
            Dm7 G7 Cmaj7                                    | C major
            F Dm Gm C7 F                                    | F major
            Eb Ab Bb7 Eb Cm Fm Bb7 Eb                       | Eb major
            Am E Am Dm Am E7 Am                             | A minor
            Am G F E                                        | A minor
            Cm Fm G7 Cm Ab Db G7 Cm                         | C minor
            G Em C D7 G                                     | G major
            A F#m D E A                                     | A major
            C A7 D7 G7 C                                    | C major
            E B7 E A E B7 E                                 | E major
            Bm A G F#7 Bm                                   | B minor
            Gb Cb Db7 Gb                                    | Gb major
            F# B C#7 F#                                     | F# major
            C F Fm C G7 C                                   | C major
            D D D A D D D A D                               | D major
            G G7 C G G G D D G G7 C G Em D G                | G major
            Am G Am E Am G Am E Am C G Am E C G Am E Am      | A minor
            Em G D Em G B7 Em D Em B7 Em                    | E minor
            C7 F7 C7 C7 F7 F7 C7 C7 G7 F7 C7 C7             | C major
            D C G D                                         | D major
            """)
    void findsTheKeyOfProgressions(String chords, String key) {
        assertEquals(Key.parse(key), find(chords).key());
    }

    /**
     * In doubt both keys are named. Source: Open Music Theory, version 2, page "4-chord-schemas": the same row is understood
     * in major or in its relative minor.
     */
    @ParameterizedTest
    @CsvSource({"Am F C G, C major, A minor", "Em C G D, G major, E minor", "F G Am C, C major, A minor"})
    void namesTheRelativeToo(String chords, String first, String second) {
        List<LikelyKey> keys = find(chords).keys();
        assertEquals(first, keys.get(0).key().toString());
        assertTrue(keys.stream().anyMatch(likely -> likely.key().toString().equals(second)));
        assertTrue(keys.get(0).share() < 0.9);
    }

    /** Source: Open Music Theory, version 2, pages "4-chord-schemas", "modal-schemas" and "blues-based-schemas". */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            C Am F G                          | doo-wop           | G leads back to C as dominant to tonic.
            C Am Dm G                         | doo-wop           | G leads back to C as dominant to tonic.
            Am F C G                          | singer/songwriter | G leads back to Am, a deceptive turn: the dominant would go to C.
            D A Bm G                          | singer/songwriter | G leads back to D, the plagal way home.
            F G Am C                          | hopscotch         | C leads back to F: the root falls a fifth, and C stays.
            Am G F E                          | lament            | E leads back to Am as dominant to tonic.
            Am G F G                          | aeolian shuttle   | G leads back to Am: a step up, home without a leading note.
            C Bb F C C Bb F C                 | double plagal     | F leads back to C, the plagal way home.
            F C G Am                          | singer/songwriter | Am leads back to F: the root falls a major third, and A and C stay.
            Em C G D                          | singer/songwriter | D leads back to Em, a deceptive turn: the dominant would go to G.
            C G Am Em F C F G                 | canon             | G leads back to C as dominant to tonic.
            Am F G                            | aeolian cadence   | G leads back to Am: a step up, home without a leading note.
            Ab Eb Bb F C                      | extended plagal   | C leads back to A♭: the root falls a major third, and C stays.
            C F Bb Eb                         | circle of fifths  | E♭ leads back to C: the root falls a minor third, and G stays.
            C F C G                           |                   | G leads back to C as dominant to tonic.
            C C C C F F C C G F C C           | 12-bar blues      | It comes back to where it began, C.
            """)
    void recognisesALoop(String chords, String schema, String lead) {
        Loop loop = find(chords).loop().orElseThrow();
        assertEquals(schema, loop.schema().map(Phrase::toString).orElse(null));
        assertEquals(lead, loop.lead().toString());
    }

    /**
     * Sources: the cadences Open Music Theory (2014), "cadenceTypes", and version 2, "modal-schemas"; that the last chord is
     * held and the last two bars come again: common practice, no source.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            C Am F G                | To end it, close with G C, F C or A♭ B♭ C, and hold the last chord for a bar or two. For a tag, play the last two bars again before you end.
            D A Bm G                | To end it, close with A D, G D or B♭ C D, and hold the last chord for a bar or two. For a tag, play the last two bars again before you end.
            Am G F E                | To end it, close with E Am, Dm Am or F G Am, and hold the last chord for a bar or two. For a tag, play the last two bars again before you end.
            F G Am C                | To end it, hold C for a bar or two. For a tag, play the last two bars again before you end.
            C C C C F F C C G F C C | To end it, hold C for a bar or two. For a tag, play the last two bars again before you end.
            """)
    void saysHowALoopEnds(String chords, String ending) {
        assertEquals(ending, find(chords).loop().orElseThrow().ending().toString());
    }

    /** Two bars are too few for a tag of two. Common practice, no source. */
    @Test
    void aShortLoopHasNoTag() {
        assertEquals(
                "To end it, close with G C, F C or A♭ B♭ C, and hold the last chord for a bar or two.",
                find("| C Am | F G |").loop().orElseThrow().ending().toString());
    }

    /** A loop that is closed so has come home: Common practice, no source. */
    @Test
    void whatIsClosedSoIsNoLoop() {
        for (Key key : Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList()) {
            Progression loop = Progression.parse(key.isMinor() ? "i VI iv V" : "I vi IV V", key);
            for (List<Chord> cadence : LoopEnding.cadences(key)) {
                String closed = Stream.concat(loop.chords().stream(), cadence.stream())
                        .map(Chord::toString)
                        .collect(Collectors.joining(" "));
                assertFalse(find(closed).loop().isPresent(), closed);
            }
        }
    }

    /** Common practice, no source: what comes home has ended. */
    @ParameterizedTest
    @CsvSource({"C F G C", "Am Dm E Am", "C", "Dm7 G7 Cmaj7", "C Bb F C"})
    void whatComesHomeIsNoLoop(String chords) {
        assertFalse(find(chords).loop().isPresent());
    }

    /** Source: the two everyday changes of popular songs; pivot chords after Open Music Theory (2014), "modulation". */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            C F G C D G A D                       | 0-3 C major; 4-7 D major
            C Am Dm G7 C D7 G Em Am D7 G          | 0-4 C major; 5-10 G major by C
            Am Dm E Am Am Dm E Am C F G C F G C   | 0-7 A minor; 8-14 C major by Am
            C G Am F C G Am F D A Bm G D A Bm G   | 0-7 C major; 8-15 D major
            C F Fm C G7 C                         | 0-5 C major
            C Eb F C Ab Bb C                      | 0-6 C major
            F C G Am                              | 0-3 C major
            Dm7 G7 Cmaj7 Cm7 F7 Bbmaj7            | 0-2 C major; 3-5 Bb major
            """)
    void marksWhereTheKeyChanges(String chords, String spans) {
        String found = find(chords).spans().stream()
                .map(span -> span.from() + "-" + span.to() + " " + span.key()
                        + span.pivot().map(pivot -> " by " + pivot).orElse(""))
                .collect(Collectors.joining("; "));
        assertEquals(spans, found);
    }

    /** Source: worked out by hand from the chords. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            D G A7 D       | It begins and ends on the tonic chord, D. A7 leads to D: the dominant comes home. All its chords are the key's own: I IV V7.
            C F Fm C G7 C  | It begins and ends on the tonic chord, C. G7 leads to C: the dominant comes home. All its chords but Fm are the key's own.
            Am G Am F G Am | It begins and ends on the tonic chord, Am. G steps up to Am, the tonic chord. All its chords are the key's own: i VII VI.
            """)
    void saysWhatSpeaksForTheKey(String chords, String why) {
        assertEquals(
                why,
                find(chords).keys().get(0).why().stream().map(Phrase::toString).collect(Collectors.joining(" ")));
    }

    @Test
    void movesWithTheChords() {
        Progression row = Progression.parse("C Am F G7 C F C", Key.major(NoteName.C));
        for (Key key : Key.majorKeys()) {
            assertEquals(key, KeyFinding.of(row.in(key), Counted.KEYS).key());
        }
    }

    /** The likeliest keys of all chords are the likeliest of all ways to give each a key, every way tried. */
    @ParameterizedTest
    @CsvSource({"C D G", "Am E7 Eb", "F# B7 C", "C C Fm"})
    void equalsTryingEveryWay(String chords) {
        ChordEvidence row = ChordEvidence.of(Progression.parse(chords, Key.major(NoteName.C)));
        double best = Double.NEGATIVE_INFINITY;
        int[] way = new int[3];
        for (way[0] = 0; way[0] < CandidateKeys.COUNT; way[0]++) {
            for (way[1] = 0; way[1] < CandidateKeys.COUNT; way[1]++) {
                for (way[2] = 0; way[2] < CandidateKeys.COUNT; way[2]++) {
                    best = Math.max(best, worth(row, way));
                }
            }
        }
        int[] found = new KeySpans(row, Counted.KEYS).likeliest(KeyWeights.CHANGE);
        assertEquals(best, worth(row, found), 1e-9);
    }

    private static double worth(ChordEvidence row, int[] keys) {
        ChordTable table = Counted.KEYS.chords();
        int last = keys.length - 1;
        KeySpans spans = new KeySpans(row, Counted.KEYS);
        double worth = table.mode(CandidateKeys.isMinor(keys[0]));
        for (int i = 0; i <= last; i++) {
            boolean minor = CandidateKeys.isMinor(keys[i]);
            worth += spans.seventh(keys[i], i);
            int[] seen = row.seenFrom(keys[i]);
            if (i == 0) {
                worth += ChordEvidence.atEdge(seen[i], KeyWeights.BEGINS_ON_TONIC, minor, table);
            } else if (keys[i] != keys[i - 1]) {
                worth += table.time(minor, seen[i]) - KeyWeights.CHANGE;
            } else if (seen[i] != seen[i - 1]) {
                worth += table.next(minor, seen[i - 1], seen[i]);
            }
            if (i == last) {
                worth += ChordEvidence.atEdge(seen[i], KeyWeights.ENDS_ON_TONIC, minor, table)
                        - table.time(minor, seen[i]);
            }
        }
        return worth;
    }

    @Test
    void sharesAddUpAndComeInOrder() {
        List<LikelyKey> keys = find("Am F C G").keys();
        assertTrue(keys.size() >= 2);
        double all = keys.stream().mapToDouble(LikelyKey::share).sum();
        assertTrue(all > 0.8 && all <= 1 + 1e-9, () -> "shares add up to " + all);
        for (int i = 1; i < keys.size(); i++) {
            assertTrue(keys.get(i - 1).share() >= keys.get(i).share());
        }
    }

    /** A tune decides where chords are in doubt. Common practice, no source. */
    @Test
    void hearsTheTuneWithTheChords() {
        Progression chords = Progression.parse("Am F C G", Key.major(NoteName.C));
        KeyFinding found = KeyFinding.of(
                Optional.of(Melody.parse("A4 E5 C5 A4 G#4 A4 C5 B4 A4 E4 G#4 A4:4")),
                Optional.of(chords),
                Counted.KEYS);
        assertEquals(Key.parse("A minor"), found.key());
        assertEquals(
                List.of(Chord.parse("Am"), Chord.parse("F"), Chord.parse("C"), Chord.parse("G")),
                found.loop().orElseThrow().once());
    }
}
